package org.wickwise.substance;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.text.Bounds;
import org.wickwise.text.DateField;
import org.wickwise.text.Fields;
import org.wickwise.text.FileBeside;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * Reads a shelf file and the shelves it builds on. What a shelf says of a bottle or a value stands in the place of what the
 * shelves under it say of the same.
 */
public final class ShelfReader {

    private static final Set<String> SHELF_KEYS = Set.of("shelf", "note", "builds on", "bottles", "values");
    private static final Set<String> BOTTLE_KEYS =
            Set.of("solvent", "name", "blend", "amount mL", "grade", "opened on", "price per litre", "note", "banned");
    private static final Set<String> VALUE_KEYS = Set.of("solvent", "property", "value", "unit", "condition", "source");
    private static final double FAHRENHEIT_SHIFT = 32;
    private static final double KELVIN_PER_FAHRENHEIT = 5.0 / 9;
    private static final double FAR_FROM_TABLE_KELVIN = 20;
    private static final double NEAR_TABLE_KELVIN = 5;

    private final SolventData data;
    private final Problems problems;
    private final List<Path> open = new ArrayList<>();

    public ShelfReader(SolventData data, Problems problems) {
        this.data = data;
        this.problems = problems;
    }

    /** @throws ProblemsFound with every problem of the shelf and of those it builds on */
    public static Shelf read(Path file, SolventData data) {
        Problems problems = new Problems();
        Shelf shelf = new ShelfReader(data, problems).shelf(file, Place.wholeFile(shown(file)));
        problems.throwIfAny();
        return shelf;
    }

    /**
     * The shelf of a file, its problems reported.
     *
     * @param asked where the file was named
     */
    public Shelf shelf(Path file, Place asked) {
        Path whole = file.toAbsolutePath().normalize();
        if (!Files.isRegularFile(file)) {
            problems.add(
                    asked,
                    "there is no shelf file `" + shown(file) + "`",
                    "the file of a shelf, beside the file that names it",
                    "correct its name; a list of solvents stands in brackets: [" + file.getFileName() + ", ...]");
            return new Shelf("", List.of(), List.of(), asked);
        }
        if (open.contains(whole)) {
            problems.add(
                    asked,
                    "the shelf " + shown(file) + " builds on itself",
                    "shelves that build on others, never in a circle",
                    "remove it from `builds on` here");
            return new Shelf("", List.of(), List.of(), asked);
        }
        open.add(whole);
        Shelf shelf = shelf(file, Fields.of(YamlFile.read(file, shown(file)), "a shelf", SHELF_KEYS, problems));
        open.remove(whole);
        return shelf;
    }

    private Shelf shelf(Path file, Fields fields) {
        Map<Eluent, Bottle> bottles = new LinkedHashMap<>();
        Map<String, TableValue> values = new LinkedHashMap<>();
        for (Scalar under : fields.texts("builds on")) {
            FileBeside.of(file, under, problems).ifPresent(beside -> {
                Shelf lower = shelf(beside, under.place());
                lower.bottles().forEach(bottle -> bottles.put(bottle.contents(), bottle));
                lower.ownValues().forEach(value -> values.put(value.solvent() + " " + value.property(), value));
            });
        }
        Set<Eluent> here = new java.util.HashSet<>();
        for (Node node : fields.list("bottles")) {
            bottle(Fields.ofNode(node, "a bottle", BOTTLE_KEYS, problems)).ifPresent(bottle -> {
                if (!here.add(bottle.contents())) {
                    problems.add(
                            bottle.place(),
                            "a second bottle of " + bottle.contents() + " on this shelf",
                            "each bottle once",
                            "add the amounts up in one bottle");
                }
                bottles.put(bottle.contents(), bottle);
            });
        }
        for (Node node : fields.list("values")) {
            value(Fields.ofNode(node, "a value", VALUE_KEYS, problems))
                    .ifPresent(value -> values.put(value.solvent() + " " + value.property(), value));
        }
        return new Shelf(
                fields.requiredText("shelf"),
                List.copyOf(bottles.values()),
                List.copyOf(values.values()),
                fields.place());
    }

    private Optional<Bottle> bottle(Fields fields) {
        Optional<Eluent> contents = contents(fields);
        OptionalDouble amount = fields.number("amount mL");
        if (amount.isPresent() && amount.getAsDouble() < 0) {
            problems.add(
                    fields.placeOf("amount mL"),
                    "an amount of " + Numbers.plain(amount.getAsDouble(), 2) + " mL",
                    "0 mL or more",
                    "write what is left in the bottle");
        }
        Optional<LocalDate> opened = DateField.in(fields, "opened on", problems);
        OptionalDouble price = fields.numberWithin(
                "price per litre", Bounds.zeroOrMore(), "write what a litre costs, or leave the line out");
        return contents.map(held -> new Bottle(
                fields.text("name").orElse(held.name()),
                held,
                amount,
                fields.text("grade").orElse(""),
                opened,
                price,
                fields.text("note").orElse(""),
                fields.text("banned"),
                fields.place()));
    }

    private Optional<Eluent> contents(Fields fields) {
        if (fields.has("solvent") == fields.has("blend")) {
            problems.add(
                    fields.place(),
                    fields.has("blend") ? "the bottle has a `solvent` and a `blend`" : "the bottle has no `solvent`",
                    "`solvent: ...`, or `name: ...` with `blend: ...` for a household bottle",
                    "say what is in it");
            return Optional.empty();
        }
        if (fields.has("blend")) {
            fields.requiredText("name");
            Scalar written = new Scalar(fields.requiredText("blend"), fields.placeOf("blend"));
            return new EluentReader(data, Map.of(), problems).read(written);
        }
        return solvent(fields).map(Eluent::neat);
    }

    private Optional<Solvent> solvent(Fields fields) {
        String name = fields.requiredText("solvent");
        return name.isEmpty()
                ? Optional.empty()
                : new NamesOfTheTable(data, problems).solvent(name, fields.placeOf("solvent"));
    }

    private Optional<TableValue> value(Fields fields) {
        Optional<Solvent> solvent = solvent(fields);
        String property = fields.requiredText("property");
        String unit = fields.requiredText("unit");
        String condition = fields.requiredText("condition");
        String source = fields.requiredText("source");
        String text = fields.requiredText("value");
        if (!property.isEmpty() && !data.properties().contains(property)) {
            problems.add(
                    fields.placeOf("property"),
                    "`" + property + "` is not a known property",
                    "a property of the table",
                    NearMiss.suggestion(property, data.properties()));
            return Optional.empty();
        }
        return solvent.map(found -> {
            OptionalDouble number = text.matches("-?\\d+(\\.\\d+)?")
                    ? OptionalDouble.of(Double.parseDouble(text))
                    : OptionalDouble.empty();
            Optional<TableValue> table = found.value(property);
            boolean fits = fitsInUnit(fields, property, unit, number);
            table.filter(known -> fits).ifPresent(known -> plausible(fields, known, number));
            return new TableValue(
                    found.name(),
                    property,
                    List.of(text),
                    number,
                    Map.of(),
                    unit,
                    condition,
                    List.of(source + " (" + fields.place() + ")"),
                    "your shelf",
                    true,
                    table.map(known -> "the table has " + known.shown()).orElse("the table has none"),
                    fields.place());
        });
    }

    /** A word carries no unit; no unit at all was reported as missing. */
    private boolean fitsInUnit(Fields fields, String property, String unit, OptionalDouble number) {
        String expected = data.unitOfProperty().getOrDefault(property, unit);
        boolean wordWithoutUnit = number.isEmpty() && unit.equals("none");
        if (unit.isEmpty() || unit.equals(expected) || wordWithoutUnit) {
            return true;
        }
        problems.add(
                fields.placeOf("unit"), property + " in `" + unit + "`", "the unit " + expected, "convert the value");
        return false;
    }

    private void plausible(Fields fields, TableValue known, OptionalDouble number) {
        if (!known.unit().equals("degC") || number.isEmpty() || known.number().isEmpty()) {
            return;
        }
        double fromFahrenheit = (number.getAsDouble() - FAHRENHEIT_SHIFT) * KELVIN_PER_FAHRENHEIT;
        double table = known.number().getAsDouble();
        boolean far = Math.abs(number.getAsDouble() - table) > FAR_FROM_TABLE_KELVIN;
        if (far && Math.abs(fromFahrenheit - table) < NEAR_TABLE_KELVIN) {
            problems.add(
                    fields.placeOf("value"),
                    known.property() + " of " + known.solvent() + " given as " + Numbers.plain(number.getAsDouble(), 1)
                            + " degC, the table has " + known.shown(),
                    "degrees Celsius",
                    "is this in Fahrenheit? then write " + Numbers.plain(fromFahrenheit, 1));
        }
    }

    private static String shown(Path file) {
        return file.normalize().toString().replace('\\', '/');
    }
}
