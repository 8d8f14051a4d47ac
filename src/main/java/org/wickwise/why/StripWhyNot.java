package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Strip;
import org.wickwise.text.Words;

/** Why a strip is not usable, or why it is neither void nor doubtful. */
final class StripWhyNot {

    private StripWhyNot() {}

    static List<PlanLine> of(Plan plan, Objected objected, Strip strip, String name) {
        Judgement judgement = plan.judgement();
        List<PlanLine> lines = new ArrayList<>();
        for (Reading reading : List.of(Reading.VOID, Reading.DOUBTFUL, Reading.USABLE)) {
            StripVerdict verdict = new StripVerdict(strip, reading);
            String label = reading.word();
            if (judgement.holds(verdict)) {
                Reason.Concluded reason = judgement.reason(verdict);
                String text = Words.capital(name) + " is " + reading.word() + ": " + Told.becauses(reason);
                lines.add(new PlanLine(label, Section.CHOICE, text, reason));
            } else {
                lines.add(objected.lineOf(
                        label,
                        name + " is not " + reading.word(),
                        strip.eluent(),
                        "and nobody noted it",
                        objected.objectionsTo(List.of(verdict))));
            }
        }
        return lines;
    }
}
