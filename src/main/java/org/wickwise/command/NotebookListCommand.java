package org.wickwise.command;

import java.util.concurrent.Callable;
import org.wickwise.notebook.Notebook;
import org.wickwise.notebook.NotebookContents;
import org.wickwise.report.NotebookText;
import org.wickwise.substance.SolventDataReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists a notebook. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "Lists every entry by date, and every file that cannot be read.")
final class NotebookListCommand implements Callable<Integer> {

    @Mixin
    private NotebookOption notebook;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Notebook read = notebook.toRead();
        NotebookContents contents =
                read.contents(SolventDataReader.read(Workbench.home().resolve("solvent-data")));
        int count = contents.entries().size();
        String title = read.folder() + ": " + (count == 1 ? "1 entry" : count + " entries");
        return Printed.ending(
                NotebookText.of(title, contents.entries(), Terminal.heading())
                        + NotebookText.setAside(contents.setAside(), Terminal.heading()),
                spec);
    }
}
