package org.wickwise;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The table of the limits, {@code limits-tried.tsv}: what each is compared with and on which side the comparison falls
 * below, at and above it, and which are compared with nothing, and why.
 */
public final class LimitsTable {

    /** Which words mean that a sentence holds for a number just below, at and just above the one that it names. */
    public static final Map<String, String> SIDES = Map.ofEntries(
            Map.entry("at most ...", "yes yes no"),
            Map.entry("no dye has a chance of more than ...", "yes yes no"),
            Map.entry("at least ...", "no yes yes"),
            Map.entry("with a chance of ... or more", "no yes yes"),
            Map.entry("more than ...", "no no yes"),
            Map.entry("above ...", "no no yes"),
            Map.entry("below ...", "yes no no"),
            Map.entry("less than ...", "yes no no"),
            Map.entry("less adsorbent than ...", "yes no no"),
            Map.entry("nearer than ...", "yes no no"),
            Map.entry("with a chance of ...", "yes no no"));

    private static final Path TABLE = Path.of("src/test/resources/limits-tried.tsv");
    private static final int COLUMNS = 5;

    private LimitsTable() {}

    /**
     * One row.
     *
     * @param number a limit by its name, as rules say it, or a number that a rule writes itself
     * @param where the rule, {@code rule NAME}, or classes of the program, {@code plan/Flow, why/Beliefs}
     * @param compared what is compared with it, or why nothing is
     * @param words that say which side the number itself falls on
     * @param sides whether it holds below, at and above; {@code -} where nothing is compared
     */
    public record Row(String number, String where, String compared, String words, String sides) {

        public boolean isOfARule() {
            return where.startsWith("rule ");
        }

        public boolean isTried() {
            return !sides.equals("-");
        }

        @Override
        public String toString() {
            return number + " in " + where + ", `" + compared + "`";
        }
    }

    public static List<Row> ofRules() {
        return rows().stream().filter(Row::isOfARule).toList();
    }

    public static List<Row> ofTheProgram() {
        return rows().stream().filter(row -> !row.isOfARule()).toList();
    }

    public static List<Row> rows() {
        try {
            return Files.readAllLines(TABLE).stream()
                    .skip(1)
                    .map(line -> line.split("\t", -1))
                    .map(LimitsTable::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(String[] cells) {
        if (cells.length != COLUMNS) {
            throw new IllegalStateException("a row of " + TABLE + " has " + cells.length + " cells: " + cells[0]);
        }
        return new Row(cells[0], cells[1], cells[2], cells[3], cells[4]);
    }
}
