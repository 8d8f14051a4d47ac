package org.wickwise.command;

import java.util.concurrent.Callable;
import org.wickwise.lesson.PrepLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists what to have ready for a lesson. */
@Command(
        name = "prepare",
        mixinStandardHelpOptions = true,
        description = "Lists what a lesson needs: solvents with reserve, blends, strips, columns, waste.",
        footer = {
            "",
            "Every group runs its strips and the column of the plan. Amounts that are not",
            "reckoned from the plan (jar filling, reserve, spare strips, ...) are limits in",
            "rules/limits.yaml; set them otherwise with --rules."
        })
final class PrepareCommand implements Callable<Integer> {

    @Mixin
    private LessonAsked question;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        LessonAsked.Asked asked = question.asked();
        String title = "Prepare: " + asked.laidOut().lesson().basis().title();
        return question.answered(title, PrepLines.of(asked.laidOut(), asked.rulebook()), spec);
    }
}
