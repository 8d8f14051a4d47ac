package org.wickwise.command;

import java.util.concurrent.Callable;
import org.wickwise.notebook.NotebookContents;
import org.wickwise.report.NotebookText;
import org.wickwise.report.ReadingsCsv;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Exports a notebook as a table. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Prints the readings of all entries, or of those that fit, as CSV: one row a spot.",
        footer = {
            "",
            "The table has commas, decimal points and UTF-8 (RFC 4180). Files that cannot be",
            "read are told beside it, on the error stream.",
            "",
            "  wickwise notebook export --notebook FOLDER > readings.csv"
        })
final class NotebookExportCommand implements Callable<Integer> {

    @Mixin
    private NotebookOption notebook;

    @Mixin
    private SearchOptions wanted;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData data = SolventDataReader.read(Workbench.home().resolve("solvent-data"));
        NotebookContents contents = notebook.toRead().contents(data);
        StringBuilder table = new StringBuilder();
        ReadingsCsv.write(wanted.search(data).in(contents.entries()), table);
        spec.commandLine().getErr().print(NotebookText.setAside(contents.setAside(), Terminal.heading()));
        spec.commandLine().getErr().flush();
        return Printed.ending(table.toString(), spec);
    }
}
