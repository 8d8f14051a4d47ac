package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.lesson.LaidOutLesson;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.notebook.Notebook;
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

/** What every question about a lesson takes: the lesson, the plan its groups follow, the rules and the form of the answer. */
final class LessonAsked {

    @Option(
            names = "--notebook",
            paramLabel = "FOLDER",
            description = "the folder of the notebook from which to forecast the plan of a lesson without strips")
    private Optional<Path> notebook;

    @Mixin
    private AnswerAsked answer;

    /** The lesson with its plan, and the rules both were judged by. */
    record Asked(LaidOutLesson laidOut, Rulebook rulebook) {}

    /** The lesson file as it was named, or the one of that name beside the program. */
    Path file() {
        return answer.file();
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
                    Place.wholeFile(answer.named().toString()),
                    "this lesson has no strips, so there is no plan to reckon from",
                    "`strips`, or a notebook with earlier ones",
                    "add --notebook FOLDER, and look first at what `forecast " + answer.named()
                            + " --notebook FOLDER` makes of it")));
        }
        Desk desk = Workbench.deskFor(lesson.basis(), data, answer.ownRules());
        Plan plan = lesson.basis().strips().isEmpty()
                ? Remembering.forecast(desk, Notebook.in(Workbench.named(notebook.orElseThrow())))
                : desk.plan();
        return new Asked(new LaidOutLesson(lesson, plan, data), desk.judge().rulebook());
    }

    /** Prints the lines, or the one that is asked about with its reason, and ends the command. */
    int answered(String title, List<PlanLine> lines, CommandSpec spec) {
        return Printed.ending(answer.lines(title, lines), spec);
    }
}
