package org.wickwise.rulebook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.strip.Apart;
import org.wickwise.strip.GapLook;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Travelled;
import org.wickwise.strip.Strip;
import org.wickwise.strip.Uncertain;
import org.wickwise.strip.WeightedMean;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** Puts the strips of one eluent together to one gap for each pair of dyes. */
final class Gaps {

    private static final String OF_TWO_TRAVELS =
            "difference of the two travels over the front; u = sqrt(2 u_spot^2 + 2 gap^2 u_reading^2) / front";

    private static final String OF_TWO_RF = "difference of the two Rf; u = sqrt(u_1^2 + u_2^2)";
    private static final String BY_DIFFERENCE = "JCGM 100:2008, 5.1.2, equation 10";
    private static final String BY_MEAN = "Birge, Phys. Rev. 1932, 40, 207";

    private final Set<Conclusion> verdicts;
    private final RulerReadings readings;

    /** How much further the first of two dyes lies on one strip, and how that was reckoned. */
    private record Difference(Uncertain value, String formula) {}

    Gaps(Set<Conclusion> verdicts, RulerReadings readings) {
        this.verdicts = verdicts;
        this.readings = readings;
    }

    /**
     * The measured gap where there is one, or else what was seen; but two dyes that were seen to touch do touch, whatever
     * their middles say. A shared spot stands in either order.
     */
    List<Apart> gaps(Dye one, Dye other, Eluent eluent, List<Strip> readable) {
        List<Strip> strips = readable.stream()
                .filter(strip -> Stream.of(one, other)
                        .noneMatch(dye -> verdicts.contains(new SpotVerdict(strip, dye, Reading.VOID))))
                .toList();
        Optional<Strip> shared = strips.stream()
                .filter(strip -> strip.spotOf(one).isPresent())
                .filter(strip -> strip.spotOf(one).equals(strip.spotOf(other)))
                .findFirst();
        if (shared.isPresent()) {
            Reason seen = new Reason.Observed(
                    one + " and " + other + " share a spot on " + shared.get(),
                    shared.get().spotOf(one).orElseThrow().place());
            return List.of(
                    new Apart.SharedSpot(eluent, one, other, seen), new Apart.SharedSpot(eluent, other, one, seen));
        }
        List<Apart.WatchedGap> watched = strips.stream()
                .flatMap(strip -> watchedGaps(strip, one, other))
                .sorted(Comparator.comparing(Apart.WatchedGap::look).reversed())
                .limit(1)
                .toList();
        boolean touching = watched.stream().anyMatch(gap -> gap.look() == GapLook.TOUCHING);
        Optional<Apart> measured = touching ? Optional.empty() : measuredGap(one, other, eluent, strips);
        return measured.map(List::of).orElseGet(() -> List.copyOf(watched));
    }

    private Stream<Apart.WatchedGap> watchedGaps(Strip strip, Dye one, Dye other) {
        return strip.gaps().stream()
                .filter(gap -> Set.of(one, other).equals(Set.of(gap.ahead(), gap.behind())))
                .map(gap -> new Apart.WatchedGap(
                        strip.eluent(),
                        gap.ahead(),
                        gap.behind(),
                        gap.look(),
                        new Reason.Observed(
                                "between " + gap.ahead() + " ahead and " + gap.behind() + " behind the gap on " + strip
                                        + " looked " + gap.look().word(),
                                gap.place())));
    }

    private Optional<Apart> measuredGap(Dye one, Dye other, Eluent eluent, List<Strip> strips) {
        List<Strip> both = strips.stream()
                .filter(strip -> Stream.of(one, other)
                        .allMatch(dye -> strip.spotOf(dye).isPresent()
                                && !(strip.spotOf(dye).orElseThrow().position() instanceof Spot.Seen)))
                .toList();
        if (both.isEmpty()) {
            return Optional.empty();
        }
        List<Difference> differences =
                both.stream().map(strip -> difference(strip, one, other)).toList();
        WeightedMean mean =
                WeightedMean.of(differences.stream().map(Difference::value).toList());
        boolean oneIsAhead = mean.value() >= 0;
        Dye ahead = oneIsAhead ? one : other;
        Dye behind = oneIsAhead ? other : one;
        double gap = Numbers.steady(Math.abs(mean.value()));
        Reason reason = new Reason.Calculated(
                inWords(ahead, behind, eluent, gap) + " ± " + Numbers.fixed(2 * mean.uncertainty(), 2) + " of Rf",
                formula(differences),
                differences.size() > 1 ? BY_DIFFERENCE + "; " + BY_MEAN : BY_DIFFERENCE,
                both.stream()
                        .flatMap(strip ->
                                Stream.of(RulerReadings.observed(strip, ahead), RulerReadings.observed(strip, behind)))
                        .toList());
        return Optional.of(new Apart.MeasuredGap(eluent, ahead, behind, gap, mean.uncertainty(), reason));
    }

    private static String inWords(Dye ahead, Dye behind, Eluent eluent, double gap) {
        String shown = Numbers.fixed(gap, 2);
        return shown.equals(Numbers.fixed(0, 2))
                ? ahead + " is level with " + behind + " in " + eluent + ", " + shown
                : ahead + " is ahead of " + behind + " in " + eluent + " by " + shown;
    }

    private static String formula(List<Difference> differences) {
        String each = differences.stream().map(Difference::formula).distinct().collect(Collectors.joining(", or "));
        return differences.size() == 1
                ? each
                : each + "; of " + differences.size()
                        + " strips the mean weighted by 1/u^2, widened by the Birge ratio where they scatter";
    }

    private Difference difference(Strip strip, Dye one, Dye other) {
        RetardationFactor first = readings.retardationFactor(strip, one).orElseThrow();
        RetardationFactor second = readings.retardationFactor(strip, other).orElseThrow();
        double gap = first.value() - second.value();
        boolean bothMeasured = Stream.of(one, other)
                .allMatch(dye -> strip.spotOf(dye).orElseThrow().position() instanceof Travelled);
        if (!bothMeasured) {
            return new Difference(new Uncertain(gap, Math.hypot(first.uncertainty(), second.uncertainty())), OF_TWO_RF);
        }
        Ruler ruler = readings.ruler(strip);
        double uncertainty = Math.sqrt(2)
                * Math.hypot(ruler.spotMillimetres(), gap * ruler.readingMillimetres())
                / strip.frontMillimetres().orElseThrow();
        return new Difference(new Uncertain(gap, uncertainty), OF_TWO_TRAVELS);
    }
}
