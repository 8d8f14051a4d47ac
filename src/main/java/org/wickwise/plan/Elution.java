package org.wickwise.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wickwise.column.Band;
import org.wickwise.substance.Dye;

/**
 * When each dye of a route leaves, in column volumes from the first drop of the first step.
 *
 * @param poured how much of each step's eluent is poured
 * @param bands of the dyes that were measured in every eluent poured up to their own
 */
public record Elution(List<Double> poured, Map<Dye, Band> bands) {

    static Elution of(Pouring pouring) {
        Map<Dye, Band> bands = new LinkedHashMap<>();
        for (Move move : pouring.moves()) {
            for (int fraction : move.fractions()) {
                for (Dye dye : pouring.choices().named(fraction)) {
                    pouring.out().get(pouring.choices().dyes().indexOf(dye)).ifPresent(band -> bands.put(dye, band));
                }
            }
        }
        return new Elution(pouring.poured(), bands);
    }

    /** Column volumes of the steps before this one, all together; steps are counted from 0. */
    public double pouredBefore(int step) {
        return poured.subList(0, step).stream().mapToDouble(Double::doubleValue).sum();
    }
}
