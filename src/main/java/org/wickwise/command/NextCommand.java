package org.wickwise.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.PlanLine;
import org.wickwise.why.NextLines;
import org.wickwise.why.NextStrips;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says which strip is most worth running next, and when to stop. */
@Command(
        name = "next",
        mixinStandardHelpOptions = true,
        description = "Says which strip is most worth running next, and when to stop testing.",
        footer = {
            "",
            "For each eluent that may enter the column, strips that might come out are",
            "drawn from what is known of the dyes there; each is judged with the strips of",
            "the case, and a plan is looked for. A strip is worth what that changes for the",
            "better. The same seed gives the same answer."
        })
final class NextCommand implements Callable<Integer> {

    /** Fewer say nothing about a chance of one in ten. */
    private static final int FEWEST_DRAWS = 30;

    private static final int MOST_DRAWS = 100_000;

    @Mixin
    private CaseAsked asked;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line of the answer, to see its reason as a tree")
    private Optional<String> label;

    @Option(
            names = "--draws",
            paramLabel = "NUMBER",
            defaultValue = "60",
            description = "how many strips are drawn for each eluent (default: ${DEFAULT-VALUE})")
    private int draws;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "where the draws begin (default: ${DEFAULT-VALUE})")
    private long seed;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--draws is " + draws + "; expected " + FEWEST_DRAWS + " to " + MOST_DRAWS
                            + ", such as --draws 60");
        }
        Desk desk = asked.desk();
        NextStrips next = NextStrips.of(
                desk.judge(),
                desk.planner(),
                desk.written(),
                draws,
                seed,
                all -> new Progress(spec.commandLine().getErr(), all, "strips looked at"));
        List<PlanLine> lines = NextLines.of(next);
        String title = "What next: " + next.plan().judged().title();
        return asked.answered(title, lines, label, spec);
    }
}
