package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.notebook.ClassSheet.SheetRow;
import org.wickwise.notebook.SheetColumn.Kind;
import org.wickwise.strip.Strip;
import org.wickwise.text.Problems;

/** Rows of one group that stand for one strip. */
final class RowsTwice {

    private final ClassSheet sheet;
    private final String group;
    private final Problems problems;
    private final List<String> told;

    /**
     * @param problems takes what is wrong with rows that are left out
     * @param told takes what was taken in a way that somebody may want to know
     */
    RowsTwice(ClassSheet sheet, String group, Problems problems, List<String> told) {
        this.sheet = sheet;
        this.group = group;
        this.problems = problems;
        this.told = told;
    }

    /**
     * Two rows with one strip: the same readings count once; other readings are repeats where the table numbers none, and
     * are left out where it does, since nobody can tell which of them is meant.
     */
    List<Strip> takenOut(Map<SheetRow, Strip> strips) {
        Map<List<Object>, List<SheetRow>> same = strips.keySet().stream()
                .collect(Collectors.groupingBy(
                        row -> List.of(
                                strips.get(row).eluent().name(),
                                strips.get(row).phase().name(),
                                strips.get(row).replicate()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        Set<SheetRow> out = new HashSet<>();
        Map<SheetRow, Integer> numbered = new HashMap<>();
        for (List<SheetRow> rows : same.values()) {
            SheetRow first = rows.get(0);
            List<SheetRow> others = new ArrayList<>();
            for (SheetRow row : rows.subList(1, rows.size())) {
                if (readsLike(row, first)) {
                    out.add(row);
                    leftOut(
                            row,
                            "the row says the same as row " + first.row(),
                            "each strip once",
                            "remove it; if a second strip gave the same readings, number both in a column `replicate`");
                } else {
                    others.add(row);
                }
            }
            if (others.isEmpty()) {
                continue;
            }
            if (sheet.form().has(Kind.REPLICATE)) {
                others.add(0, first);
                out.addAll(others);
                others.forEach(
                        row -> leftOut(
                                row,
                                "group " + group + " has " + others.size() + " rows for " + strips.get(row)
                                        + ", with different readings",
                                "one row for each strip",
                                "number repeats 1, 2, ... in column `replicate`, or remove the row that is wrong; none of them is used"));
            } else {
                for (int i = 0; i < others.size(); i++) {
                    numbered.put(others.get(i), i + 2);
                }
                told.add("Group " + group + " has " + (others.size() + 1) + " rows for " + strips.get(first)
                        + "; they are taken as repeats, row " + first.row() + " as the first.");
            }
        }
        return strips.entrySet().stream()
                .filter(entry -> !out.contains(entry.getKey()))
                .map(entry -> numbered.containsKey(entry.getKey())
                        ? entry.getValue().numbered(numbered.get(entry.getKey()))
                        : entry.getValue())
                .toList();
    }

    private boolean readsLike(SheetRow one, SheetRow other) {
        return sheet.form().columns().stream()
                .filter(column -> !column.is(Kind.NOTE) && !column.is(Kind.GROUP) && !column.is(Kind.OTHER))
                .allMatch(column -> one.cell(column).equalsIgnoreCase(other.cell(column)));
    }

    private void leftOut(SheetRow row, String found, String expected, String wayOut) {
        problems.add(sheet.place(row, ""), found, expected, wayOut);
    }
}
