package org.wickwise.substance;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.text.Place;

/**
 * A bottle on a shelf.
 *
 * @param name as the shelf calls it
 * @param contents one solvent, or the blend that a household bottle holds
 * @param millilitres how much is left, where the shelf says so
 * @param banned why nobody may use it; empty when everybody may
 * @param place the line of the shelf
 */
public record Bottle(
        String name,
        Eluent contents,
        OptionalDouble millilitres,
        String grade,
        Optional<LocalDate> openedOn,
        OptionalDouble pricePerLitre,
        String note,
        Optional<String> banned,
        Place place) {

    /** A bottle of which only the solvent is known. */
    public static Bottle of(Solvent solvent, Place place) {
        return new Bottle(
                solvent.name(),
                Eluent.neat(solvent),
                OptionalDouble.empty(),
                "",
                Optional.empty(),
                OptionalDouble.empty(),
                "",
                Optional.empty(),
                place);
    }

    /** The same bottle holding this. */
    public Bottle holding(Eluent held) {
        return new Bottle(name, held, millilitres, grade, openedOn, pricePerLitre, note, banned, place);
    }

    public boolean isHouseholdBlend() {
        return !contents.isNeat();
    }
}
