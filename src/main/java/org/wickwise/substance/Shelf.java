package org.wickwise.substance;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.text.Place;

/**
 * The bottles at hand.
 *
 * @param title how the shelf calls itself; empty when a case lists its solvents or takes the whole table
 * @param bottles in the order of their names
 * @param ownValues values that the shelf puts in the place of the table's
 */
public record Shelf(String title, List<Bottle> bottles, List<TableValue> ownValues, Place place) {

    public Shelf {
        bottles = bottles.stream()
                .sorted(Comparator.comparing(Bottle::name).thenComparing(Bottle::place))
                .toList();
        ownValues = List.copyOf(ownValues);
    }

    /** Every solvent of the table, as much as one likes. */
    public static Shelf wholeTable(SolventData data, Place place) {
        return new Shelf(
                "",
                data.solvents().stream()
                        .map(solvent -> Bottle.of(solvent, place))
                        .toList(),
                List.of(),
                place);
    }

    /** Whether somebody said which bottles there are; without that every solvent of the table counts. */
    public boolean isNamed() {
        return place.line() > 0;
    }

    /** The bottle that holds just this; empty when there is none. */
    public Optional<Bottle> bottleOf(Eluent contents) {
        return bottles.stream()
                .filter(bottle -> bottle.contents().equals(contents))
                .findFirst();
    }

    /** The bottles an eluent is poured or mixed from: its own, or those of its parts that are there. */
    public List<Bottle> bottlesFor(Eluent eluent) {
        return bottleOf(withoutAdditions(eluent)).map(List::of).orElseGet(() -> eluent.parts().stream()
                .flatMap(part -> bottleOf(Eluent.neat(part.solvent())).stream())
                .toList());
    }

    /** The solvents an eluent needs and no bottle gives; none when it can be poured. */
    public List<Solvent> missingFor(Eluent eluent) {
        if (bottleOf(withoutAdditions(eluent)).isPresent()) {
            return List.of();
        }
        return eluent.parts().stream()
                .map(Eluent.Part::solvent)
                .filter(solvent -> bottleOf(Eluent.neat(solvent)).isEmpty())
                .toList();
    }

    /**
     * The most millilitres of an eluent that the bottles can give. Of its parts, those count whose bottles say how much they
     * hold: there is no more than the scantiest of them lets one mix, whatever the others hold.
     *
     * @return empty when no bottle says how much it holds
     */
    public OptionalDouble millilitresOf(Eluent eluent) {
        Optional<Bottle> own = bottleOf(withoutAdditions(eluent));
        if (own.isPresent()) {
            return own.get().millilitres();
        }
        return eluent.parts().stream()
                .flatMapToDouble(part -> bottleOf(Eluent.neat(part.solvent())).stream()
                        .flatMapToDouble(bottle -> bottle.millilitres().stream())
                        .map(millilitres -> 100 * millilitres / part.percent()))
                .min();
    }

    /** What a litre of an eluent costs by the prices of its bottles; a bottle without a price counts 0. */
    public double pricePerLitre(Eluent eluent) {
        Optional<Bottle> own = bottleOf(withoutAdditions(eluent));
        if (own.isPresent()) {
            return own.get().pricePerLitre().orElse(0);
        }
        return eluent.parts().stream()
                .mapToDouble(part -> part.percent()
                        / 100
                        * bottleOf(Eluent.neat(part.solvent()))
                                .map(bottle -> bottle.pricePerLitre().orElse(0))
                                .orElse(0.0))
                .sum();
    }

    /** What can be poured straight from a bottle. */
    public Stream<Eluent> contents() {
        return bottles.stream().map(Bottle::contents);
    }

    private static Eluent withoutAdditions(Eluent eluent) {
        return eluent.additions().isEmpty() ? eluent : Eluent.of(eluent.parts(), List.of());
    }

    /** What the household bottles are called, in small letters, and what they hold. */
    public Map<String, Eluent> ownNames() {
        return bottles.stream()
                .filter(Bottle::isHouseholdBlend)
                .collect(Collectors.toMap(
                        bottle -> bottle.name().toLowerCase(Locale.ROOT), Bottle::contents, (one, other) -> one));
    }
}
