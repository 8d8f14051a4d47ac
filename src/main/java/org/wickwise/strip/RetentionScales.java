package org.wickwise.strip;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentStrength;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;

/**
 * Which measures of an eluent a stationary phase follows, and which of two solvents is the stronger on it. Not for several
 * threads.
 */
final class RetentionScales {

    private static final String POLAR_ADSORBENT = "polar adsorbent";
    private static final String REVERSED_PHASE = "reversed phase";
    private static final String POLARITY_INDEX = "polarity index";

    private final StationaryPhase phase;
    private final Optional<RetentionScale> strength;
    private final Map<Pair, RetentionScale> ofPairs = new HashMap<>();

    RetentionScales(StationaryPhase phase) {
        this.phase = phase;
        this.strength = EluentStrength.on(phase).map(RetentionScale::ofStrength);
    }

    StationaryPhase phase() {
        return phase;
    }

    /** Whether any law of retention is known for the phase. */
    boolean followsALaw() {
        return isAdsorbent() || isReversed();
    }

    /**
     * The scales an eluent may be placed on, the one to prefer first: its own pair of solvents, which needs no table,
     * before the strengths of the table.
     *
     * @param run the eluents of the strips
     */
    List<RetentionScale> of(Eluent eluent, Collection<Eluent> run) {
        List<RetentionScale> scales = new ArrayList<>();
        if (isAdsorbent()) {
            pairOf(eluent).ifPresent(pair -> scales.add(ofPair(pair, RetentionScale::ofLogarithm)));
            strength.ifPresent(scales::add);
        }
        if (isReversed()) {
            pairOf(eluent).ifPresentOrElse(pair -> scales.add(ofPair(pair, RetentionScale::ofShare)), () -> run.stream()
                    .filter(blend -> eluent.isNeat()
                            && blend.contains(eluent.parts().get(0).solvent()))
                    .map(this::pairOf)
                    .flatMap(Optional::stream)
                    .distinct()
                    .sorted((one, other) -> one.toString().compareTo(other.toString()))
                    .forEach(pair -> scales.add(ofPair(pair, RetentionScale::ofShare))));
        }
        return scales;
    }

    /** The scale of a pair, the same one each time. */
    private RetentionScale ofPair(Pair pair, BiFunction<Solvent, Solvent, RetentionScale> law) {
        return ofPairs.computeIfAbsent(pair, any -> law.apply(pair.weak(), pair.strong()));
    }

    /** Two solvents in the order of their strength. */
    record Pair(Solvent weak, Solvent strong) {}

    /** The two in the order of their strength on this phase; empty where nothing says which is the stronger. */
    Optional<Pair> ordered(Solvent one, Solvent other) {
        if (isReversed()) {
            return one.aqueous() == other.aqueous()
                    ? Optional.empty()
                    : Optional.of(one.aqueous() ? new Pair(one, other) : new Pair(other, one));
        }
        if (!isAdsorbent()) {
            return Optional.empty();
        }
        return phase.ladder()
                .flatMap(ladder -> byProperty(ladder.property(), one, other))
                .or(() -> byProperty(POLARITY_INDEX, one, other));
    }

    private Optional<Pair> pairOf(Eluent eluent) {
        return eluent.parts().size() == 2
                ? ordered(eluent.parts().get(0).solvent(), eluent.parts().get(1).solvent())
                : Optional.empty();
    }

    private static Optional<Pair> byProperty(String property, Solvent one, Solvent other) {
        OptionalDouble first = one.number(property);
        OptionalDouble second = other.number(property);
        if (first.isEmpty() || second.isEmpty() || first.getAsDouble() == second.getAsDouble()) {
            return Optional.empty();
        }
        return Optional.of(first.getAsDouble() < second.getAsDouble() ? new Pair(one, other) : new Pair(other, one));
    }

    private boolean isAdsorbent() {
        return phase.kind().equals(POLAR_ADSORBENT);
    }

    private boolean isReversed() {
        return phase.kind().equals(REVERSED_PHASE);
    }
}
