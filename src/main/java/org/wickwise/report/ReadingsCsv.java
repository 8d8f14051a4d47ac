package org.wickwise.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.wickwise.notebook.Entry;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Cells;
import org.wickwise.text.Numbers;

/**
 * The readings of a notebook as a table, one row a spot (RFC 4180, decimal point). A cell that begins like a formula gets an
 * apostrophe in front, so that no spreadsheet program reckons with what somebody called a dye.
 */
public final class ReadingsCsv {

    private static final String[] HEADER = {
        "date",
        "group",
        "mixture",
        "dye",
        "solvent",
        "stationary phase",
        "replicate",
        "front mm",
        "travel mm",
        "Rf",
        "remarks",
        "file",
        "line"
    };
    private static final int DECIMALS_OF_RF = 4;
    private static final int DECIMALS_OF_MILLIMETRES = 2;

    private ReadingsCsv() {}

    /** Writes the table; entries in their order, strips and spots as they were written down. */
    public static void write(List<Entry> entries, Appendable out) {
        try (CSVPrinter table = new CSVPrinter(
                out, CSVFormat.RFC4180.builder().setHeader(HEADER).get())) {
            for (Entry entry : entries) {
                for (Strip strip : entry.strips().strips()) {
                    for (Spot spot : strip.spots()) {
                        table.printRecord(row(entry, strip, spot));
                    }
                    for (Dye dye : strip.notSeen()) {
                        table.printRecord(row(
                                entry,
                                strip,
                                dye.name(),
                                "",
                                "",
                                remarks(strip, List.of(dye), "not seen"),
                                strip.place().line()));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> row(Entry entry, Strip strip, Spot spot) {
        String dyes = spot.dyes().stream().map(Dye::name).collect(Collectors.joining(" + "));
        String travel = "";
        String retardation = "";
        String seen = "";
        if (spot.position() instanceof Spot.Travelled travelled) {
            travel = Numbers.plain(travelled.millimetres(), DECIMALS_OF_MILLIMETRES);
            OptionalDouble front = strip.frontMillimetres();
            retardation = front.isPresent()
                    ? Numbers.plain(travelled.millimetres() / front.getAsDouble(), DECIMALS_OF_RF)
                    : "";
        } else if (spot.position() instanceof Spot.Quoted quoted) {
            retardation = Numbers.plain(quoted.retardationFactor(), DECIMALS_OF_RF);
        } else if (spot.position() instanceof Spot.Seen watched) {
            seen = watched.behaviour().word();
        }
        return row(
                entry,
                strip,
                dyes,
                travel,
                retardation,
                remarks(strip, spot.dyes(), seen),
                spot.place().line());
    }

    private static List<String> row(
            Entry entry, Strip strip, String dyes, String travel, String retardation, String remarks, int line) {
        return List.of(
                entry.date().toString(),
                Cells.guarded(entry.group().orElse("")),
                Cells.guarded(entry.strips().mixture()),
                Cells.guarded(dyes),
                Cells.guarded(strip.eluent().name()),
                Cells.guarded(strip.phase().name()),
                String.valueOf(strip.replicate()),
                strip.frontMillimetres().isPresent()
                        ? Numbers.plain(strip.frontMillimetres().getAsDouble(), DECIMALS_OF_MILLIMETRES)
                        : "",
                travel,
                retardation,
                remarks,
                Cells.guarded(entry.place().file()),
                String.valueOf(line));
    }

    private static String remarks(Strip strip, List<Dye> dyes, String seen) {
        List<String> remarks = new ArrayList<>();
        if (!seen.isEmpty()) {
            remarks.add(seen);
        }
        if (dyes.stream().anyMatch(strip.streaked()::contains)) {
            remarks.add("streaked");
        }
        if (dyes.stream().anyMatch(strip.atTheEdge()::contains)) {
            remarks.add("touched the edge");
        }
        strip.mishaps().stream().map(Mishap::word).sorted().forEach(remarks::add);
        return String.join("; ", remarks);
    }
}
