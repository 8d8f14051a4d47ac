package org.wickwise.report;

import org.apache.commons.text.WordUtils;
import org.wickwise.plan.PlanLine;

/** A reason as an indented tree in plain text. Made for reading, not for parsing. */
public final class ReasonText {

    private static final int WIDTH = 110;
    private static final int NARROWEST = 40;

    private ReasonText() {}

    public static String of(PlanLine line, Heading heading) {
        StringBuilder text = new StringBuilder();
        text.append(heading.marked("[" + line.label() + "]"))
                .append(" ")
                .append(line.text())
                .append("\n\n");
        for (ReasonTree.Entry entry : ReasonTree.lines(line.reason())) {
            String indent = "  ".repeat(entry.depth());
            String further = "\n" + indent + "    ";
            int width = Math.max(NARROWEST, WIDTH - indent.length());
            text.append(indent)
                    .append("- ")
                    .append(WordUtils.wrap(entry.text(), width, further, false))
                    .append("\n");
        }
        return text.toString();
    }
}
