package org.wickwise.notebook;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.wickwise.notebook.SheetColumn.Kind;
import org.wickwise.notebook.SheetColumn.Unit;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Cells;

/**
 * Writes class tables that {@link ClassSheet} reads back: RFC 4180, commas, decimal points, millimetres. What was seen between
 * spots has no column. A cell that begins like a formula gets an apostrophe in front, so that no spreadsheet program reckons with
 * what somebody called a group.
 */
public final class SheetWriter {

    private final Appendable out;
    private final List<String> columns;

    private SheetWriter(Appendable out, Collection<String> spots) {
        this.out = out;
        this.columns = new ArrayList<>(List.of(
                Kind.GROUP.heading(),
                Kind.SOLVENT.heading(),
                Kind.PHASE.heading(),
                Kind.REPLICATE.heading(),
                Kind.FRONT.heading() + " " + Unit.MILLIMETRES.word(),
                Kind.RULER.heading() + " " + Unit.MILLIMETRES.word()));
        columns.addAll(spots);
        columns.addAll(List.of(Kind.WENT_WRONG.heading(), Kind.STREAKED.heading(), Kind.TOUCHED_THE_EDGE.heading()));
    }

    /**
     * A table to fill in: a row for each strip of each group.
     *
     * @param planned none where it is not settled what the strips are run in
     * @param rowsEach how many rows each group gets where nothing is planned
     */
    public static void template(Appendable out, List<String> groups, List<Dye> dyes, List<Eluent> planned, int rowsEach)
            throws IOException {
        List<String> heading = new ArrayList<>(List.of(
                Kind.GROUP.heading(),
                Kind.SOLVENT.heading(),
                Kind.REPLICATE.heading(),
                Kind.FRONT.heading() + " " + Unit.MILLIMETRES.word()));
        dyes.forEach(dye -> heading.add(travel(dye.name())));
        heading.addAll(List.of(Kind.WENT_WRONG.heading(), Kind.STREAKED.heading(), Kind.NOTE.heading()));
        List<String> solvents = planned.isEmpty()
                ? java.util.Collections.nCopies(rowsEach, "")
                : planned.stream().map(Eluent::name).toList();
        try (CSVPrinter table = new CSVPrinter(out, CSVFormat.RFC4180)) {
            table.printRecord(heading.stream().map(Cells::guarded).toList());
            for (String group : groups) {
                Map<String, Integer> repeats = new TreeMap<>();
                for (String solvent : solvents) {
                    List<String> row = new ArrayList<>(java.util.Collections.nCopies(heading.size(), ""));
                    row.set(0, Cells.guarded(group));
                    row.set(1, Cells.guarded(solvent));
                    row.set(2, solvent.isEmpty() ? "" : String.valueOf(repeats.merge(solvent, 1, Integer::sum)));
                    table.printRecord(row);
                }
            }
        }
    }

    /**
     * Begins a table for strips whose spots are called so: the dyes in their order here, then what else the spots are called.
     *
     * @param called what {@link #spotOf} says of every spot that will be written
     */
    public static SheetWriter begun(Appendable out, List<Dye> dyes, Collection<String> called) throws IOException {
        Set<String> spots =
                new LinkedHashSet<>(dyes.stream().map(dye -> travel(dye.name())).toList());
        spots.addAll(new TreeSet<>(called));
        SheetWriter writer = new SheetWriter(out, spots);
        writer.print(writer.columns);
        return writer;
    }

    /** How the column of a spot is headed. */
    public static String spotOf(Spot spot) {
        return spot.position() instanceof Spot.Quoted ? factor(called(spot)) : travel(called(spot));
    }

    public void write(String group, Strip strip) throws IOException {
        Map<String, String> cells = new TreeMap<>();
        cells.put(Kind.GROUP.heading(), group);
        cells.put(Kind.SOLVENT.heading(), strip.eluent().name());
        cells.put(Kind.PHASE.heading(), strip.phase().name());
        cells.put(Kind.REPLICATE.heading(), String.valueOf(strip.replicate()));
        strip.frontMillimetres().ifPresent(front -> cells.put(Kind.FRONT.heading() + " mm", shown(front)));
        strip.rulerDivisionMillimetres().ifPresent(ruler -> cells.put(Kind.RULER.heading() + " mm", shown(ruler)));
        for (Spot spot : strip.spots()) {
            cells.put(spotOf(spot), shown(spot.position()));
        }
        strip.notSeen().forEach(dye -> cells.put(travel(dye.name()), "n.s."));
        cells.put(
                Kind.WENT_WRONG.heading(),
                strip.mishaps().stream().map(Mishap::word).collect(Collectors.joining("; ")));
        cells.put(Kind.STREAKED.heading(), names(strip.streaked()));
        cells.put(Kind.TOUCHED_THE_EDGE.heading(), names(strip.atTheEdge()));
        print(columns.stream()
                .map(column -> Optional.ofNullable(cells.get(column)).orElse(""))
                .toList());
    }

    private void print(List<String> cells) throws IOException {
        CSVFormat.RFC4180.printRecord(out, cells.stream().map(Cells::guarded).toArray());
    }

    private static String names(Set<Dye> dyes) {
        return dyes.stream().map(Dye::name).sorted().collect(Collectors.joining("; "));
    }

    private static String called(Spot spot) {
        return spot.dyes().stream().map(Dye::name).collect(Collectors.joining(" + "));
    }

    private static String travel(String spot) {
        return spot + " " + Unit.MILLIMETRES.word();
    }

    private static String factor(String spot) {
        return spot + " " + Unit.RETARDATION_FACTOR.word();
    }

    private static String shown(Spot.Position position) {
        if (position instanceof Spot.Travelled travelled) {
            return shown(travelled.millimetres());
        }
        return position instanceof Spot.Quoted quoted ? shown(quoted.retardationFactor()) : word((Spot.Seen) position);
    }

    private static String word(Spot.Seen seen) {
        return seen.behaviour().word();
    }

    private static String shown(double number) {
        return BigDecimal.valueOf(number).toPlainString();
    }
}
