package org.wickwise.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.plan.Plan;
import org.wickwise.report.ProfilePicture;
import org.wickwise.report.RunPicture;
import org.wickwise.report.StripsPicture;
import org.wickwise.rulebook.RunFacts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the strips of a case, how its plan would run, or how it ran. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description =
                "Draws the strips of a case to scale, when each dye of its plan leaves the column, or what came of a"
                        + " finished column, as SVG.",
        footer = {
            "",
            "  strips   every strip side by side, each spot with its uncertainty",
            "  profile  the bands over the volume poured, and what to keep; an estimate",
            "  run      the bands expected and the fractions collected (an entry with a run)",
            "",
            "The pictures say the same in black and white. A profile needs a plan and",
            "measured strips; where there are none, a message says what to do, and the",
            "exit code is 3.",
            "",
            "  wickwise draw CASE strips > strips.svg",
            "  wickwise draw CASE profile > profile.svg"
        })
final class DrawCommand implements Callable<Integer> {

    /** What can be drawn of a case or an entry. */
    enum Picture {
        STRIPS,
        PROFILE,
        RUN;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(index = "1", paramLabel = "PICTURE", description = "strips, profile, run")
    private String named;

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Picture picture = picture();
        if (picture == Picture.RUN) {
            return run();
        }
        Plan plan = Desk.of(caseFile, rules.folder()).plan();
        return picture == Picture.STRIPS ? print(StripsPicture.of(plan.judgement())) : profile(plan);
    }

    private Picture picture() {
        return Stream.of(Picture.values())
                .filter(picture -> picture.toString().equalsIgnoreCase(named))
                .findFirst()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "PICTURE is `" + named + "`; expected one of "
                                + Stream.of(Picture.values())
                                        .map(Picture::toString)
                                        .collect(Collectors.joining(", "))));
    }

    private int run() {
        FinishedColumn finished = FinishedColumn.in(caseFile, rules.folder());
        RunOutcome outcome = RunFacts.outcome(finished.judgement(), finished.run());
        return printOr(RunPicture.obstacle(outcome), () -> RunPicture.of(outcome));
    }

    private int profile(Plan plan) {
        return printOr(ProfilePicture.obstacle(plan), () -> ProfilePicture.of(plan));
    }

    private int printOr(Optional<String> obstacle, Supplier<String> svg) {
        if (obstacle.isEmpty()) {
            return print(svg.get());
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
