package org.wickwise.plan;

import java.util.List;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * One eluent poured onto a column that still holds some dyes.
 *
 * @param fractions what leaves, in the order of leaving; dyes that leave together share a fraction
 * @param staying what is still on the column afterwards
 */
public record Step(Eluent eluent, List<List<Dye>> fractions, List<Dye> staying) {

    public Step {
        fractions = fractions.stream().map(List::copyOf).toList();
        staying = List.copyOf(staying);
    }

    public List<Dye> leaving() {
        return fractions.stream().flatMap(List::stream).toList();
    }
}
