package org.wickwise.notebook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wickwise.notebook.SheetColumn.Kind;
import org.wickwise.substance.Dye;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * The strips of a whole class in one table, one row a strip, as people make them with a spreadsheet program. The rows are
 * kept as written and become strips group by group ({@link SheetStrips}). A row that cannot be taken is told and left out;
 * the others still count.
 *
 * @param told how the table was read, and what was taken in a way that somebody may want to know
 * @param leftOut rows that belong to no group, each with its place and the way out
 * @param rows by the name of the group, in the order of the table
 */
public final class ClassSheet {

    public static final int MOST_ROWS = 200_000;
    private static final int MOST_LETTERS = 1_000;
    private static final int MOST_GROUPS = 10_000;
    private static final int MOST_TOLD = 500;

    /** One row that may be a strip: its cells by column, blank where the row is shorter. */
    record SheetRow(int row, List<String> cells) {

        String cell(SheetColumn column) {
            return column.at() < cells.size() ? cells.get(column.at()) : "";
        }
    }

    private final SheetForm form;
    private final Map<String, List<SheetRow>> rows = new LinkedHashMap<>();
    private final Map<String, String> nameInSmallLetters = new HashMap<>();
    private final Map<String, String> sameTexts = new HashMap<>();
    private final List<Problem> leftOut = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final List<Integer> underTheGroupAbove = new ArrayList<>();
    private int untold;
    private String groupAbove = "";

    private ClassSheet(SheetForm form) {
        this.form = form;
    }

    /**
     * @param mixture the dyes that need a column each
     * @throws ProblemsFound where the table as a whole cannot be read
     */
    public static ClassSheet read(Path file, List<Dye> mixture) {
        SheetLetters letters = SheetLetters.of(file);
        try {
            ClassSheet sheet = new ClassSheet(SheetForm.of(letters, mixture));
            sheet.read();
            return sheet;
        } catch (IOException e) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile(file.toString()),
                    "the table cannot be read to its end",
                    "a file of this computer",
                    "check who may read it")));
        }
    }

    /** The groups, by number and then by name. */
    public List<String> groups() {
        return rows.keySet().stream().sorted(ORDER).toList();
    }

    /** Numbers as numbers, then names. */
    public static final Comparator<String> ORDER = Comparator.<String>comparingInt(
                    name -> name.matches("\\d{1,9}") ? Integer.parseInt(name) : Integer.MAX_VALUE)
            .thenComparing(Comparator.naturalOrder());

    public List<String> told() {
        return List.copyOf(told);
    }

    public List<Problem> leftOut() {
        return List.copyOf(leftOut);
    }

    SheetForm form() {
        return form;
    }

    /** @param column how it is headed; empty for the whole row */
    Place place(SheetRow row, String column) {
        return new Place(form.letters().file().toString(), row.row(), column);
    }

    List<SheetRow> rowsOf(String group) {
        return List.copyOf(rows.getOrDefault(group, List.of()));
    }

    private void read() throws IOException {
        told.addAll(form.told());
        try (SheetRecords records = new SheetRecords(form.letters().open(), form.separator())) {
            Optional<SheetRecords.Row> row = records.next();
            int taken = 0;
            while (row.isPresent() && taken <= MOST_ROWS) {
                if (row.get().row() >= form.firstRow() && !row.get().isBlank()) {
                    taken++;
                    take(row.get(), taken);
                }
                row = records.next();
            }
        }
        if (!underTheGroupAbove.isEmpty()) {
            told.add("Rows without a group belong to the group above: " + shown(underTheGroupAbove)
                    + ". Where that is not meant, fill the cell in.");
        }
        if (untold > 0) {
            told.add(untold + " more rows were left out in the same way and are not listed.");
        }
    }

    private void take(SheetRecords.Row row, int taken) {
        if (taken > MOST_ROWS) {
            leaveOut(
                    row.row(),
                    "",
                    "this row and all below it are left out, so the last group may lack strips",
                    "at most " + MOST_ROWS + " rows",
                    "split the table, one for some of the groups");
            return;
        }
        Optional<String> trouble = row.trouble();
        if (trouble.isPresent()) {
            leaveOut(
                    row.row(),
                    "",
                    trouble.get(),
                    "quotes around the whole cell, two for one inside",
                    "mend the quotes of this row, or leave them out where no cell needs them");
        } else if (isHeaderAgain(row.cells())) {
            told.add("Row " + row.row() + " repeats the header and is passed over.");
        } else if (fits(row)) {
            file(row);
        }
    }

    private boolean isHeaderAgain(List<String> cells) {
        return form.columns().stream()
                .filter(column -> !column.written().isEmpty())
                .allMatch(column -> column.at() < cells.size()
                        && cells.get(column.at()).replaceAll("\\s+", " ").equalsIgnoreCase(column.written()));
    }

    private boolean fits(SheetRecords.Row row) {
        int columns = form.columns().size();
        List<String> cells = row.cells();
        boolean tooMany = IntStream.range(columns, cells.size())
                .anyMatch(at -> !cells.get(at).isEmpty());
        if (tooMany) {
            leaveOut(
                    row.row(),
                    "",
                    "the row has " + cells.size() + " cells",
                    columns + " cells, as the header has",
                    form.separator() == ','
                            ? "is there a decimal comma, or a comma in a note? put that cell in quotes, or write a point"
                            : "is there a separator in a note? put that cell in quotes");
            return false;
        }
        for (SheetColumn column : form.columns()) {
            if (column.at() < cells.size() && cells.get(column.at()).length() > MOST_LETTERS) {
                leaveOut(
                        row.row(),
                        column.written(),
                        "the cell has " + cells.get(column.at()).length() + " letters",
                        "at most " + MOST_LETTERS,
                        "shorten it; is a quote missing further up?");
                return false;
            }
        }
        return true;
    }

    private void file(SheetRecords.Row row) {
        SheetColumn groups = form.first(Kind.GROUP).orElseThrow();
        List<String> cells = row.cells().stream()
                .limit(form.columns().size())
                .map(cell -> sameTexts.size() < MOST_ROWS ? sameTexts.computeIfAbsent(cell, same -> same) : cell)
                .toList();
        SheetRow kept = new SheetRow(row.row(), cells);
        String written = kept.cell(groups).replaceAll("\\s+", " ");
        if (written.isEmpty() && groupAbove.isEmpty()) {
            leaveOut(
                    row.row(),
                    groups.written(),
                    "the row says no group, and none stands above it",
                    "the number or name of a group",
                    "fill the cell in");
            return;
        }
        if (written.isEmpty()) {
            underTheGroupAbove.add(row.row());
        } else {
            groupAbove = nameInSmallLetters.computeIfAbsent(written.toLowerCase(Locale.ROOT), small -> written);
        }
        if (rows.size() >= MOST_GROUPS && !rows.containsKey(groupAbove)) {
            leaveOut(
                    row.row(),
                    groups.written(),
                    "`" + groupAbove + "` would be one group more",
                    "at most " + MOST_GROUPS + " groups",
                    "split the table");
            return;
        }
        rows.computeIfAbsent(groupAbove, any -> new ArrayList<>()).add(kept);
    }

    private void leaveOut(int row, String column, String found, String expected, String wayOut) {
        if (leftOut.size() >= MOST_TOLD) {
            untold++;
            return;
        }
        leftOut.add(new Problem(new Place(form.letters().file().toString(), row, column), found, expected, wayOut));
    }

    /** "4, 7 to 9 and 12". */
    private static String shown(List<Integer> rows) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < rows.size(); ) {
            int last = i;
            while (last + 1 < rows.size() && rows.get(last + 1) == rows.get(last) + 1) {
                last++;
            }
            runs.add(
                    last > i
                            ? rows.get(i) + " to " + rows.get(last)
                            : rows.get(i).toString());
            i = last + 1;
        }
        int most = 20;
        return runs.size() <= most
                ? org.wickwise.text.Words.joined(runs)
                : String.join(", ", runs.subList(0, most)) + " and " + (runs.size() - most) + " more runs of rows";
    }
}
