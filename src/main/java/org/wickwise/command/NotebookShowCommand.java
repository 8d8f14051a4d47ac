package org.wickwise.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.EntryReader;
import org.wickwise.plan.EntryLines;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.Letters;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows an entry of a notebook. */
@Command(
        name = "show",
        mixinStandardHelpOptions = true,
        description = "Shows one entry spot by spot; with LABEL, how the Rf of that line was reckoned.")
final class NotebookShowCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "ENTRY", description = "the name of the entry's file, as `list` shows it")
    private String entry;

    @Parameters(index = "1", arity = "0..1", paramLabel = "LABEL", description = "the label of a line")
    private Optional<String> label;

    @Mixin
    private NotebookOption notebook;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Path file = notebook.toRead().fileNamed(entry);
        Entry read =
                EntryReader.read(file, SolventDataReader.read(Workbench.home().resolve("solvent-data")));
        String title = read.title() + ", " + read.date()
                + read.group().map(group -> ", group " + group).orElse("")
                + read.where().map(where -> ", " + where).orElse("")
                + read.who().map(who -> ", by " + who).orElse("");
        return Printed.ending(Printed.linesOrOne(Letters.shown(title), EntryLines.of(read), label, file, form), spec);
    }
}
