package org.wickwise.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Tabled;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Apart.MeasuredGap;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Spot.Travelled;
import org.wickwise.strip.Strip;
import org.wickwise.text.Numbers;

/** The readings and table values that a reason rests on, said as one says them aloud. */
final class PlainReadings {

    /** The half-width that is told is the 95 % one. */
    private static final double COVERAGE = 2;

    private final Judgement judgement;

    private PlainReadings(Judgement judgement) {
        this.judgement = judgement;
    }

    /** One sentence for each, in the order of the reasons. */
    static List<String> of(Set<Reason> reasons, Judgement judgement) {
        PlainReadings readings = new PlainReadings(judgement);
        Map<Reason, String> inWords = new HashMap<>();
        judgement.movements().forEach(movement -> inWords.put(movement.reason(), readings.words(movement)));
        judgement.gaps().stream()
                .filter(MeasuredGap.class::isInstance)
                .map(MeasuredGap.class::cast)
                .forEach(gap -> inWords.put(gap.reason(), words(gap)));
        List<String> told = new ArrayList<>();
        for (Reason reason : reasons) {
            if (inWords.containsKey(reason)) {
                told.add(inWords.get(reason));
            } else if (reason instanceof Tabled tabled) {
                told.add("The table of solvents says: " + tabled.statement() + ".");
            }
        }
        return told.stream().distinct().toList();
    }

    private String words(Movement movement) {
        String in = "In " + movement.eluent() + " " + movement.dye();
        if (movement instanceof Movement.Watched watched) {
            return in + " was watched and not measured: it "
                    + watched.behaviour().word() + ".";
        }
        RetardationFactor rf = movement.retardation().orElseThrow();
        if (movement.isReckoned()) {
            return in + " was never run; by reckoning its Rf would be " + figure(rf) + ".";
        }
        return onOneStrip(movement)
                .map(strip -> in + " went " + distance(strip, movement) + ": Rf " + figure(rf) + ".")
                .orElse(in + " has Rf " + figure(rf) + ".");
    }

    private static String words(MeasuredGap gap) {
        String shown = Numbers.fixed(gap.gap(), 2);
        String place = shown.equals(Numbers.fixed(0, 2))
                ? " lies level with " + gap.behind() + " in Rf"
                : " lies " + shown + " of Rf ahead of " + gap.behind();
        return "In " + gap.eluent() + " " + gap.ahead() + place + ", give or take "
                + Numbers.fixed(COVERAGE * gap.uncertainty(), 2) + ".";
    }

    /** The strip of a movement, where it is the only one that was measured with a ruler. */
    private Optional<Strip> onOneStrip(Movement movement) {
        List<Strip> measured = judgement.judged().strips().stream()
                .filter(strip -> strip.eluent().equals(movement.eluent())
                        && strip.phase().equals(movement.phase()))
                .filter(strip -> !judgement.holds(new StripVerdict(strip, Reading.VOID)))
                .filter(strip -> strip.spotOf(movement.dye()).isPresent())
                .toList();
        return measured.size() == 1
                ? measured.stream()
                        .filter(strip -> strip.frontMillimetres().isPresent()
                                && strip.spotOf(movement.dye()).orElseThrow().position() instanceof Travelled)
                        .findFirst()
                : Optional.empty();
    }

    private static String distance(Strip strip, Movement movement) {
        Travelled travelled =
                (Travelled) strip.spotOf(movement.dye()).orElseThrow().position();
        return Numbers.plain(travelled.millimetres(), 2) + " of "
                + Numbers.plain(strip.frontMillimetres().orElseThrow(), 2) + " mm";
    }

    private static String figure(RetardationFactor rf) {
        return Numbers.fixed(rf.value(), 2) + ", give or take " + Numbers.fixed(COVERAGE * rf.uncertainty(), 2);
    }
}
