package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.ReasonText;
import org.wickwise.report.TextReport;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.why.Answers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why a line of the plan stands there, or what is known of a solvent, a dye, a pair or a strip, and why. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description = "Says why, down to the ruler and the handbook: of a line of the plan, a solvent, a dye,"
                + " two dyes, a strip or a caution.",
        footer = {
            "",
            "  wickwise why CASE step-1            a line of the plan, by its label",
            "  wickwise why CASE SOLVENT           a solvent or blend, by any name of the table",
            "  wickwise why CASE DYE               a dye; two dyes as \"A and B\" or \"A/B\"",
            "  wickwise why CASE \"strip in A\"     a strip; the second one as \"strip 2 in A\"",
            "  wickwise why CASE ignition          a caution, by its label, or all of a topic",
            "",
            "Without WHAT it lists what can be asked. The reason is a tree: under each statement stand the",
            "rule that concluded it, with its own sentences, and what the rule went by: readings with file and",
            "line, table values with their source, limits you may change."
        })
final class WhyCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "WHAT",
            description = "what is asked about; quotation marks may be left out")
    private List<String> words = List.of();

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
        Answers answers =
                new Answers(plan, SolventDataReader.read(Workbench.home().resolve("solvent-data")));
        String question = String.join(" ", words);
        String answer = question.isBlank()
                ? whatCanBeAsked(plan, answers)
                : answer(question, answers.to(question, caseFile.toString()));
        spec.commandLine().getOut().print(answer);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }

    private String answer(String question, List<PlanLine> lines) {
        if (lines.size() > 1) {
            return several("Several are called so: " + question, lines);
        }
        PlanLine line = lines.get(0);
        return switch (form) {
            case TEXT -> ReasonText.of(line, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(line);
            case JSON -> JsonReport.of(line);
        };
    }

    private String several(String title, List<PlanLine> lines) {
        return switch (form) {
            case TEXT -> TextReport.answered(title, lines, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(title, lines);
            case JSON -> JsonReport.of(title, lines);
        };
    }

    private static String whatCanBeAsked(Plan plan, Answers answers) {
        StringBuilder text = new StringBuilder("This plan can be asked about:\n");
        plan.lines().forEach(line -> text.append("  ").append(line.label()).append("\n"));
        text.append("and in plain words about:\n");
        answers.names().forEach(name -> text.append("  ").append(name).append("\n"));
        return text.toString();
    }
}
