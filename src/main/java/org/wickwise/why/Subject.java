package org.wickwise.why;

import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** What a case can be asked about, beside the lines of its plan and its cautions. */
public sealed interface Subject {

    /** An eluent that was judged: run on a strip, or poured from the shelf. */
    record OfEluent(Eluent eluent) implements Subject {}

    /** A solvent of the table, neat or in a blend, that the case has neither on a strip nor on its shelf. */
    record OfTable(Eluent eluent) implements Subject {}

    record OfDye(Dye dye) implements Subject {}

    /** Two dyes, in the order of their names. */
    record OfPair(Dye one, Dye other) implements Subject {}

    /** @param label what this strip is asked with; tells it apart from the others in the same eluent */
    record OfStrip(Strip strip, String label) implements Subject {}
}
