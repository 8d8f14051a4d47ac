package org.wickwise.substance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.substance.StationaryPhase.LadderScale;

/**
 * The bottles of a shelf as a ladder for one stationary phase, weakest first.
 *
 * @param unranked bottles that have no place on this scale, in the order of their names
 */
public record ShelfLadder(StationaryPhase phase, LadderScale scale, List<Rung> rungs, List<Bottle> unranked) {

    /**
     * A bottle on the ladder.
     *
     * @param value on the ladder's scale
     * @param differences what other scales say against this place
     */
    public record Rung(Bottle bottle, TableValue value, List<Difference> differences) {

        public double height() {
            return value.number().orElseThrow();
        }
    }

    /** @param weakerHereStrongerThere bottles that stand below on the ladder and above by the other scale */
    public record Difference(String scale, List<String> weakerHereStrongerThere) {}

    /**
     * @param phase one that has a ladder
     * @param others what people also rank solvents by
     */
    public static ShelfLadder of(Shelf shelf, StationaryPhase phase, List<OtherScale> others) {
        LadderScale scale = phase.ladder().orElseThrow();
        Comparator<Bottle> weakestFirst = Comparator.comparingDouble(bottle -> height(bottle, scale));
        List<Bottle> ranked = shelf.bottles().stream()
                .filter(bottle -> number(bottle, scale.property()).isPresent())
                .sorted(weakestFirst.thenComparing(Bottle::name))
                .toList();
        List<Bottle> unranked = shelf.bottles().stream()
                .filter(bottle -> !ranked.contains(bottle))
                .toList();
        List<Rung> rungs = ranked.stream()
                .map(bottle -> new Rung(
                        bottle,
                        solvent(bottle).value(scale.property()).orElseThrow(),
                        differences(bottle, ranked, scale, others)))
                .toList();
        return new ShelfLadder(phase, scale, rungs, unranked);
    }

    /** Of the others only neat bottles have a place: a blend stands somewhere between its parts. */
    private static OptionalDouble number(Bottle bottle, String property) {
        return bottle.isHouseholdBlend()
                ? OptionalDouble.empty()
                : solvent(bottle).number(property);
    }

    private static Solvent solvent(Bottle bottle) {
        return bottle.contents().parts().get(0).solvent();
    }

    private static double height(Bottle bottle, LadderScale scale) {
        double value = number(bottle, scale.property()).orElseThrow();
        return scale.weakestIsLowest() ? value : -value;
    }

    private static List<Difference> differences(
            Bottle bottle, List<Bottle> ranked, LadderScale scale, List<OtherScale> others) {
        List<Difference> differences = new ArrayList<>();
        for (OtherScale other : others) {
            OptionalDouble here = number(bottle, other.property());
            if (here.isEmpty() || other.property().equals(scale.property())) {
                continue;
            }
            double sign = scale.weakestIsLowest() ? 1 : -1;
            List<String> turned = ranked.stream()
                    .filter(lower -> height(lower, scale) + scale.margin() <= height(bottle, scale))
                    .filter(lower -> number(lower, other.property()).stream()
                            .anyMatch(there -> sign * (there - here.getAsDouble()) >= other.margin()))
                    .map(Bottle::name)
                    .toList();
            if (!turned.isEmpty()) {
                differences.add(new Difference(other.property(), turned));
            }
        }
        return List.copyOf(differences);
    }
}
