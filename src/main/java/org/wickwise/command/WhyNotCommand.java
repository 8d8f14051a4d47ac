package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.why.WhyNot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why something is not so. */
@Command(
        name = "why-not",
        mixinStandardHelpOptions = true,
        description = "Says why something is not so: a solvent poured, a dye alone, two dyes parted.",
        footer = {
            "",
            "  wickwise why-not CASE SOLVENT          why it is not poured, does not hold, release or sweep",
            "  wickwise why-not CASE \"A, then B\"     why the plan does not pour these in this order",
            "  wickwise why-not CASE DYE              why it does not leave alone, and what does not release it",
            "  wickwise why-not CASE \"DYE and DYE\"   why they are not parted",
            "  wickwise why-not CASE \"strip in A\"    why it is not void, doubtful or usable",
            "  wickwise why-not CASE CAUTION          why the plan does not give it, by the name of its rule",
            "",
            "For every rule that could have said otherwise it names the first sentence that does not hold and",
            "what is in the way. Something may rule it out, the strips may say otherwise, nobody may know, no",
            "rule may speak of it, or the rules may contradict each other."
        })
final class WhyNotCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(index = "1", paramLabel = "WHAT", description = "what is asked about, in quotes")
    private String what;

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

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Desk desk = Desk.of(caseFile, rules.folder());
        Plan plan = desk.plan();
        List<PlanLine> lines = new WhyNot(plan, desk.judge(), desk.planner()).to(what, caseFile.toString());
        String title = "Why not " + what + "?";
        return Printed.ending(Printed.linesOrOne(title, lines, label, caseFile, form), spec);
    }
}
