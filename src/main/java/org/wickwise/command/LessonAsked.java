package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.lesson.LaidOutLesson;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.notebook.Notebook;
import org.wickwise.plan.ForecastLines;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every question about a lesson takes: the lesson, the plan its groups follow, the rules and the form of the answer. */
final class LessonAsked {

    @Parameters(
            index = "0",
            paramLabel = "LESSON",
            description = "the lesson file; a case file is a lesson of one group")
    private Path lessonFile;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line, to see its reason as a tree")
    private Optional<String> label;

    @Option(
            names = "--notebook",
            paramLabel = "FOLDER",
            description = "the folder of the notebook from which to forecast the plan of a lesson without strips")
    private Optional<Path> notebook;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Mixin
    private OwnRulesOption rules;

    /** The lesson with its plan, and the rules both were judged by. */
    record Asked(LaidOutLesson laidOut, Rulebook rulebook) {}

    /** The lesson file as it was named, or the one of that name beside the program. */
    Path file() {
        return Workbench.named(lessonFile);
    }

    /**
     * The lesson with the plan of its own strips, or with one forecast from the notebook where it has none.
     *
     * @throws ProblemsFound when the lesson, the rules or the solvent data have problems, or there is nothing to plan from
     */
    Asked asked() {
        SolventData data = Workbench.solventData();
        Lesson lesson = LessonReader.read(file(), data);
        if (lesson.basis().strips().isEmpty() && notebook.isEmpty()) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile(lessonFile.toString()),
                    "this lesson has no strips, so there is no plan to reckon from",
                    "`strips`, or a notebook with earlier ones",
                    "add --notebook FOLDER, and look first at what `forecast " + lessonFile
                            + " --notebook FOLDER` makes of it")));
        }
        Desk desk = Workbench.deskFor(lesson.basis(), data, rules.folder());
        Plan plan = lesson.basis().strips().isEmpty() ? forecast(lesson, desk) : desk.plan();
        return new Asked(new LaidOutLesson(lesson, plan, data), desk.judge().rulebook());
    }

    private Plan forecast(Lesson lesson, Desk desk) {
        Notebook earlier = Notebook.in(Workbench.named(notebook.orElseThrow()));
        return ForecastLines.forecast(
                Remembering.of(lesson.basis(), earlier, desk.judge(), desk.data()), desk.judge(), desk.planner());
    }

    /** Prints the lines, or the one that is asked about with its reason, and ends the command. */
    int answered(String title, List<PlanLine> lines, CommandSpec spec) {
        return Printed.ending(Printed.linesOrOne(title, lines, label, lessonFile, form), spec);
    }
}
