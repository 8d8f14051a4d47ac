package org.wickwise.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.PlanLine;
import org.wickwise.rulebook.Judgement;
import org.wickwise.why.Aim;
import org.wickwise.why.AimReader;
import org.wickwise.why.NeededLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what would have to be different for something to be so. */
@Command(
        name = "needed",
        mixinStandardHelpOptions = true,
        description = "Says what would have to be different for something to be so: the smallest change of a reading,"
                + " a limit or a bottle, or another bed.",
        footer = {
            "",
            "Each WISH is a short sentence in quotes:",
            "",
            "  \"SOLVENT holds the load\"        \"SOLVENT releases DYE\"",
            "  \"SOLVENT sweeps\"                \"SOLVENT may enter the column\"",
            "  \"the plan pours SOLVENT\"        \"DYE leaves alone\"",
            "  \"there is a plan\"",
            "",
            "Every reading is tried in hundredths of Rf, every limit over its range, every",
            "bottle of the shelf and the table, and every stationary phase of the table (a",
            "guess, since the strips stay as they were run); two readings where no single",
            "one serves. No file is touched."
        })
final class NeededCommand implements Callable<Integer> {

    @Mixin
    private CaseAsked asked;

    @Parameters(index = "1", paramLabel = "WISH", description = "what is wished for, in quotes")
    private String wish;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line of the answer, to see its reason as a tree")
    private Optional<String> label;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Desk desk = asked.desk();
        Judgement written = desk.judge().judge(desk.written());
        Aim aim = AimReader.read(wish, written, desk.data());
        List<PlanLine> lines = NeededLines.of(written, desk.judge(), desk.planner(), aim);
        String title = "What would have to be different, so that " + aim.words() + "?";
        return asked.answered(title, lines, label, spec);
    }
}
