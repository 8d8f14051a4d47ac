package org.wickwise.substance;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    /** Each solvent of one side parts from each of the other. */
    public record Gap(List<Solvent> one, List<Solvent> other, String condition, String source, Place place) {

        boolean parts(Solvent a, Solvent b) {
            return one.contains(a) && other.contains(b) || one.contains(b) && other.contains(a);
        }
    }

    /** Why two solvents do not mix; empty when they do. */
    public Optional<Reason> parting(Solvent a, Solvent b) {
        return gaps.stream()
                .filter(gap -> gap.parts(a, b))
                .findFirst()
                .map(gap -> new Reason.Limited(
                        a.name() + " and " + b.name() + " do not mix (" + gap.condition() + ")",
                        gap.place(),
                        gap.source()));
    }

    /**
     * Why the liquid of one eluent does not mix with that of another; empty when it does. Only parts that make up at
     * least half of their eluent are asked: what there is less of is carried by the rest.
     */
    public Optional<Reason> parting(Eluent before, Eluent after) {
        return mainParts(before)
                .flatMap(first ->
                        mainParts(after).map(second -> parting(first, second)).flatMap(Optional::stream))
                .findFirst();
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

    private static Stream<Solvent> mainParts(Eluent eluent) {
        return eluent.parts().stream().filter(part -> part.percent() >= HALF).map(Eluent.Part::solvent);
    }
}
