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
import org.wickwise.plan.ForecastLines;
import org.wickwise.plan.Plan;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Limit;
import org.wickwise.text.Place;

/** What a notebook tells of the dyes of a case. */
final class Remembering {

    private Remembering() {}

    /**
     * A case with a date remembers what was run before that day; one without, all there is.
     *
     * @throws org.wickwise.text.ProblemsFound when the folder cannot be read
     */
    static Recall of(Desk desk, Notebook notebook) {
        Case written = desk.written();
        Judge judge = desk.judge();
        NotebookContents contents = notebook.contents(desk.data());
        List<Entry> before = contents.entries().stream()
                .filter(entry -> written.date().isEmpty()
                        || entry.date().isBefore(written.date().get()))
                .toList();
        Limit within = judge.rulebook().limits().get("scatter within a class");
        Limit between = judge.rulebook().limits().get("scatter between classes");
        Scatter usual = new Scatter(within.value(), between.value(), List.of(within.reason(), between.reason()));
        return Recall.of(
                written,
                Memory.of(before, usual, RunTolerances.of(judge::limit)),
                Place.wholeFile(notebook.folder().toString()));
    }

    /** The plan from what a notebook remembers, saying that it is a forecast. */
    static Plan forecast(Desk desk, Notebook notebook) {
        return ForecastLines.forecast(of(desk, notebook), desk.judge(), desk.planner());
    }
}
