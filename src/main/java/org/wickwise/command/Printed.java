package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.ReasonText;
import org.wickwise.report.TextReport;
import org.wickwise.why.Questions;
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

    /**
     * A few lines, or the one that is asked about with its reason as a tree.
     *
     * @throws org.wickwise.text.ProblemsFound with the labels there are, the nearest first, when no line has this one
     */
    static String linesOrOne(String title, List<PlanLine> lines, Optional<String> label, Path caseFile, Form form) {
        return label.map(asked -> one(Questions.lineAsked(lines, asked, caseFile.toString()), form))
                .orElseGet(() -> lines(title, lines, form));
    }

    private static String one(PlanLine line, Form form) {
        return switch (form) {
            case TEXT -> ReasonText.of(line, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(line);
            case JSON -> JsonReport.of(line);
        };
    }

    /** Prints it and ends the command. */
    static int ending(String report, CommandSpec spec) {
        spec.commandLine().getOut().print(report);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }
}
