package org.wickwise.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.report.ProfilePicture;
import org.wickwise.report.StripsPicture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the strips of a case, or how its plan would run. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description = "Draws the strips of a case to scale, or when each dye of its plan leaves the column, as SVG.",
        footer = {
            "",
            "  strips   every strip side by side, each spot with its uncertainty",
            "  profile  the bands over the volume poured, and what to keep; an estimate",
            "",
            "The pictures say the same in black and white. A profile needs a plan and",
            "measured strips; where there are none, a message says what to do, and the",
            "exit code is 3.",
            "",
            "  wickwise draw CASE strips > strips.svg",
            "  wickwise draw CASE profile > profile.svg"
        })
final class DrawCommand implements Callable<Integer> {

    /** What can be drawn of a case. */
    enum Picture {
        STRIPS,
        PROFILE;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(index = "1", paramLabel = "PICTURE", description = "${COMPLETION-CANDIDATES}")
    private Picture picture;

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Plan plan = Desk.of(caseFile, rules.folder()).plan();
        return switch (picture) {
            case STRIPS -> print(StripsPicture.of(plan.judgement()));
            case PROFILE -> profile(plan);
        };
    }

    private int profile(Plan plan) {
        Optional<String> obstacle = ProfilePicture.obstacle(plan);
        if (obstacle.isEmpty()) {
            return print(ProfilePicture.of(plan));
        }
        spec.commandLine().getErr().println(caseFile + ": " + obstacle.get());
        return ExitCodes.REFUSED;
    }

    private int print(String svg) {
        spec.commandLine().getOut().print(svg);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }
}
