package org.wickwise.lesson;

import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.RefusalLines;

/** Says why an answer about a lesson speaks of strips only. */
final class OnlyStrips {

    private OnlyStrips() {}

    /** None where the plan and the size of the column are known. */
    static List<PlanLine> lines(LaidOutLesson laidOut) {
        ReasonedLines lines = new ReasonedLines();
        if (laidOut.plan().isRefusal()) {
            laidOut.plan().linesIn(Section.VERDICT).stream()
                    .findFirst()
                    .ifPresent(line -> lines.add(
                            Section.DOUBTS,
                            "no-plan",
                            "Only the strips are reckoned, since there is no sound plan yet. "
                                    + RefusalLines.alone(line.text())
                                    + " `plan` tells what to try next.",
                            line.reason()));
        } else if (laidOut.columnVolumeMillilitres().isEmpty()) {
            lines.said(
                    Section.DOUBTS,
                    "no-size",
                    "Only the strips are reckoned: write `bore mm` and `bed mm` of the column to know what it takes.",
                    List.of(laidOut.plan().judged().column().reason()));
        }
        return lines.all();
    }
}
