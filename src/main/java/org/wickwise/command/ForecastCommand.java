package org.wickwise.command;

import java.util.concurrent.Callable;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.plan.Plan;
import org.wickwise.substance.SolventData;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Plans a column from the strips of earlier years. */
@Command(
        name = "forecast",
        mixinStandardHelpOptions = true,
        description = "Plans a column from earlier strips, before anyone has run one for this lesson.",
        footer = {
            "",
            "The case or lesson may have no strips yet; those it has count before what is",
            "remembered. A case with a date remembers what was run before that day. The",
            "forecast says how firmly each Rf is remembered, which strips the class should",
            "run, and what to expect on them."
        })
final class ForecastCommand implements Callable<Integer> {

    @Mixin
    private NotebookOption notebook;

    @Mixin
    private AnswerAsked answer;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData data = Workbench.solventData();
        Lesson lesson = LessonReader.read(answer.file(), data);
        Desk desk = Workbench.deskFor(lesson.basis(), data, answer.ownRules());
        Plan forecast = Remembering.forecast(desk, notebook.toRead());
        Printed.ending(answer.plan(forecast, "forecast FILE LABEL --notebook FOLDER"), spec);
        return forecast.isRefusal() ? ExitCodes.REFUSED : ExitCodes.PLANNED;
    }
}
