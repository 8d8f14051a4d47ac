package org.wickwise.substance;

import org.wickwise.reason.Reason;
import org.wickwise.text.Place;

/**
 * A dye of the mixture.
 *
 * @param note what the writer knows of it; empty when nothing
 */
public record Dye(String name, DyeClass dyeClass, String note, Place place) implements Comparable<Dye> {

    /** What the case states of this dye. */
    public Reason stated() {
        String remark = note.isEmpty() ? "" : " (" + note + ")";
        return new Reason.Stated(name + " is " + dyeClass.word() + remark, place);
    }

    @Override
    public int compareTo(Dye other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
