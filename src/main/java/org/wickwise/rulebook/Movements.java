package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** Puts the strips of one eluent together to one movement for each dye; contradictions are reported. */
final class Movements {

    /** Near a limit the eye may take a behaviour for its neighbour, no further; our choice. */
    private static final int STEPS_OFF_BY_EYE = 1;

    private final Set<Conclusion> verdicts;
    private final Map<String, Limit> limits;
    private final RulerReadings readings;
    private final Problems problems;

    Movements(Set<Conclusion> verdicts, Map<String, Limit> limits, RulerReadings readings, Problems problems) {
        this.verdicts = verdicts;
        this.limits = limits;
        this.readings = readings;
        this.problems = problems;
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
                .map(strip -> readings.retardationFactor(strip, dye).orElseThrow())
                .toList();
        agree(dye, strips, values);
        agreeWithWords(dye, strips.get(0), values.get(0), readable);
        List<Reason> told = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            told.add(readings.reading(strips.get(i), dye, values.get(i)));
        }
        return new Movement.Measured(dye, eluent, strips.get(0).phase(), RetardationFactor.combined(values), told);
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
                strips.stream().map(one -> RulerReadings.observed(one, dye)).toList());
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
        if (Numbers.steady(plain.get(high) - plain.get(low)) > most.value()) {
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
        Behaviour band = band(Numbers.steady(value.value()));
        for (Strip other : readable) {
            if (other.spotOf(dye).orElseThrow().position() instanceof Spot.Seen seen
                    && Math.abs(seen.behaviour().ordinal() - band.ordinal()) > STEPS_OFF_BY_EYE) {
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
}
