package org.wickwise.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.wickwise.strip.Strip;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * An entry that is not in the notebook yet, found to be readable. It stands for itself: what a shelf file called by a name of
 * its own is written out as the solvents in it, since shelves change from year to year.
 */
public final class EntryDraft {

    private static final String SHELF = "shelf";
    private static final String STRIPS = "strips";
    private static final String WHO = "who";

    private final LocalDate date;
    private final String mixture;
    private final Optional<String> group;
    private final String text;

    EntryDraft(LocalDate date, String mixture, Optional<String> group, String text) {
        this.date = date;
        this.mixture = mixture;
        this.group = group;
        this.text = text;
    }

    /**
     * From what somebody wrote. Names of people are not kept: `who` is left out.
     *
     * @param written the keys of an entry; places in it are those that problems are told with
     * @throws ProblemsFound with every problem of the entry
     */
    public static EntryDraft of(Mapping written, SolventData data) {
        return naming(written.where(key -> !key.equals(WHO)), data);
    }

    /** As {@link #of}, and keeps `who`. */
    public static EntryDraft naming(Mapping written, SolventData data) {
        Entry entry = EntryReader.of(written, data);
        String text = EntryText.of(standingForItself(written, entry));
        EntryReader.parse("the new entry", text, data);
        return new EntryDraft(entry.date(), entry.strips().mixture(), entry.group(), text);
    }

    /**
     * As {@link #of}.
     *
     * @param file a name for messages; a shelf that the text names lies beside it
     * @throws ProblemsFound with every problem of the text
     */
    public static EntryDraft parse(String file, String yaml, SolventData data) {
        return of(YamlFile.parse(file, yaml), data);
    }

    public LocalDate date() {
        return date;
    }

    public String mixture() {
        return mixture;
    }

    public Optional<String> group() {
        return group;
    }

    /** What will stand in the file. */
    public String text() {
        return text;
    }

    private static Mapping standingForItself(Mapping written, Entry entry) {
        boolean namesAFile =
                written.value(SHELF).filter(Scalar.class::isInstance).isPresent();
        if (!namesAFile) {
            return written;
        }
        Mapping without = written.where(key -> !key.equals(SHELF));
        return written.value(STRIPS)
                .map(strips -> without.with(
                        STRIPS,
                        inSolventsOfTheTable((Listing) strips, entry.strips().strips())))
                .orElse(without);
    }

    private static Listing inSolventsOfTheTable(Listing written, List<Strip> read) {
        List<Node> strips = new ArrayList<>();
        Iterator<Strip> next = read.iterator();
        for (Node strip : written.items()) {
            String eluent = next.next().eluent().name();
            strips.add(((Mapping) strip).with("solvent", new Scalar(eluent, strip.place())));
        }
        return new Listing(strips, written.place());
    }
}
