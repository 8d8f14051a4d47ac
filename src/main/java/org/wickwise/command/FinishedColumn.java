package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.EntryReader;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** An entry whose column was run, with everything laid out to judge it. */
record FinishedColumn(Desk desk, ColumnRun run) {

    /**
     * @param ownRules a folder with an instructor's own rules; empty where there is none
     * @throws ProblemsFound when the entry, the rules or the solvent data have problems, or the entry has no run
     */
    static FinishedColumn in(Path entryFile, Optional<Path> ownRules) {
        SolventData data = Workbench.solventData();
        Entry entry = EntryReader.read(Workbench.named(entryFile), data);
        if (entry.run().isEmpty()) {
            throw new ProblemsFound(
                    List.of(
                            new Problem(
                                    entry.place(),
                                    "the entry tells of no finished column",
                                    "`run:` with what was `poured` and the `fractions` that were collected",
                                    "add it as in docs/examples/ferry-ink-run.yaml; for a column still to be run ask `wickwise plan`")));
        }
        return new FinishedColumn(
                Workbench.deskFor(entry.column().orElseThrow(), data, ownRules),
                entry.run().get());
    }

    Judgement judgement() {
        return desk.judge().judge(desk.written(), run);
    }
}
