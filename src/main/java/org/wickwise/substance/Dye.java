package org.wickwise.substance;

import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.text.Place;

/**
 * A dye of the mixture.
 *
 * @param note what the writer knows of it; empty when nothing
 */
public record Dye(String name, DyeClass dyeClass, String note, Place place) implements Ground, Comparable<Dye> {

    @Override
    public Reason reason() {
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
