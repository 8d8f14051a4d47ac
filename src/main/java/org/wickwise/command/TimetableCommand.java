package org.wickwise.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.bench.ClimbReader;
import org.wickwise.bench.StripReader;
import org.wickwise.lesson.FrontWatch;
import org.wickwise.lesson.LaidOutLesson;
import org.wickwise.lesson.TimetableLines;
import org.wickwise.plan.PlanLine;
import org.wickwise.strip.FrontReading;
import org.wickwise.text.Numbers;
import org.wickwise.text.YamlFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says how long everything takes, and what fits into a lesson. */
@Command(
        name = "timetable",
        mixinStandardHelpOptions = true,
        description =
                "Reckons how long strips and column take, when to look at a front, and what fits into the lesson.",
        footer = {
            "",
            "Your own runs make it better: write `minutes: 13` beside the front of a strip,",
            "or what you saw on the way, `climbed: [{minutes: 2, mm: 20}, {minutes: 6, mm:",
            "44}]`, both from the origin. A front that is running: --seen 2:20 --seen 10:40",
            "--end 90, heights in mm above the liquid."
        })
final class TimetableCommand implements Callable<Integer> {

    private static final int LOOKS = 2;

    @Mixin
    private LessonAsked question;

    @Option(
            names = "--seen",
            paramLabel = "MINUTES:MM",
            description = "where a running front was, in mm above the liquid; give it twice, with --end")
    private List<String> seen = new ArrayList<>();

    @Option(
            names = "--end",
            paramLabel = "MM",
            description = "where the running front is to end, in mm above the liquid")
    private Optional<Double> end;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (seen.isEmpty() && end.isEmpty()) {
            LessonAsked.Asked asked = question.asked();
            return question.answered(
                    title(asked.laidOut()),
                    TimetableLines.of(
                            asked.laidOut(),
                            ClimbReader.of(YamlFile.read(question.file())),
                            asked.rulebook().columnSizes()),
                    spec);
        }
        if (seen.size() != LOOKS || end.isEmpty()) {
            throw wrong("a running front takes two looks and its end");
        }
        FrontReading earlier = reading(seen.get(0));
        FrontReading later = reading(seen.get(1));
        boolean inOrder = later.minutes() > earlier.minutes() && later.millimetres() > earlier.millimetres();
        if (!inOrder || !(end.get() >= later.millimetres() && Double.isFinite(end.get()))) {
            throw wrong("the second look has to be later and higher than the first, and the end no lower than that");
        }
        if (end.get() > StripReader.LONGEST_FRONT_MILLIMETRES) {
            throw wrong("--end is " + Numbers.plain(end.get(), 1) + ", and no strip is longer than "
                    + Numbers.plain(StripReader.LONGEST_FRONT_MILLIMETRES, 0) + " mm");
        }
        LaidOutLesson laidOut = question.asked().laidOut();
        List<PlanLine> lines = FrontWatch.of(earlier, later, end.get(), laidOut);
        return question.answered("A running front", lines, spec);
    }

    private static String title(LaidOutLesson laidOut) {
        return "Timetable: " + laidOut.lesson().basis().title();
    }

    private FrontReading reading(String written) {
        String[] parts = written.split(":", -1);
        try {
            if (parts.length == 2) {
                return new FrontReading(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
            }
        } catch (IllegalArgumentException e) {
            // told below, with what was written
        }
        throw wrong("--seen is `" + written + "`");
    }

    private ParameterException wrong(String found) {
        return new ParameterException(
                spec.commandLine(), found + "; expected minutes and mm, such as --seen 2:20 --seen 10:40 --end 90");
    }
}
