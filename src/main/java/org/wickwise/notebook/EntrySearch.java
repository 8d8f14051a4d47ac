package org.wickwise.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wickwise.substance.Eluent;

/**
 * What is looked for in a notebook; an entry has to fit all of it. Capitals do not count.
 *
 * @param dye the whole name of a dye of the mixture
 * @param eluent what a strip stood in; of a single solvent also the blends with it
 * @param mixture a part of the mixture's name or of the title
 * @param from the first day
 * @param to the last day
 */
public record EntrySearch(
        Optional<String> dye,
        Optional<Eluent> eluent,
        Optional<String> mixture,
        Optional<LocalDate> from,
        Optional<LocalDate> to) {

    /** Looks for everything. */
    public static EntrySearch all() {
        return new EntrySearch(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The entries that fit, in their order. */
    public List<Entry> in(List<Entry> entries) {
        return entries.stream().filter(this::fits).toList();
    }

    private boolean fits(Entry entry) {
        return dye.map(name -> entry.strips().dyes().stream()
                                .anyMatch(known -> known.name().equalsIgnoreCase(name.strip())))
                        .orElse(true)
                && eluent.map(wanted ->
                                entry.strips().strips().stream().anyMatch(strip -> isOrHolds(strip.eluent(), wanted)))
                        .orElse(true)
                && mixture.map(words -> contains(entry.strips().mixture(), words) || contains(entry.title(), words))
                        .orElse(true)
                && from.map(first -> !entry.date().isBefore(first)).orElse(true)
                && to.map(last -> !entry.date().isAfter(last)).orElse(true);
    }

    private static boolean isOrHolds(Eluent eluent, Eluent wanted) {
        return eluent.equals(wanted)
                || wanted.isNeat() && eluent.contains(wanted.parts().get(0).solvent());
    }

    private static boolean contains(String text, String words) {
        return text.toLowerCase(Locale.ROOT).contains(words.strip().toLowerCase(Locale.ROOT));
    }
}
