package org.wickwise.report;

import java.util.List;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;

/** A plan or a reason as Markdown. */
public final class MarkdownReport {

    private MarkdownReport() {}

    public static String of(Plan plan) {
        StringBuilder text = new StringBuilder("# " + escaped(plan.judged().title()) + "\n\n");
        text.append(escaped(plan.judged().inOneLine())).append("\n");
        for (Section section : Section.values()) {
            List<PlanLine> lines = plan.linesIn(section);
            if (!lines.isEmpty()) {
                text.append("\n## ").append(section.title()).append("\n\n");
                lines.forEach(line -> text.append("- `")
                        .append(line.label())
                        .append("` ")
                        .append(escaped(line.text()))
                        .append("\n"));
            }
        }
        return text.toString();
    }

    /** A few lines under a title. */
    public static String of(String title, List<PlanLine> lines) {
        StringBuilder text = new StringBuilder("# " + escaped(title) + "\n\n");
        lines.forEach(line -> text.append("- `")
                .append(line.label())
                .append("` ")
                .append(escaped(line.text()))
                .append("\n"));
        return text.toString();
    }

    public static String of(PlanLine line) {
        StringBuilder text = new StringBuilder("# Why `" + line.label() + "`\n\n" + escaped(line.text()) + "\n\n");
        ReasonTree.lines(line.reason()).forEach(entry -> text.append("  ".repeat(entry.depth()))
                .append("- ")
                .append(escaped(entry.text()))
                .append("\n"));
        return text.toString();
    }

    static String escaped(String text) {
        return text.replaceAll("([\\\\`*_\\[\\]<>#])", "\\\\$1");
    }
}
