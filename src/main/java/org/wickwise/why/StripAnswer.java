package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.RunAgain;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Whether a strip can be trusted and why, and what stands on it. */
final class StripAnswer {

    private final Judgement judgement;
    private final Strip strip;
    private final String name;
    private final Told told = new Told();

    private StripAnswer(Plan plan, Strip strip, String name) {
        this.judgement = plan.judgement();
        this.strip = strip;
        this.name = name;
    }

    static PlanLine of(Plan plan, Strip strip, String name) {
        StripAnswer answer = new StripAnswer(plan, strip, name);
        boolean isVoid = answer.verdict();
        answer.readings(isVoid);
        answer.spots();
        answer.runAgain();
        return answer.told.line(name, Section.STRIPS);
    }

    /** Whether the strip is void. */
    private boolean verdict() {
        for (Reading reading : List.of(Reading.VOID, Reading.DOUBTFUL, Reading.USABLE)) {
            StripVerdict verdict = new StripVerdict(strip, reading);
            if (judgement.holds(verdict)) {
                Reason.Concluded reason = judgement.reason(verdict);
                told.because(Words.capital(name) + " is " + reading.word() + ": " + Told.becauses(reason), reason);
                return reading == Reading.VOID;
            }
        }
        return false;
    }

    private void readings(boolean isVoid) {
        List<Reason> seen = new ArrayList<>();
        strip.frontMillimetres()
                .ifPresent(front -> seen.add(new Reason.Observed(
                        "the front of " + name + " is at " + Numbers.plain(front, 2) + " mm", strip.place())));
        for (Spot spot : strip.spots()) {
            seen.add(new Reason.Observed(
                    Words.joined(spot.dyes().stream().map(Dye::name).toList()) + " "
                            + spot.position().words() + " on " + name,
                    spot.place()));
        }
        String words = strip.spots().stream()
                .flatMap(spot -> spot.dyes().stream()
                        .map(dye -> dye + " "
                                + judgement
                                        .retardationFactor(strip, dye)
                                        .map(rf -> "at Rf " + rf.shown())
                                        .orElse("by eye")))
                .collect(Collectors.joining("; "));
        if (!words.isEmpty()) {
            told.say((isVoid ? "Written down, and not used: " : "It shows ") + words + ".", seen);
        }
        if (!strip.notSeen().isEmpty()) {
            told.say("Nobody could see "
                    + Words.joined(
                            strip.notSeen().stream().sorted().map(Dye::name).toList()) + " on it.");
        }
    }

    private void spots() {
        judgement.all(SpotVerdict.class).stream()
                .filter(verdict -> verdict.strip().equals(strip))
                .forEach(verdict -> {
                    Reason.Concluded reason = judgement.reason(verdict);
                    told.because(
                            "Its spot of " + verdict.dye() + " is "
                                    + verdict.reading().word() + ": " + Told.becauses(reason),
                            reason);
                });
    }

    private void runAgain() {
        judgement.all(RunAgain.class).stream()
                .filter(again -> again.strip().equals(strip))
                .forEach(again -> {
                    Reason.Concluded reason = judgement.reason(again);
                    told.because(Told.becauses(reason), reason);
                });
    }
}
