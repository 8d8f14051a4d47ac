package org.wickwise.command;

import java.util.List;
import org.wickwise.bench.Case;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.Memory;
import org.wickwise.notebook.Notebook;
import org.wickwise.notebook.NotebookContents;
import org.wickwise.notebook.Recall;
import org.wickwise.notebook.RunTolerances;
import org.wickwise.notebook.Scatter;
import org.wickwise.rulebook.Judge;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;

/** What a notebook tells of the dyes of a case. */
final class Remembering {

    private Remembering() {}

    /**
     * A case with a date remembers what was run before that day; one without, all there is.
     *
     * @throws org.wickwise.text.ProblemsFound when the folder cannot be read
     */
    static Recall of(Case written, Notebook notebook, Judge judge, SolventData data) {
        NotebookContents contents = notebook.contents(data);
        List<Entry> before = contents.entries().stream()
                .filter(entry -> written.date().isEmpty()
                        || entry.date().isBefore(written.date().get()))
                .toList();
        return Recall.of(
                written,
                Memory.of(before, RunTolerances.of(judge::limit)),
                new Scatter(judge.limit("scatter within a class"), judge.limit("scatter between classes")),
                Place.wholeFile(notebook.folder().toString()));
    }
}
