package org.wickwise.plan;

import java.util.Comparator;
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

    /**
     * A volume to keep, in column volumes from the first drop of the first step.
     *
     * @param dyes what is in it, at least one
     */
    public record Kept(List<Dye> dyes, double from, double to) {

        public Kept {
            dyes = List.copyOf(dyes);
        }
    }

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

    /** What goes into flasks of its own, in the order of leaving: the two-sigma window of each band. */
    public List<Kept> kept() {
        return bands.entrySet().stream()
                .map(band -> new Kept(
                        List.of(band.getKey()),
                        band.getValue().fromMillilitres(),
                        band.getValue().toMillilitres()))
                .sorted(Comparator.comparingDouble(Kept::from))
                .toList();
    }

    /** Column volumes of the steps before this one, all together; steps are counted from 0. */
    public double pouredBefore(int step) {
        return poured.subList(0, step).stream().mapToDouble(Double::doubleValue).sum();
    }
}
