package org.wickwise.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;

/**
 * Where a spot is drawn, as shares of the way from the origin to the front. A spot that was only watched stands within the
 * range of its word.
 *
 * @param retardation Rf with its uncertainty; empty where the spot was only watched
 * @param low the low end of the 95 % interval, or of the word's range
 * @param high the high end of the same
 */
record SpotPlace(Spot spot, Optional<RetardationFactor> retardation, double middle, double low, double high) {

    /** A place for each spot of the strip, the furthest from the origin first. */
    static List<SpotPlace> of(Strip strip, Judgement judgement) {
        return strip.spots().stream()
                .map(spot -> judgement
                        .retardationFactor(strip, spot.dyes().get(0))
                        .map(read -> measured(spot, read))
                        .orElseGet(() -> watched(spot, strip, judgement)))
                .sorted((one, other) -> Double.compare(other.middle, one.middle))
                .toList();
    }

    private static SpotPlace measured(Spot spot, RetardationFactor read) {
        return new SpotPlace(spot, Optional.of(read), read.value(), read.lowest(), read.highest());
    }

    /** The more dyes of the same word it was seen ahead of, the further up in the word's range. */
    private static SpotPlace watched(Spot spot, Strip strip, Judgement judgement) {
        Behaviour word = word(spot).orElseThrow();
        double low = word == Behaviour.STAYS ? 0 : upperEnd(Behaviour.values()[word.ordinal() - 1], judgement);
        double high = upperEnd(word, judgement);
        Map<Spot, Integer> behind = new HashMap<>();
        List<Spot> alike = strip.spots().stream()
                .filter(other -> word(other).equals(Optional.of(word)))
                .toList();
        alike.forEach(other -> behind.put(other, behind(other, alike, strip, alike.size())));
        int most = behind.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        double middle = low + (high - low) * (behind.get(spot) + 1) / (most + 2);
        return new SpotPlace(spot, Optional.empty(), middle, low, high);
    }

    /** The longest row of spots seen behind this one. */
    private static int behind(Spot spot, List<Spot> alike, Strip strip, int most) {
        return most == 0
                ? 0
                : alike.stream()
                        .filter(other -> strip.gaps().stream()
                                .anyMatch(gap -> spot.dyes().contains(gap.ahead())
                                        && other.dyes().contains(gap.behind())))
                        .mapToInt(other -> 1 + behind(other, alike, strip, most - 1))
                        .max()
                        .orElse(0);
    }

    private static double upperEnd(Behaviour word, Judgement judgement) {
        return switch (word) {
            case STAYS -> judgement.limit("staying limit");
            case CREEPS -> judgement.limit("creeping limit");
            case TRAVELS -> judgement.limit("running-ahead limit");
            case RUNS_AHEAD -> 1;
        };
    }

    private static Optional<Behaviour> word(Spot spot) {
        return spot.position() instanceof Spot.Seen seen ? Optional.of(seen.behaviour()) : Optional.empty();
    }

    boolean isWatched() {
        return retardation.isEmpty();
    }

    /** "a" or "a + b". */
    String names() {
        return String.join(" + ", spot.dyes().stream().map(Dye::name).toList());
    }
}
