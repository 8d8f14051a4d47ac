package org.wickwise.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.notebook.Recall;
import org.wickwise.plan.ForecastLines;
import org.wickwise.plan.Plan;
import org.wickwise.substance.SolventData;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a column from the strips of earlier years. */
@Command(
        name = "forecast",
        mixinStandardHelpOptions = true,
        description = "Plans a column from earlier strips, before anyone has run one for this lesson.",
        footer = {
            "",
            "The case may have no strips yet; those it has count before what is remembered. A case with a date",
            "remembers what was run before that day. The forecast says how firmly each Rf is remembered, which",
            "strips the class should run, and what to expect on them."
        })
final class ForecastCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASE", description = "the case or lesson file; strips may be missing")
    private Path caseFile;

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
            description = "the form of the forecast: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Mixin
    private NotebookOption notebook;

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData data = Workbench.solventData();
        Lesson lesson = LessonReader.read(Workbench.named(caseFile), data);
        Desk desk = Workbench.deskFor(lesson.basis(), data, rules.folder());
        Recall recall = Remembering.of(lesson.basis(), notebook.toRead(), desk.judge(), data);
        Plan forecast = ForecastLines.forecast(recall, desk.judge(), desk.planner());
        if (label.isPresent()) {
            return Printed.ending(
                    Printed.linesOrOne(lesson.basis().title(), forecast.lines(), label, caseFile, form), spec);
        }
        Printed.ending(form.of(forecast, "forecast CASE LABEL --notebook FOLDER"), spec);
        return forecast.isRefusal() ? ExitCodes.REFUSED : ExitCodes.PLANNED;
    }
}
