package org.wickwise.substance;

import java.util.List;
import java.util.Optional;
import org.wickwise.reason.Reason;
import org.wickwise.text.Place;

/**
 * Which solvents part into two layers, and what mixes with both sides. Pairs that are not listed mix.
 *
 * @param bridges solvents that go between two that do not mix, the most useful first
 * @param bridgesFrom where that comes from
 */
public record Miscibility(List<Gap> gaps, List<Solvent> bridges, String bridgesFrom) {

    private static final double HALF = 50;

    /**
     * Each solvent of one side parts from each of the other.
     *
     * @param lesserPercent the share by volume from which the lesser of the two parts the liquids of two eluents, where the
     *     other makes up at least half of its own, above 0 to 50
     */
    public record Gap(
            List<Solvent> one,
            List<Solvent> other,
            double lesserPercent,
            String condition,
            String source,
            Place place) {

        /** The share that the lesser of two parts has unless the table says another. */
        static final double USUAL_LESSER_PERCENT = HALF;

        boolean parts(Eluent.Part a, Eluent.Part b) {
            return parts(a.solvent(), b.solvent())
                    && Math.max(a.percent(), b.percent()) >= HALF
                    && Math.min(a.percent(), b.percent()) >= lesserPercent;
        }

        boolean parts(Solvent a, Solvent b) {
            return one.contains(a) && other.contains(b) || one.contains(b) && other.contains(a);
        }
    }

    /** Why two solvents do not mix; empty when they do. */
    public Optional<Reason> parting(Solvent a, Solvent b) {
        return gaps.stream().filter(gap -> gap.parts(a, b)).findFirst().map(gap -> told(gap, a, b));
    }

    /**
     * Why the liquid of one eluent does not mix with that of another; empty when it does. One of the two that part makes up
     * at least half of its eluent, the other at least the share that the table gives, half where it gives none: what there is
     * less of is carried by the rest.
     */
    public Optional<Reason> parting(Eluent before, Eluent after) {
        return before.parts().stream()
                .flatMap(first -> after.parts().stream().flatMap(second -> parting(first, second).stream()))
                .findFirst();
    }

    private Optional<Reason> parting(Eluent.Part first, Eluent.Part second) {
        return gaps.stream()
                .filter(gap -> gap.parts(first, second))
                .findFirst()
                .map(gap -> told(gap, first.solvent(), second.solvent()));
    }

    private static Reason told(Gap gap, Solvent a, Solvent b) {
        return new Reason.Limited(
                a.name() + " and " + b.name() + " do not mix (" + gap.condition() + ")", gap.place(), gap.source());
    }

    /** Why a blend of two solvents is not one liquid; empty when it is. A third part may bridge, so three are not judged. */
    public Optional<Reason> partingWithin(Eluent eluent) {
        return eluent.parts().size() == 2
                ? parting(eluent.parts().get(0).solvent(), eluent.parts().get(1).solvent())
                : Optional.empty();
    }

    /** The solvents that mix with both and may go between them, the most useful first. */
    public List<Solvent> between(Eluent before, Eluent after) {
        return bridges.stream()
                .filter(bridge -> parting(before, Eluent.neat(bridge)).isEmpty())
                .filter(bridge -> parting(Eluent.neat(bridge), after).isEmpty())
                .toList();
    }
}
