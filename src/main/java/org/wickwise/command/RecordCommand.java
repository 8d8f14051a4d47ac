package org.wickwise.command;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.lesson.ClassGroups;
import org.wickwise.lesson.GroupReadings;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.notebook.EntryDraft;
import org.wickwise.notebook.EntryText;
import org.wickwise.notebook.Notebook;
import org.wickwise.notebook.WrittenStrips;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds an entry to a notebook, from a case file or by asking. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        description = "Adds the strips of a case file to a notebook; without FILE it asks for them one by one.",
        footer = {
            "",
            "A lesson file with the readings of a class gives an entry for each group.",
            "The date comes from the file or from --date, never from the clock. Names of",
            "people are left out unless you say --keep-who. Remarks behind # stay in FILE.",
            "A corrected entry takes the place of the one that --corrects names; the older",
            "version is kept in the folder `earlier` of the notebook.",
            "",
            "  wickwise record my-strips.yaml --notebook my-notebook --date 2025-11-04",
            "  wickwise record --notebook my-notebook"
        })
final class RecordCommand implements Callable<Integer> {

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "a case file, or an entry of a notebook")
    private Optional<Path> file;

    @Mixin
    private NotebookOption notebook;

    @Option(names = "--date", paramLabel = "DATE", description = "the day the strips were run, such as 2025-11-04")
    private Optional<String> date;

    @Option(names = "--group", paramLabel = "GROUP", description = "which group of the class ran them")
    private Optional<String> group;

    @Option(names = "--where", paramLabel = "PLACE", description = "where they were run")
    private Optional<String> where;

    @Option(names = "--keep-who", description = "keep the name that the file gives under `who`")
    private boolean keepWho;

    @Option(names = "--corrects", paramLabel = "ENTRY", description = "the entry this takes the place of")
    private Optional<String> corrects;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData data = SolventDataReader.read(Workbench.home().resolve("solvent-data"));
        Notebook into = notebook.toWrite();
        corrects.ifPresent(into::fileNamed);
        return file.map(path -> fromFile(Workbench.named(path), into, data)).orElseGet(() -> byAsking(into, data));
    }

    private int fromFile(Path path, Notebook into, SolventData data) {
        Mapping written = withOptions(YamlFile.read(path));
        if (written.value("class").isPresent()) {
            return ofAClass(path, into, data);
        }
        if (written.value("date").isEmpty()) {
            throw new ProblemsFound(List.of(new Problem(
                    written.place(),
                    "nothing says when the strips were run",
                    "a date, such as 2025-11-04",
                    "say --date 2025-11-04, or write `date: 2025-11-04` into the file")));
        }
        EntryDraft draft = keepWho ? EntryDraft.naming(written, data) : EntryDraft.of(written, data);
        say(recorded(draft, into));
        if (!keepWho && written.value("who").isPresent()) {
            say("    `who` was left out. To keep the name, say --keep-who.");
        }
        return ExitCodes.PLANNED;
    }

    /** Every group of a lesson as an entry of its own; what cannot be read of it is told and left out. */
    private int ofAClass(Path path, Notebook into, SolventData data) {
        Lesson lesson = LessonReader.read(path, data);
        Optional<String> day = date.or(() -> lesson.basis().date().map(LocalDate::toString));
        if (day.isEmpty() || group.isPresent() || corrects.isPresent()) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile(path.toString()),
                    day.isEmpty()
                            ? "nothing says when the class ran its strips"
                            : "this is a whole class, and --group or --corrects speak of one entry",
                    "a date, and neither --group nor --corrects",
                    "say --date 2025-11-04, or record one group's case file")));
        }
        ClassGroups groups = ClassGroups.of(lesson, data);
        List<EntryDraft> drafts = new ArrayList<>();
        groups.leftOut().forEach(problem -> say("Left out: " + problem));
        for (String name : groups.names()) {
            GroupReadings read = groups.of(name);
            read.leftOut().forEach(problem -> say("Left out of group " + name + ": " + problem));
            read.written()
                    .filter(one -> !one.strips().isEmpty())
                    .map(one -> WrittenStrips.of(one, Place.wholeFile("group " + name)))
                    .map(one -> said(said(said(one, "date", day), "group", Optional.of(name)), "where", where))
                    .ifPresent(one -> drafts.add(EntryDraft.of(one, data)));
        }
        List<Path> files = into.add(drafts);
        say("Recorded " + files.size() + " of " + groups.names().size() + " groups in " + into.folder() + ".");
        return ExitCodes.PLANNED;
    }

    private int byAsking(Notebook into, SolventData data) {
        BufferedReader answers = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Interview interview = new Interview(answers, spec.commandLine().getOut(), data);
        Interview.Told told = interview.ask(withOptions(new Mapping(List.of(), Place.wholeFile("your answers"))));
        if (told.isWhole()) {
            say(recorded(EntryDraft.naming(told.entry(), data), into));
            return ExitCodes.PLANNED;
        }
        String text = EntryText.of(told.entry());
        say(
                told.entry().entries().isEmpty()
                        ? "\nStopped before anything was entered; nothing was recorded."
                        : KeptText.in(KeptText.usualFolders(), text)
                                .map(kept -> "\nStopped. What you entered is kept in " + kept
                                        + "; complete it there, and record that file.")
                                .orElse("\nStopped. No folder takes what you entered; copy it from here:\n\n" + text));
        return ExitCodes.BAD_INPUT;
    }

    private Mapping withOptions(Mapping written) {
        return said(said(said(written, "date", date), "group", group), "where", where);
    }

    private static Mapping said(Mapping written, String key, Optional<String> value) {
        return value.map(text -> written.with(key, new Scalar(text, Place.wholeFile("--" + key))))
                .orElse(written);
    }

    private String recorded(EntryDraft draft, Notebook into) {
        if (corrects.isPresent()) {
            Path corrected = into.correct(corrects.get(), draft);
            return "Corrected " + corrected + ". The older version is kept in "
                    + into.folder().resolve(Notebook.EARLIER) + ".";
        }
        boolean isNew = Files.notExists(into.folder());
        Path entry = into.add(List.of(draft)).get(0);
        return (isNew ? "Began a notebook in " + into.folder() + ".\n" : "") + "Recorded in " + entry + ".";
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }
}
