package org.wickwise.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.ReasonText;
import org.wickwise.why.Questions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why a line of the plan stands there. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description = "Says why a line of the plan stands there, down to the ruler and the handbook.",
        footer = {
            "",
            "Without LABEL it lists the labels of the plan. The reason is a tree: under each statement stand",
            "the rule that concluded it, with its own sentences, and what the rule went by: readings with file",
            "and line, table values with their source, limits you may change."
        })
final class WhyCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(index = "1", arity = "0..1", paramLabel = "LABEL", description = "the label of a line of the plan")
    private Optional<String> label;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Plan plan = Workbench.planFor(caseFile);
        String answer = label.map(asked -> answer(Questions.lineAsked(plan, asked, caseFile.toString())))
                .orElseGet(() -> labels(plan));
        spec.commandLine().getOut().print(answer);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }

    private String answer(PlanLine line) {
        return switch (form) {
            case TEXT -> ReasonText.of(line, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(line);
            case JSON -> JsonReport.of(line);
        };
    }

    private static String labels(Plan plan) {
        StringBuilder text = new StringBuilder("This plan can be asked about:\n");
        plan.lines().forEach(line -> text.append("  ").append(line.label()).append("\n"));
        return text.toString();
    }
}
