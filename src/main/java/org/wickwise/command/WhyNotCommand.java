package org.wickwise.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.WhyNot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why something is not so. */
@Command(
        name = "why-not",
        mixinStandardHelpOptions = true,
        description = "Says why something is not so: a solvent poured, a dye alone, two dyes parted.",
        footer = {
            "",
            "  wickwise why-not CASE SOLVENT          why it is not poured",
            "  wickwise why-not CASE \"A, then B\"     why not in this order",
            "  wickwise why-not CASE DYE              why it does not leave alone",
            "  wickwise why-not CASE \"DYE and DYE\"   why they are not parted",
            "  wickwise why-not CASE \"strip in A\"    why it is not void or usable",
            "  wickwise why-not CASE CAUTION          why the plan does not give it",
            "",
            "For every rule that could have said otherwise it names the first sentence that",
            "does not hold and what is in the way. Something may rule it out, the strips",
            "may say otherwise, nobody may know, no rule may speak of it, or the rules may",
            "contradict each other."
        })
final class WhyNotCommand implements Callable<Integer> {

    @Mixin
    private CaseAsked asked;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "WHAT [LABEL]",
            description =
                    "what is asked about, and behind it the label of a line of the answer to see its reason as a tree")
    private List<String> words;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Desk desk = asked.desk();
        Plan plan = desk.plan();
        WhyNot whyNot = new WhyNot(plan, desk.judge(), desk.planner());
        Answer answer = answer(whyNot);
        return asked.answered(whyNot.heading(answer.what()), answer.lines(), answer.label(), spec);
    }

    /** What is asked about, with its answer. */
    private record Answer(String what, List<PlanLine> lines, Optional<String> label) {}

    /** All the words are what is asked about, or all but the last, which is then a label; quotes may be left out. */
    private Answer answer(WhyNot whyNot) {
        String all = String.join(" ", words);
        try {
            return new Answer(all, whyNot.to(all, asked.file()), Optional.empty());
        } catch (ProblemsFound unknown) {
            if (words.size() == 1) {
                throw unknown;
            }
            String what = String.join(" ", words.subList(0, words.size() - 1));
            return new Answer(what, whyNot.to(what, asked.file()), Optional.of(words.get(words.size() - 1)));
        }
    }
}
