package org.wickwise.report;

import java.util.List;
import org.apache.commons.text.WordUtils;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;

/** A plan as plain text, each line behind its label. Made for reading, not for parsing. */
public final class TextReport {

    private static final int WIDTH = 96;
    private static final int INDENT = 2;

    private TextReport() {}

    public static String of(Plan plan, Heading heading) {
        return of(plan, heading, "why CASE LABEL");
    }

    /** @param question how a person asks for the reason of a line */
    public static String of(Plan plan, Heading heading, String question) {
        StringBuilder text = new StringBuilder();
        text.append(heading.marked(plan.judged().title())).append("\n");
        text.append(plan.judged().inOneLine()).append("\n");
        for (Section section : Section.values()) {
            List<PlanLine> lines = plan.linesIn(section);
            if (!lines.isEmpty()) {
                text.append("\n").append(heading.marked(section.title())).append("\n");
                lines.forEach(line -> text.append(hanging("[" + line.label() + "] " + line.text())));
            }
        }
        text.append("\nAsk why with the label in brackets: " + question + "\n");
        return text.toString();
    }

    /** A few lines under a title, without what they rest on. */
    public static String answered(String title, List<PlanLine> lines, Heading heading) {
        StringBuilder text = new StringBuilder(heading.marked(title)).append("\n");
        lines.forEach(line -> text.append(hanging("[" + line.label() + "] " + line.text())));
        return text.toString();
    }

    private static String hanging(String line) {
        String indent = " ".repeat(INDENT);
        String wrapped = WordUtils.wrap(line, WIDTH - 2 * INDENT, "\n" + indent + indent, false);
        return indent + wrapped + "\n";
    }
}
