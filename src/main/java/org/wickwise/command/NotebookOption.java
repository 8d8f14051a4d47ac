package org.wickwise.command;

import java.nio.file.Path;
import org.wickwise.notebook.Notebook;
import picocli.CommandLine.Option;

/** Names the folder of a notebook. */
final class NotebookOption {

    @Option(names = "--notebook", required = true, paramLabel = "FOLDER", description = "the folder of the notebook")
    private Path folder;

    /** The folder as it was named, or the one of that name beside the program. */
    Notebook toRead() {
        return Notebook.in(Workbench.named(folder));
    }

    /** The folder as it was named, which need not be there yet. */
    Notebook toWrite() {
        return Notebook.in(folder);
    }
}
