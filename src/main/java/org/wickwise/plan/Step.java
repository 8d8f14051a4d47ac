package org.wickwise.plan;

import java.util.List;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * One eluent poured onto a column that still holds some dyes.
 *
 * @param fractions what leaves, in the order of leaving; dyes that leave together share a fraction
 * @param staying what is still on the column afterwards
 * @param tail after how many standard deviations of its last band the step ends
 */
public record Step(Eluent eluent, List<List<Dye>> fractions, List<Dye> staying, double tail) {

    public Step {
        fractions = fractions.stream().map(List::copyOf).toList();
        staying = List.copyOf(staying);
    }

    static Step of(Move move, double tail, Choices choices) {
        return new Step(
                move.pourable(choices).eluent(),
                move.fractions().stream().map(choices::named).toList(),
                choices.named(move.staying()),
                tail);
    }

    public List<Dye> leaving() {
        return fractions.stream().flatMap(List::stream).toList();
    }
}
