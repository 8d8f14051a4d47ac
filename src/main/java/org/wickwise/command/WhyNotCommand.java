package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.ReasonText;
import org.wickwise.substance.Eluent;
import org.wickwise.why.Named;
import org.wickwise.why.Questions;
import org.wickwise.why.WhyNot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why an eluent is not poured, may not enter, does not hold, release or sweep. */
@Command(
        name = "why-not",
        mixinStandardHelpOptions = true,
        description = "Says why a solvent or blend is not poured, may not enter, does not hold, release or sweep.",
        footer = {
            "",
            "For every rule that could have said otherwise it names the first sentence that does not hold and",
            "what is in the way. Something may rule it out, the strips may say otherwise, nobody may know, or",
            "no rule may speak of it."
        })
final class WhyNotCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(index = "1", paramLabel = "SOLVENT", description = "a solvent or a blend, as a case writes it")
    private String solvent;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line of the answer, to see its reason as a tree")
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
        Desk desk = Desk.of(caseFile);
        Plan plan = desk.plan();
        Eluent eluent = Named.eluent(solvent, plan.judgement(), desk.data(), caseFile.toString());
        List<PlanLine> lines = new WhyNot(plan, desk.judge(), desk.planner()).of(eluent);
        String report = label.map(asked -> one(asked, lines))
                .orElseGet(() -> Printed.lines("Why not " + eluent + "?", lines, form));
        return Printed.ending(report, spec);
    }

    private String one(String asked, List<PlanLine> lines) {
        PlanLine line = Questions.lineAsked(lines, asked, caseFile.toString());
        return switch (form) {
            case TEXT -> ReasonText.of(line, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(line);
            case JSON -> JsonReport.of(line);
        };
    }
}
