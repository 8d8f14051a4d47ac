package org.wickwise.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.wickwise.bench.Case;
import org.wickwise.lesson.ClassGroups;
import org.wickwise.lesson.GroupReadings;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.notebook.SheetWriter;
import org.wickwise.strip.Strip;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a table for the readings of a class. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description =
                "Prints a table (CSV) for the readings of a class: one row for each strip of each group, to fill in.",
        footer = {
            "",
            "What is run is what the lesson file plans: `class: {groups: 12, solvents: [A,",
            "A + B 9:1]}`. With --readings the readings that the lesson has are printed as",
            "one clean table; rows that cannot be taken are told on the error stream.",
            "",
            "  wickwise sheet LESSONFILE > readings.csv"
        })
final class SheetCommand implements Callable<Integer> {

    private static final int USUAL_STRIPS = 5;

    @Parameters(index = "0", paramLabel = "LESSONFILE", description = "the lesson file")
    private Path lessonFile;

    @Option(names = "--readings", description = "print the readings of the class instead of an empty table")
    private boolean readings;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        SolventData data = SolventDataReader.read(Workbench.home().resolve("solvent-data"));
        Lesson lesson = LessonReader.read(Workbench.named(lessonFile), data);
        if (readings) {
            print(lesson, ClassGroups.of(lesson, data));
        } else {
            SheetWriter.template(
                    spec.commandLine().getOut(),
                    IntStream.rangeClosed(1, lesson.groups())
                            .mapToObj(String::valueOf)
                            .toList(),
                    lesson.dyesAsWritten(),
                    lesson.planned(),
                    lesson.stripsEach().orElse(USUAL_STRIPS));
        }
        return Printed.ending("", spec);
    }

    /** Read twice, so that the columns are known and no more than one group's strips are held. */
    private void print(Lesson lesson, ClassGroups groups) throws IOException {
        Set<String> spots = new TreeSet<>();
        for (String name : groups.names()) {
            strips(groups.of(name)).stream()
                    .flatMap(strip -> strip.spots().stream())
                    .forEach(spot -> spots.add(SheetWriter.spotOf(spot)));
        }
        SheetWriter table = SheetWriter.begun(spec.commandLine().getOut(), lesson.dyesAsWritten(), spots);
        groups.leftOut().forEach(this::tell);
        for (String name : groups.names()) {
            GroupReadings read = groups.of(name);
            read.leftOut().forEach(this::tell);
            for (Strip strip : strips(read)) {
                table.write(name, strip);
            }
        }
    }

    private static List<Strip> strips(GroupReadings read) {
        return read.written().map(Case::strips).orElse(List.of());
    }

    private void tell(Problem problem) {
        spec.commandLine().getErr().println(problem);
    }
}
