package org.wickwise.command;

import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.TextReport;
import picocli.CommandLine.Model.CommandSpec;

/** Prints what a command has to say. */
final class Printed {

    private Printed() {}

    /** A few lines under a title, without what they rest on, but for JSON, which tells all. */
    static String lines(String title, List<PlanLine> lines, Form form) {
        return switch (form) {
            case TEXT -> TextReport.answered(title, lines, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(title, lines);
            case JSON -> JsonReport.of(title, lines);
        };
    }

    /** Prints it and ends the command. */
    static int ending(String report, CommandSpec spec) {
        spec.commandLine().getOut().print(report);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }
}
