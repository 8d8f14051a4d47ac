package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;

/** Lines on their way into a list, each with the reason it is written with. */
final class ReasonedLines {

    private static final String DEFINITION = "by definition";

    private final List<PlanLine> lines = new ArrayList<>();

    /** A line whose number follows from its grounds by nothing but adding and multiplying. */
    void reckoned(Section section, String label, String text, String formula, List<Reason> grounds) {
        reckoned(section, label, text, formula, DEFINITION, grounds);
    }

    void reckoned(Section section, String label, String text, String formula, String reference, List<Reason> grounds) {
        add(section, label, text, new Reason.Calculated(text, formula, reference, grounds));
    }

    /** A line without a formula. */
    void said(Section section, String label, String text, List<Reason> grounds) {
        add(section, label, text, new Reason.Chosen(text, List.of(), grounds));
    }

    void add(Section section, String label, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    void addAll(List<PlanLine> others) {
        lines.addAll(others);
    }

    List<PlanLine> all() {
        return List.copyOf(lines);
    }
}
