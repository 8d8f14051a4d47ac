package org.wickwise.command;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.wickwise.notebook.EntrySearch;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import picocli.CommandLine.Option;

/** What entries are looked for by. */
final class SearchOptions {

    @Option(names = "--dye", paramLabel = "DYE", description = "entries with this dye in the mixture")
    private Optional<String> dye;

    @Option(
            names = "--solvent",
            paramLabel = "SOLVENT",
            description = "entries with a strip in this solvent or a blend with it, or in this blend")
    private Optional<String> solvent;

    @Option(names = "--mixture", paramLabel = "WORDS", description = "entries whose mixture or title has these words")
    private Optional<String> mixture;

    @Option(names = "--from", paramLabel = "DATE", description = "entries of this day and later, such as 2025-11-01")
    private Optional<LocalDate> from;

    @Option(names = "--to", paramLabel = "DATE", description = "entries of this day and earlier")
    private Optional<LocalDate> to;

    /** @throws org.wickwise.text.ProblemsFound when the solvent is not known */
    EntrySearch search(SolventData data) {
        Problems problems = new Problems();
        Optional<Eluent> eluent = solvent.flatMap(written ->
                new EluentReader(data, Map.of(), problems).read(new Scalar(written, Place.wholeFile("--solvent"))));
        problems.throwIfAny();
        return new EntrySearch(dye, eluent, mixture, from, to);
    }
}
