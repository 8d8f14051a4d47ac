package org.wickwise.command;

import java.nio.file.Path;
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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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
            "The entry is a case with a `date` and a `run`: what was poured, what was collected, what went wrong.",
            "See docs/examples/ferry-ink-run.yaml.",
            "",
            "  wickwise draw ENTRY run > run.svg    the bands expected and the fractions collected"
        })
final class AfterwardsCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "ENTRY", description = "the entry of a notebook, with a run")
    private Path entryFile;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line, to see its reason as a tree")
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
        FinishedColumn finished = FinishedColumn.in(entryFile, rules.folder());
        Judgement judgement = finished.judgement();
        Optional<Route> planned = finished.desk().plan().route();
        List<PlanLine> lines = AfterLines.of(judgement, planned, finished.run());
        String title = judgement.judged().title();
        return Printed.ending(
                label.isPresent()
                        ? Printed.linesOrOne(title, lines, label, entryFile, form)
                        : form.of(new Plan(judgement, planned, lines), "afterwards ENTRY LABEL"),
                spec);
    }
}
