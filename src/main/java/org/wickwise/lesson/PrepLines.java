package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.text.Words;

/** What to have ready for a lesson, each line with its reason. */
public final class PrepLines {

    private PrepLines() {}

    /** The solvents first, then what else stands on the bench, then the waste. */
    public static List<PlanLine> of(LaidOutLesson laidOut, Rulebook rulebook) {
        SolventLines solvents = new SolventLines(laidOut);
        ReasonedLines lines = new ReasonedLines();
        lines.addAll(List.of(inShort(laidOut, solvents)));
        lines.addAll(OnlyStrips.lines(laidOut));
        lines.addAll(solvents.lines());
        lines.addAll(new EquipmentLines(laidOut, rulebook.columnSizes()).lines());
        lines.addAll(new WasteLines(laidOut).lines());
        return lines.all();
    }

    private static PlanLine inShort(LaidOutLesson laidOut, SolventLines solvents) {
        int groups = laidOut.groups();
        String whom = groups == 1 ? "one group" : groups + " groups";
        String shelf = laidOut.hasShelf() ? shelf(solvents) : "no shelf is named, so nothing is said of bottles";
        String text = "For " + whom + " with " + laidOut.stripsInWords() + " "
                + (laidOut.plan().isRefusal() ? "and no column yet" : "and a column " + (groups == 1 ? "" : "each"))
                        .strip()
                + ": " + shelf + ".";
        List<Reason> grounds = new ArrayList<>(List.of(laidOut.groupsStated(), laidOut.stripsStated()));
        solvents.lines().stream()
                .filter(line -> line.section() == Section.DOUBTS)
                .map(PlanLine::reason)
                .forEach(grounds::add);
        return new PlanLine("prepare", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds));
    }

    private static String shelf(SolventLines solvents) {
        if (solvents.wanting().isEmpty() && solvents.untold().isEmpty()) {
            return "the shelf has enough";
        }
        List<String> said = new ArrayList<>();
        if (!solvents.wanting().isEmpty()) {
            said.add("not enough on the shelf: " + Words.joined(solvents.wanting()));
        }
        if (!solvents.untold().isEmpty()) {
            said.add("the shelf does not say how much it has of " + Words.joined(solvents.untold()));
        }
        return String.join("; ", said);
    }
}
