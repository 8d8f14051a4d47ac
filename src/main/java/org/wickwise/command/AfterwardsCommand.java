package org.wickwise.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.AfterLines;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.Route;
import org.wickwise.rulebook.Judgement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Compares a finished column with what was to be expected of it. */
@Command(
        name = "afterwards",
        mixinStandardHelpOptions = true,
        description =
                "Compares what came off a finished column with what was to be expected: what to put together, where"
                        + " the dyes are, why it may have differed, and what the run teaches.",
        footer = {
            "",
            "The file is an entry of a notebook, a case with a `date` and a `run`: what was",
            "poured, what was collected, what went wrong. See",
            "docs/examples/ferry-ink-run.yaml.",
            "",
            "  wickwise draw ENTRY run > run.svg    what was expected, what was collected"
        })
final class AfterwardsCommand implements Callable<Integer> {

    @Mixin
    private AnswerAsked answer;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        FinishedColumn finished = FinishedColumn.in(answer.named(), answer.ownRules());
        Judgement judgement = finished.judgement();
        Optional<Route> planned = finished.desk().plan().route();
        List<PlanLine> lines = AfterLines.of(judgement, planned, finished.run());
        return Printed.ending(answer.plan(new Plan(judgement, planned, lines), "afterwards FILE LABEL"), spec);
    }
}
