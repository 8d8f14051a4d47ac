package org.wickwise.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.column.Column;
import org.wickwise.column.Setup;
import org.wickwise.column.Setup.Drive;
import org.wickwise.column.Setup.Particles;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads how the column of a case is made up. */
final class ColumnReader {

    static final Set<String> KEYS = Set.of(
            "stationary phase",
            "bore mm",
            "bed mm",
            "tube mm",
            "particle um",
            "run by",
            "head mm",
            "flow mL per min",
            "plates",
            "note");

    private static final double WIDEST_MILLIMETRES = 200;
    private static final double LONGEST_MILLIMETRES = 2000;
    private static final double FINEST_MICROMETRES = 1;
    private static final double COARSEST_MICROMETRES = 2000;
    private static final double FASTEST_MILLILITRES_PER_MINUTE = 1000;
    private static final double FEWEST_PLATES = 5;
    private static final double MOST_PLATES = 100_000;

    private final Fields fields;
    private final Problems problems;

    ColumnReader(Fields fields, Problems problems) {
        this.fields = fields;
        this.problems = problems;
    }

    /** Reads everything, so that a wrong phase hides no other mistake. */
    Optional<Column> column(Optional<StationaryPhase> phase) {
        OptionalDouble bed = within("bed mm", LONGEST_MILLIMETRES, "a length above zero in millimetres");
        OptionalDouble tube = within("tube mm", LONGEST_MILLIMETRES, "a length above zero in millimetres");
        if (bed.isPresent() && tube.isPresent() && bed.getAsDouble() > tube.getAsDouble()) {
            problems.add(
                    fields.placeOf("bed mm"),
                    "the bed is " + Numbers.plain(bed.getAsDouble(), 1) + " mm high and its tube "
                            + Numbers.plain(tube.getAsDouble(), 1) + " mm long",
                    "a bed that is shorter than its tube, with room above for the eluent",
                    "measure both again, or pack a shorter bed");
        }
        Setup setup = new Setup(
                tube,
                particles(),
                drive(),
                within("head mm", LONGEST_MILLIMETRES, "a length above zero in millimetres"),
                within(
                        "flow mL per min",
                        FASTEST_MILLILITRES_PER_MINUTE,
                        "a flow above zero in millilitres per minute"),
                plates(),
                fields.place());
        OptionalDouble bore = within("bore mm", WIDEST_MILLIMETRES, "a length above zero in millimetres");
        return phase.map(known -> new Column(known, bore, bed, setup, fields.placeOf("stationary phase")));
    }

    /** A number above zero and at most so much; empty, with a problem reported, when it is something else. */
    private OptionalDouble within(String key, double most, String expected) {
        return measured(fields, key, most, expected);
    }

    static OptionalDouble measured(Fields fields, String key, double most, String expected) {
        return fields.numberWithin(
                key,
                Bounds.aboveZeroTo(most, "").told(expected + ", at most " + Numbers.plain(most, 0)),
                "measure it, or leave the key out");
    }

    private OptionalDouble plates() {
        OptionalDouble plates = within("plates", MOST_PLATES, "a number of theoretical plates");
        if (plates.isPresent() && plates.getAsDouble() < FEWEST_PLATES) {
            problems.add(
                    fields.placeOf("plates"),
                    "`plates` is " + Numbers.plain(plates.getAsDouble(), 1),
                    Numbers.plain(FEWEST_PLATES, 0) + " or more; hand-packed beds give about 30 to 300",
                    "reckon them from a band: 16 times (volume of its middle / its width)^2, or leave the key out");
            return OptionalDouble.empty();
        }
        return plates;
    }

    private Optional<Particles> particles() {
        List<Scalar> sizes = fields.node("particle um")
                .map(node -> node instanceof Listing
                        ? fields.texts("particle um")
                        : node instanceof Scalar one ? List.of(one) : List.<Scalar>of())
                .orElse(List.of());
        List<Double> numbers = sizes.stream()
                .map(fields::numberIn)
                .flatMap(number -> number.stream().boxed())
                .toList();
        boolean wrong = fields.has("particle um")
                && (numbers.isEmpty()
                        || numbers.size() > 2
                        || numbers.stream().anyMatch(size -> size < FINEST_MICROMETRES || size > COARSEST_MICROMETRES)
                        || numbers.get(0) > numbers.get(numbers.size() - 1));
        if (wrong && numbers.size() == sizes.size()) {
            problems.add(
                    fields.placeOf("particle um"),
                    "`particle um` does not give the size of grains",
                    "one size, or the smaller and the larger, from " + Numbers.plain(FINEST_MICROMETRES, 0) + " to "
                            + Numbers.plain(COARSEST_MICROMETRES, 0) + " micrometres",
                    "write it as on the label: `particle um: [63, 200]`");
        }
        return wrong || numbers.isEmpty()
                ? Optional.empty()
                : Optional.of(new Particles(numbers.get(0), numbers.get(numbers.size() - 1)));
    }

    private Optional<Drive> drive() {
        Optional<String> word = fields.text("run by");
        Optional<Drive> drive = word.flatMap(Drive::named);
        if (word.isPresent() && drive.isEmpty()) {
            problems.add(
                    fields.placeOf("run by"),
                    "`" + word.get() + "` does not drive a column",
                    "one of " + String.join(", ", Drive.words()),
                    NearMiss.suggestion(word.get(), Drive.words(), List.of()));
        }
        return drive;
    }
}
