package org.wickwise.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.column.Column;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Shelf;
import org.wickwise.text.Place;

/**
 * One mixture, its strips, the column and the shelf: what a plan is made from.
 *
 * @param dyes 2 to 8, in the order of their names
 * @param fadesInLight where the writer says that the mixture fades in light
 * @param load how much goes onto the column, as far as it is known
 * @param shelf the bottles at hand
 * @param date when the column is to be run, where it matters how old a bottle is
 */
public record Case(
        String title,
        String mixture,
        List<Dye> dyes,
        Optional<Place> fadesInLight,
        Load load,
        Column column,
        Setting setting,
        Place settingPlace,
        Shelf shelf,
        Optional<LocalDate> date,
        List<Strip> strips) {

    public static final int FEWEST_DYES = 2;
    public static final int MOST_DYES = 8;

    /**
     * The same case with one of its strips in the place of another.
     *
     * @param after empty to leave the strip out
     */
    public Case with(Strip before, Optional<Strip> after) {
        return with(strips.stream()
                .flatMap(strip -> strip.equals(before) ? after.stream() : Stream.of(strip))
                .toList());
    }

    /** The same case with other strips. */
    public Case with(List<Strip> others) {
        return new Case(
                title,
                mixture,
                dyes,
                fadesInLight,
                load,
                column,
                setting,
                settingPlace,
                shelf,
                date,
                List.copyOf(others));
    }

    /** The same case with some of its dyes only, and of its spots only theirs. */
    public Case of(List<Dye> some) {
        List<Strip> theirs = strips.stream().map(strip -> strip.of(some)).toList();
        return new Case(title, mixture, some, fadesInLight, load, column, setting, settingPlace, shelf, date, theirs);
    }

    /** The same case with another shelf. */
    public Case with(Shelf other) {
        return new Case(title, mixture, dyes, fadesInLight, load, column, setting, settingPlace, other, date, strips);
    }

    /** The same case with another column. */
    public Case with(Column other) {
        return new Case(title, mixture, dyes, fadesInLight, load, other, setting, settingPlace, shelf, date, strips);
    }

    /** The same case in another setting. */
    public Case with(Setting other, Place place) {
        return new Case(title, mixture, dyes, fadesInLight, load, column, other, place, shelf, date, strips);
    }

    /** The same case under another title. */
    public Case titled(String other) {
        return new Case(other, mixture, dyes, fadesInLight, load, column, setting, settingPlace, shelf, date, strips);
    }

    /** "Mixture: ...; column: ...; setting: ...". */
    public String inOneLine() {
        return "Mixture: " + mixture + "; column: " + column.phaseName() + "; setting: " + setting.word();
    }
}
