package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.GapLook;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Travelled;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/**
 * The strips that can be read, put together: one movement for each dye and eluent, one gap for each pair. Void strips
 * and void spots are left out. Where strips on the column's own stationary phase exist, only those count.
 */
record StripSummary(List<Movement> movements, List<Apart> gaps) {

    private static final String RF_REFERENCE =
            "Rf = travel / front, both from the origin (IUPAC; Ettre, Pure Appl. Chem. 1993, 65, 819);"
                    + " u by JCGM 100:2008, 5.1.2, the origin shared by both distances";

    static StripSummary of(Case written, Set<Conclusion> verdicts, Map<String, Limit> limits) {
        Builder builder = new Builder(written, verdicts, limits);
        List<Movement> movements = new ArrayList<>();
        List<Apart> gaps = new ArrayList<>();
        for (Eluent eluent : builder.eluents()) {
            List<Strip> strips = builder.stripsFor(eluent);
            for (Dye dye : written.dyes()) {
                builder.movement(dye, eluent, strips).ifPresent(movements::add);
            }
            for (Dye one : written.dyes()) {
                for (Dye other : written.dyes()) {
                    if (one.compareTo(other) < 0) {
                        gaps.addAll(builder.gaps(one, other, eluent, strips));
                    }
                }
            }
        }
        builder.problems.throwIfAny();
        return new StripSummary(List.copyOf(movements), List.copyOf(gaps));
    }

    private static final class Builder {

        private final Case written;
        private final Set<Conclusion> verdicts;
        private final Map<String, Limit> limits;
        private final Problems problems = new Problems();

        Builder(Case written, Set<Conclusion> verdicts, Map<String, Limit> limits) {
            this.written = written;
            this.verdicts = verdicts;
            this.limits = limits;
        }

        List<Eluent> eluents() {
            return written.strips().stream()
                    .map(Strip::eluent)
                    .distinct()
                    .sorted()
                    .toList();
        }

        List<Strip> stripsFor(Eluent eluent) {
            List<Strip> readable = written.strips().stream()
                    .filter(strip -> strip.eluent().equals(eluent))
                    .filter(strip -> !verdicts.contains(new StripVerdict(strip, Reading.VOID)))
                    .sorted(Comparator.comparing(Strip::place))
                    .toList();
            List<Strip> onColumnPhase = readable.stream()
                    .filter(strip ->
                            strip.phase().name().equals(written.column().phaseName()))
                    .toList();
            return onColumnPhase.isEmpty() ? readable : onColumnPhase;
        }

        Optional<Movement> movement(Dye dye, Eluent eluent, List<Strip> strips) {
            List<Strip> readable = strips.stream()
                    .filter(strip -> !verdicts.contains(new SpotVerdict(strip, dye, Reading.VOID)))
                    .filter(strip -> strip.spotOf(dye).isPresent())
                    .toList();
            List<Strip> measured = readable.stream()
                    .filter(strip -> !(strip.spotOf(dye).orElseThrow().position() instanceof Spot.Seen))
                    .toList();
            if (!measured.isEmpty()) {
                return Optional.of(measured(dye, eluent, measured, readable));
            }
            return readable.stream().findFirst().map(strip -> watched(dye, strip, readable));
        }

        private Movement measured(Dye dye, Eluent eluent, List<Strip> strips, List<Strip> readable) {
            List<RetardationFactor> values = strips.stream()
                    .map(strip -> retardationFactor(strip, dye).orElseThrow())
                    .toList();
            agree(dye, strips, values);
            agreeWithWords(dye, strips.get(0), values.get(0), readable);
            List<Reason> readings = new ArrayList<>();
            for (int i = 0; i < strips.size(); i++) {
                readings.add(reading(strips.get(i), dye, values.get(i)));
            }
            return new Movement.Measured(
                    dye, eluent, strips.get(0).phase(), RetardationFactor.combined(values), readings);
        }

        private Movement watched(Dye dye, Strip strip, List<Strip> strips) {
            Behaviour seen = behaviourSeen(strip, dye);
            for (Strip other : strips) {
                Behaviour again = behaviourSeen(other, dye);
                if (again != seen) {
                    contradiction(dye, strip, seen.word(), other, again.word(), "the same word for both");
                }
            }
            return new Movement.Watched(
                    dye,
                    strip.eluent(),
                    strip.phase(),
                    seen,
                    strips.stream().map(one -> observed(one, dye)).toList());
        }

        private static Behaviour behaviourSeen(Strip strip, Dye dye) {
            return ((Spot.Seen) strip.spotOf(dye).orElseThrow().position()).behaviour();
        }

        /** Replicates further apart than strips of one class ever are cannot all be right. */
        private void agree(Dye dye, List<Strip> strips, List<RetardationFactor> values) {
            Limit most = limits.get("replicate disagreement limit");
            List<Double> plain = values.stream().map(RetardationFactor::value).toList();
            int low = plain.indexOf(Collections.min(plain));
            int high = plain.indexOf(Collections.max(plain));
            if (plain.get(high) - plain.get(low) > most.value()) {
                contradiction(
                        dye,
                        strips.get(Math.min(low, high)),
                        "is at Rf " + values.get(Math.min(low, high)).shown(),
                        strips.get(Math.max(low, high)),
                        "is at Rf " + values.get(Math.max(low, high)).shown(),
                        "strips in one eluent no further apart than " + most.shown() + " in Rf");
            }
        }

        /** A word that is two steps away from what was measured on another strip. */
        private void agreeWithWords(Dye dye, Strip measured, RetardationFactor value, List<Strip> readable) {
            Behaviour band = band(value.value());
            for (Strip other : readable) {
                if (other.spotOf(dye).orElseThrow().position() instanceof Spot.Seen seen
                        && Math.abs(seen.behaviour().ordinal() - band.ordinal()) > 1) {
                    contradiction(
                            dye,
                            measured,
                            "is at Rf " + value.shown(),
                            other,
                            seen.behaviour().word(),
                            "words that fit what was measured");
                }
            }
        }

        private Behaviour band(double value) {
            if (value <= limits.get("staying limit").value()) {
                return Behaviour.STAYS;
            }
            if (value <= limits.get("creeping limit").value()) {
                return Behaviour.CREEPS;
            }
            return value <= limits.get("running-ahead limit").value() ? Behaviour.TRAVELS : Behaviour.RUNS_AHEAD;
        }

        private void contradiction(Dye dye, Strip one, String said, Strip other, String again, String expected) {
            Place here = other.spotOf(dye).orElseThrow().place();
            Place there = one.spotOf(dye).orElseThrow().place();
            problems.add(
                    here,
                    "in " + other.eluent() + " " + dye + " " + again + " here and " + said + " in line " + there.line(),
                    expected,
                    "measure both again, and take the strip that is wrong out of the file");
        }

        private Ruler ruler(Strip strip) {
            return new Ruler(
                    strip.rulerDivisionMillimetres()
                            .orElse(limits.get("usual ruler division").value()),
                    limits.get("spot centre half-width").value());
        }

        private Optional<RetardationFactor> retardationFactor(Strip strip, Dye dye) {
            Spot.Position position = strip.spotOf(dye).map(Spot::position).orElseThrow();
            if (position instanceof Travelled travelled) {
                return Optional.of(RetardationFactor.measured(
                        travelled.millimetres(), strip.frontMillimetres().orElseThrow(), ruler(strip)));
            }
            if (position instanceof Spot.Quoted quoted) {
                return Optional.of(new RetardationFactor(
                        quoted.retardationFactor(),
                        limits.get("uncertainty of a reported Rf").value()));
            }
            return Optional.empty();
        }

        private Reason reading(Strip strip, Dye dye, RetardationFactor value) {
            Spot spot = strip.spotOf(dye).orElseThrow();
            if (!(spot.position() instanceof Travelled travelled)) {
                return new Reason.Calculated(
                        "Rf of " + dye + " in " + strip.eluent() + " is " + value.shown(),
                        "as reported, without ruler readings",
                        "the case file",
                        List.of(observed(strip, dye)));
            }
            double front = strip.frontMillimetres().orElseThrow();
            return new Reason.Calculated(
                    "Rf of " + dye + " in " + strip.eluent() + " is " + value.shown(),
                    "Rf = " + Numbers.plain(travelled.millimetres(), 2) + " mm / " + Numbers.plain(front, 2)
                            + " mm; ± is twice the standard uncertainty " + Numbers.fixed(value.uncertainty(), 3),
                    RF_REFERENCE,
                    List.of(observed(strip, dye)));
        }

        private static Reason observed(Strip strip, Dye dye) {
            Spot spot = strip.spotOf(dye).orElseThrow();
            return new Reason.Observed(
                    dye + " " + spot.position().words() + " on " + strip
                            + strip.frontMillimetres().stream()
                                    .mapToObj(front -> ", front at " + Numbers.plain(front, 2) + " mm")
                                    .findFirst()
                                    .orElse(""),
                    spot.place());
        }

        /**
         * The measured gap where there is one, or else what was seen; but two dyes that were seen to touch do touch, whatever
         * their middles say. A shared spot stands in either order.
         */
        List<Apart> gaps(Dye one, Dye other, Eluent eluent, List<Strip> strips) {
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
                                    "between " + gap.ahead() + " ahead and " + gap.behind() + " behind the gap on "
                                            + strip + " looked " + gap.look().word(),
                                    gap.place())));
        }

        private Optional<Apart> measuredGap(Dye one, Dye other, Eluent eluent, List<Strip> strips) {
            List<Strip> both = strips.stream()
                    .filter(strip -> Stream.of(one, other)
                            .allMatch(dye -> strip.spotOf(dye).isPresent()
                                    && !verdicts.contains(new SpotVerdict(strip, dye, Reading.VOID))
                                    && !(strip.spotOf(dye).orElseThrow().position() instanceof Spot.Seen)))
                    .toList();
            if (both.isEmpty()) {
                return Optional.empty();
            }
            List<RetardationFactor> differences =
                    both.stream().map(strip -> difference(strip, one, other)).toList();
            RetardationFactor mean = RetardationFactor.combined(differences);
            boolean oneIsAhead = mean.value() >= 0;
            Dye ahead = oneIsAhead ? one : other;
            Dye behind = oneIsAhead ? other : one;
            double gap = Numbers.steady(Math.abs(mean.value()));
            Reason reason = new Reason.Calculated(
                    ahead + " is ahead of " + behind + " in " + eluent + " by " + Numbers.fixed(gap, 2) + " ± "
                            + Numbers.fixed(2 * mean.uncertainty(), 2) + " of Rf",
                    "difference of the two travels over the front; u = sqrt(2 u_spot^2 + 2 gap^2 u_reading^2) / front",
                    "JCGM 100:2008, 5.1.2, equation 10",
                    both.stream()
                            .flatMap(strip -> Stream.of(observed(strip, ahead), observed(strip, behind)))
                            .toList());
            return Optional.of(new Apart.MeasuredGap(eluent, ahead, behind, gap, mean.uncertainty(), reason));
        }

        private RetardationFactor difference(Strip strip, Dye one, Dye other) {
            RetardationFactor first = retardationFactor(strip, one).orElseThrow();
            RetardationFactor second = retardationFactor(strip, other).orElseThrow();
            double gap = first.value() - second.value();
            boolean bothMeasured = Stream.of(one, other)
                    .allMatch(dye -> strip.spotOf(dye).orElseThrow().position() instanceof Travelled);
            if (!bothMeasured) {
                return new RetardationFactor(gap, Math.hypot(first.uncertainty(), second.uncertainty()));
            }
            Ruler ruler = ruler(strip);
            double uncertainty = Math.sqrt(2)
                    * Math.hypot(ruler.spotMillimetres(), gap * ruler.readingMillimetres())
                    / strip.frontMillimetres().orElseThrow();
            return new RetardationFactor(gap, uncertainty);
        }
    }
}
