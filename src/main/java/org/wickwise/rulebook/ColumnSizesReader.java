package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.ColumnSizes.AdsorbentRatio;
import org.wickwise.column.ColumnSizes.Row;
import org.wickwise.column.Setup.Particles;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads the table of column sizes. */
final class ColumnSizesReader {

    private static final Set<String> KEYS = Set.of(
            "source",
            "stationary phase",
            "particle um",
            "wanted Rf",
            "bed mm",
            "surface falls mm per min",
            "easy gap",
            "narrow gap",
            "columns",
            "adsorbent to mixture");
    private static final Set<String> ROW_KEYS =
            Set.of("bore mm", "eluent mL", "load mg at an easy gap", "load mg at a narrow gap", "fraction mL");
    private static final Set<String> RATIO_KEYS = Set.of("easy", "usual", "hard", "source");

    private final Problems problems;

    ColumnSizesReader(Problems problems) {
        this.problems = problems;
    }

    ColumnSizes sizes(Mapping file) {
        Fields fields = Fields.of(file, "the column sizes", KEYS, problems);
        List<Row> rows = new ArrayList<>();
        for (Node node : fields.list("columns")) {
            Fields row = Fields.ofNode(node, "a column of the table", ROW_KEYS, problems);
            Row read = new Row(
                    aboveZero(row, "bore mm"),
                    aboveZero(row, "eluent mL"),
                    aboveZero(row, "load mg at an easy gap"),
                    aboveZero(row, "load mg at a narrow gap"),
                    aboveZero(row, "fraction mL"));
            if (!rows.isEmpty()
                    && read.boreMillimetres() <= rows.get(rows.size() - 1).boreMillimetres()) {
                problems.add(
                        row.placeOf("bore mm"),
                        "a bore of " + Numbers.plain(read.boreMillimetres(), 1) + " mm stands after a wider one",
                        "the columns from narrow to wide, each bore once",
                        "put the rows in order");
            }
            rows.add(read);
        }
        if (rows.size() < 2) {
            problems.add(
                    fields.placeOf("columns"),
                    "the table has fewer than two columns",
                    "two or more rows under `columns`",
                    "between rows the program interpolates; one row is no table");
        }
        return new ColumnSizes(
                fields.requiredText("stationary phase"),
                grains(fields),
                aboveZero(fields, "wanted Rf"),
                aboveZero(fields, "bed mm"),
                aboveZero(fields, "surface falls mm per min"),
                aboveZero(fields, "easy gap"),
                aboveZero(fields, "narrow gap"),
                rows,
                ratio(fields),
                fields.requiredText("source"),
                fields.place());
    }

    private Particles grains(Fields fields) {
        List<Double> sizes = fields.texts("particle um").stream()
                .flatMap(size -> fields.numberIn(size).stream().boxed())
                .toList();
        if (sizes.size() == 2 && sizes.get(0) > 0 && sizes.get(0) <= sizes.get(1)) {
            return new Particles(sizes.get(0), sizes.get(1));
        }
        problems.add(
                fields.placeOf("particle um"),
                "`particle um` does not give the size of the grains that the table was made on",
                "the smaller and the larger size in micrometres, as in `particle um: [40, 63]`",
                "take them from the source of the table");
        return new Particles(1, 1);
    }

    private AdsorbentRatio ratio(Fields fields) {
        Fields ratio = fields.node("adsorbent to mixture")
                .map(node -> Fields.ofNode(node, "the ratio of adsorbent", RATIO_KEYS, problems))
                .orElseGet(() -> Fields.none(fields.place(), "the ratio of adsorbent"));
        return new AdsorbentRatio(
                aboveZero(ratio, "easy"),
                aboveZero(ratio, "usual"),
                aboveZero(ratio, "hard"),
                ratio.requiredText("source"));
    }

    /** Any number, with a problem reported, where the file has none above zero. */
    private static double aboveZero(Fields fields, String key) {
        return fields.requiredNumberWithin(key, Bounds.aboveZero().told("a number above zero"), "correct it")
                .orElse(1);
    }
}
