package org.wickwise.notebook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.notebook.SheetColumn.Kind;
import org.wickwise.notebook.SheetColumn.Unit;
import org.wickwise.substance.Dye;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/**
 * How a class table is laid out: what separates its cells, where its header stands, what each column holds.
 *
 * @param headerRow the row with the names of the columns
 * @param firstRow the first row that may be a strip; one of units may lie between
 */
record SheetForm(SheetLetters letters, char separator, int headerRow, int firstRow, List<SheetColumn> columns) {

    private static final int ROWS_LOOKED_AT = 30;
    private static final Map<Character, String> SEPARATORS =
            new TreeMap<>(Map.of(';', "semicolons", ',', "commas", '\t', "tabs"));

    SheetForm {
        columns = List.copyOf(columns);
    }

    /** @throws org.wickwise.text.ProblemsFound where no row names the columns, or they do not say enough */
    static SheetForm of(SheetLetters letters, List<Dye> mixture) throws IOException {
        List<SheetForm> possible = new ArrayList<>();
        for (char separator : SEPARATORS.keySet()) {
            withHeader(letters, separator, mixture).ifPresent(possible::add);
        }
        Problems problems = new Problems();
        Optional<SheetForm> best = possible.stream().max(Comparator.comparingLong(SheetForm::known));
        if (best.isEmpty()) {
            problems.add(
                    Place.wholeFile(letters.file().toString()),
                    "none of the first " + ROWS_LOOKED_AT + " rows names the columns",
                    "a row with `group`, `solvent`, `front mm` and one column for each dye, between commas, semicolons or"
                            + " tabs",
                    "put such a row above the readings; `sheet LESSONFILE` prints a table to fill in");
        }
        problems.throwIfAny();
        SheetForm form = best.orElseThrow();
        form.check(mixture, problems);
        problems.throwIfAny();
        return form.withUnitOfFront();
    }

    private static Optional<SheetForm> withHeader(SheetLetters letters, char separator, List<Dye> mixture)
            throws IOException {
        try (SheetRecords records = new SheetRecords(letters.open(), separator)) {
            for (int looked = 0; looked < ROWS_LOOKED_AT; looked++) {
                Optional<SheetRecords.Row> row = records.next();
                if (row.isEmpty()) {
                    return Optional.empty();
                }
                List<SheetColumn> columns = columns(row.get().cells(), mixture);
                if (has(columns, Kind.GROUP) && has(columns, Kind.SOLVENT)) {
                    int header = row.get().row();
                    return Optional.of(
                            new SheetForm(letters, separator, header, header + 1, columns).withUnitRow(records.next()));
                }
            }
        }
        return Optional.empty();
    }

    private static List<SheetColumn> columns(List<String> cells, List<Dye> mixture) {
        List<SheetColumn> columns = new ArrayList<>();
        for (int at = 0; at < cells.size(); at++) {
            columns.add(SheetColumn.of(at, cells.get(at), mixture));
        }
        return columns;
    }

    private static boolean has(List<SheetColumn> columns, Kind kind) {
        return columns.stream().anyMatch(column -> column.is(kind));
    }

    boolean has(Kind kind) {
        return has(columns, kind);
    }

    List<SheetColumn> all(Kind kind) {
        return columns.stream().filter(column -> column.is(kind)).toList();
    }

    Optional<SheetColumn> first(Kind kind) {
        return all(kind).stream().findFirst();
    }

    private long known() {
        return columns.stream().filter(column -> !column.is(Kind.OTHER)).count();
    }

    /** A row below the header that holds nothing but units. */
    private SheetForm withUnitRow(Optional<SheetRecords.Row> below) {
        if (below.isEmpty() || below.get().isBlank()) {
            return this;
        }
        List<String> cells = below.get().cells();
        boolean onlyUnits = !cells.isEmpty()
                && cells.stream()
                        .allMatch(cell -> cell.isEmpty() || Unit.named(cell).isPresent());
        if (!onlyUnits) {
            return this;
        }
        List<SheetColumn> withUnits = columns.stream()
                .map(column -> column.at() < cells.size()
                        ? Unit.named(cells.get(column.at())).map(column::in).orElse(column)
                        : column)
                .toList();
        return new SheetForm(letters, separator, headerRow, firstRow + 1, withUnits);
    }

    /** Travels are measured with the ruler the front is measured with, unless their columns say otherwise. */
    private SheetForm withUnitOfFront() {
        Optional<Unit> front = first(Kind.FRONT).flatMap(SheetColumn::unit);
        if (front.isEmpty()) {
            return this;
        }
        List<SheetColumn> withUnits = columns.stream()
                .map(column -> column.is(Kind.READING) && column.unit().isEmpty() ? column.in(front.get()) : column)
                .toList();
        return new SheetForm(letters, separator, headerRow, firstRow, withUnits);
    }

    private Place place(String column) {
        return new Place(letters.file().toString(), headerRow, column);
    }

    private void check(List<Dye> mixture, Problems problems) {
        Set<String> covered = all(Kind.READING).stream().map(SheetColumn::dyes).collect(Collectors.toSet());
        List<String> others = all(Kind.OTHER).stream().map(SheetColumn::written).toList();
        for (Dye dye : mixture) {
            if (!covered.contains(dye.name())) {
                List<String> near = NearMiss.of(dye.name(), others);
                problems.add(
                        place(near.isEmpty() ? "" : near.get(0)),
                        "the table has no column for " + dye.name(),
                        "one column for each dye of the mixture, such as `" + dye.name() + " mm`",
                        near.isEmpty()
                                ? "add the column, or correct the dyes of the lesson file"
                                : "is `" + near.get(0) + "` meant? write it as the lesson file does");
            }
        }
        Set<String> headings = new HashSet<>();
        for (SheetColumn column : columns) {
            boolean factor = column.unit().equals(Optional.of(Unit.RETARDATION_FACTOR));
            String heading = column.is(Kind.READING)
                    ? column.dyes() + (factor ? " as Rf" : "")
                    : column.kind().name();
            if (!column.is(Kind.OTHER) && !headings.add(heading)) {
                problems.add(
                        place(column.written()),
                        "a second column says the same as one before it",
                        "each column once",
                        "remove one of the two, or head it otherwise and it is passed over");
            }
        }
        boolean inRf = all(Kind.READING).stream()
                .allMatch(column -> column.unit().equals(Optional.of(Unit.RETARDATION_FACTOR)));
        if (!has(Kind.FRONT) && !inRf) {
            problems.add(
                    place(""),
                    "the table has no column for the solvent front",
                    "a column `front mm` or `front cm`",
                    "add it; without a front a travel says nothing");
        }
    }

    /** What a person should know of how the table was read, each a sentence. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        told.add("The table is " + letters.inWords() + ", with " + SEPARATORS.get(separator)
                + " between its cells and its header in row " + headerRow + ".");
        List<String> others = all(Kind.OTHER).stream()
                .map(SheetColumn::written)
                .filter(written -> !written.isEmpty())
                .toList();
        if (!others.isEmpty()) {
            told.add("Passed over, since nothing here is called so: "
                    + others.stream().map(name -> "column `" + name + "`").collect(Collectors.joining(", ")) + ".");
        }
        List<String> units = columns.stream()
                .filter(column -> column.unit().isPresent() && !column.saysItsUnit())
                .map(column -> "`" + column.written() + "` in "
                        + column.unit().orElseThrow().word())
                .toList();
        if (!units.isEmpty()) {
            told.add("Read in the unit of a row of units or of the front: " + String.join(", ", units) + ".");
        }
        return told;
    }
}
