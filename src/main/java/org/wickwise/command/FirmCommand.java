package org.wickwise.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.PlanLine;
import org.wickwise.why.FirmLines;
import org.wickwise.why.Firmness;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how firm the plan of a case is. */
@Command(
        name = "firm",
        mixinStandardHelpOptions = true,
        description = "Says how often the plan stays the same when every reading is read again within its uncertainty.",
        footer = {
            "",
            "Every origin, front and spot is moved by a random error of its own standard",
            "uncertainty, the rules judge again and the best plan is looked for again. The",
            "same seed gives the same answer. The weakest link is the reading that lay most",
            "differently where something else came out."
        })
final class FirmCommand implements Callable<Integer> {

    /** Fewer say nothing about a chance of one in ten. */
    private static final int FEWEST_REDRAWS = 30;

    private static final int MOST_REDRAWS = 1_000_000;

    @Mixin
    private CaseAsked asked;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line of the answer, to see its reason as a tree")
    private Optional<String> label;

    @Option(
            names = "--redraws",
            paramLabel = "NUMBER",
            defaultValue = "2000",
            description = "how often the readings are read again (default: ${DEFAULT-VALUE})")
    private int redraws;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "where the random errors begin (default: ${DEFAULT-VALUE})")
    private long seed;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (redraws < FEWEST_REDRAWS || redraws > MOST_REDRAWS) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--redraws is " + redraws + "; expected " + FEWEST_REDRAWS + " to " + MOST_REDRAWS
                            + ", such as --redraws 2000");
        }
        Desk desk = asked.desk();
        Progress progress = new Progress(spec.commandLine().getErr(), redraws, "redraws");
        Firmness firmness = Firmness.of(desk.judge(), desk.planner(), desk.written(), redraws, seed, progress);
        List<PlanLine> lines = FirmLines.of(firmness);
        String title = "How firm: " + firmness.judgement().judged().title();
        return asked.answered(title, lines, label, spec);
    }
}
