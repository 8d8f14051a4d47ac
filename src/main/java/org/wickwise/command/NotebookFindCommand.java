package org.wickwise.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.Notebook;
import org.wickwise.notebook.NotebookContents;
import org.wickwise.report.NotebookText;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Finds entries of a notebook. */
@Command(
        name = "find",
        mixinStandardHelpOptions = true,
        description = "Finds entries by dye, solvent, mixture and date; an entry has to fit all that is asked.")
final class NotebookFindCommand implements Callable<Integer> {

    @Mixin
    private NotebookOption notebook;

    @Mixin
    private SearchOptions wanted;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData data = SolventDataReader.read(Workbench.home().resolve("solvent-data"));
        Notebook read = notebook.toRead();
        NotebookContents contents = read.contents(data);
        List<Entry> found = wanted.search(data).in(contents.entries());
        String title = found.size() + " of " + contents.entries().size() + " entries of " + read.folder()
                + (found.size() == 1 ? " fits" : " fit");
        return Printed.ending(
                NotebookText.of(title, found, Terminal.heading())
                        + NotebookText.setAside(contents.setAside(), Terminal.heading()),
                spec);
    }
}
