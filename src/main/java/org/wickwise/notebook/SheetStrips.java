package org.wickwise.notebook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.bench.Case;
import org.wickwise.bench.StripReader;
import org.wickwise.notebook.ClassSheet.SheetRow;
import org.wickwise.notebook.SheetColumn.Kind;
import org.wickwise.notebook.SheetColumn.Unit;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Strip;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;

/** Turns the rows of a class table into strips, by the same checks that a strip of a case file goes through. */
public final class SheetStrips {

    private static final Set<String> NOT_SEEN =
            Set.of("n.s.", "n. s.", "n.s", "ns", "n/s", "not seen", "-", "\u2013", "\u2014");
    private static final Pattern NUMBER =
            Pattern.compile("([-+]?\\d+(?:[.,]\\d+)?)\\s*(mm|cm)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern THOUSANDS = Pattern.compile("[-+]?\\d{1,3},\\d{3}");

    private final ClassSheet sheet;
    private final Case basis;
    private final StationaryPhase usualPhase;
    private final SolventData data;

    /**
     * @param basis the case whose dyes and shelf the strips belong to
     * @param usualPhase what the strips were run on, where a row does not say otherwise
     */
    public SheetStrips(ClassSheet sheet, Case basis, StationaryPhase usualPhase, SolventData data) {
        this.sheet = sheet;
        this.basis = basis;
        this.usualPhase = usualPhase;
        this.data = data;
    }

    /**
     * The strips of one group.
     *
     * @param leftOut what is wrong with rows that became no strip
     * @param told what was taken in a way that somebody may want to know
     */
    public record OfGroup(List<Strip> strips, List<Problem> leftOut, List<String> told) {
        public OfGroup {
            strips = List.copyOf(strips);
            leftOut = List.copyOf(leftOut);
            told = List.copyOf(told);
        }
    }

    public OfGroup of(String group) {
        Problems problems = new Problems();
        StripReader reader = StripReader.beside(basis, usualPhase, data, problems);
        Map<SheetRow, Strip> strips = new LinkedHashMap<>();
        try {
            for (SheetRow row : sheet.rowsOf(group)) {
                int before = problems.size();
                Mapping node = node(row, problems);
                Optional<Strip> strip = problems.size() > before ? Optional.empty() : reader.strip(node);
                strip.filter(sound -> problems.size() == before).ifPresent(sound -> strips.put(row, sound));
            }
        } catch (ProblemsFound tooMany) {
            return new OfGroup(List.of(), tooMany.problems(), List.of());
        }
        List<String> told = new ArrayList<>();
        List<Strip> taken = new RowsTwice(sheet, group, problems, told).takenOut(strips);
        return new OfGroup(taken, problems.found().problems(), told);
    }

    private Mapping node(SheetRow row, Problems problems) {
        Place place = place(row, "");
        List<Entry> entries = new ArrayList<>();
        List<Entry> travels = new ArrayList<>();
        List<Entry> factors = new ArrayList<>();
        List<Entry> moves = new ArrayList<>();
        List<Node> notSeen = new ArrayList<>();
        Optional<Unit> unitOfRow = unitOf(row, problems);
        text(row, Kind.SOLVENT, "solvent", entries);
        text(row, Kind.PHASE, "stationary phase", entries);
        text(row, Kind.REPLICATE, "replicate", entries);
        text(row, Kind.NOTE, "note", entries);
        measured(row, Kind.FRONT, "front mm", unitOfRow, entries, problems);
        measured(row, Kind.RULER, "ruler mm", unitOfRow, entries, problems);
        words(row, Kind.WENT_WRONG, "went wrong", entries);
        words(row, Kind.STREAKED, "streaked", entries);
        words(row, Kind.TOUCHED_THE_EDGE, "touched the edge", entries);
        sheet.form().first(Kind.NOT_SEEN).ifPresent(column -> notSeen.addAll(words(row, column)));
        boolean mishap = entries.stream().anyMatch(entry -> entry.key().text().equals("went wrong"));
        for (SheetColumn column : sheet.form().all(Kind.READING)) {
            String cell = row.cell(column);
            Scalar dyes = new Scalar(column.dyes(), place(row, column.written()));
            String small = cell.toLowerCase(Locale.ROOT);
            if (NOT_SEEN.contains(small)) {
                Arrays.stream(column.dyes().split(" \\+ ")).forEach(dye -> notSeen.add(new Scalar(dye, dyes.place())));
            } else if (Behaviour.named(small).isPresent()) {
                moves.add(new Entry(dyes, new Scalar(small, dyes.place())));
            } else if (!cell.isEmpty()) {
                boolean factor = column.unit().equals(Optional.of(Unit.RETARDATION_FACTOR));
                number(row, column, unitOfRow, problems)
                        .ifPresent(number -> (factor ? factors : travels).add(new Entry(dyes, number)));
            } else if (!mishap && !column.dyes().contains("+") && !isCovered(row, column)) {
                problems.add(
                        dyes.place(),
                        "the cell is empty",
                        "how far " + column.dyes() + " travelled, or `n.s.` where nobody saw it",
                        "fill the cell in; a spot that did not move has travelled 0");
            }
        }
        group("travel mm", travels, place, entries);
        group("Rf", factors, place, entries);
        group("moves", moves, place, entries);
        if (!notSeen.isEmpty()) {
            entries.add(new Entry(new Scalar("not seen", place), new Listing(notSeen, place)));
        }
        return new Mapping(entries, place);
    }

    /** Whether another column of the dye, a spot that it shares, or the list of what was not seen speaks for an empty cell. */
    private boolean isCovered(SheetRow row, SheetColumn column) {
        boolean shared = sheet.form().all(Kind.READING).stream()
                .filter(other -> List.of(other.dyes().split(" \\+ ")).contains(column.dyes()))
                .anyMatch(other -> !row.cell(other).isEmpty());
        return shared
                || sheet.form().first(Kind.NOT_SEEN).stream()
                        .flatMap(notSeen -> words(row, notSeen).stream())
                        .anyMatch(node ->
                                node instanceof Scalar word && word.text().equals(column.dyes()));
    }

    private Optional<Unit> unitOf(SheetRow row, Problems problems) {
        Optional<SheetColumn> column =
                sheet.form().first(Kind.UNIT).filter(unit -> !row.cell(unit).isEmpty());
        Optional<Unit> unit = column.flatMap(found -> Unit.named(row.cell(found)));
        if (column.isPresent() && unit.isEmpty()) {
            problems.add(
                    place(row, column.get().written()),
                    "`" + row.cell(column.get()) + "` is no unit",
                    "mm or cm",
                    "write the unit of the ruler");
        }
        return unit;
    }

    private void text(SheetRow row, Kind kind, String key, List<Entry> entries) {
        sheet.form().first(kind).filter(column -> !row.cell(column).isEmpty()).ifPresent(column -> {
            Place place = place(row, column.written());
            String text = row.cell(column).replaceAll("\\s+", " ");
            entries.add(new Entry(new Scalar(key, place), new Scalar(text, place)));
        });
    }

    private void words(SheetRow row, Kind kind, String key, List<Entry> entries) {
        sheet.form().first(kind).ifPresent(column -> {
            List<Node> words = words(row, column);
            if (!words.isEmpty()) {
                Place place = place(row, column.written());
                entries.add(new Entry(new Scalar(key, place), new Listing(words, place)));
            }
        });
    }

    private List<Node> words(SheetRow row, SheetColumn column) {
        return Arrays.stream(row.cell(column).split("[;,/\n]"))
                .map(word -> word.strip().replaceAll("\\s+", " "))
                .filter(word -> !word.isEmpty() && !word.equals("-"))
                .<Node>map(word -> new Scalar(
                        column.is(Kind.WENT_WRONG) ? word.toLowerCase(Locale.ROOT) : word,
                        place(row, column.written())))
                .toList();
    }

    private void measured(
            SheetRow row, Kind kind, String key, Optional<Unit> unitOfRow, List<Entry> entries, Problems problems) {
        sheet.form().first(kind).filter(column -> !row.cell(column).isEmpty()).ifPresent(column -> number(
                        row, column, unitOfRow, problems)
                .ifPresent(number -> entries.add(new Entry(new Scalar(key, place(row, column.written())), number))));
    }

    /** The number of a cell in millimetres, or as it stands where it is an Rf. */
    private Optional<Scalar> number(SheetRow row, SheetColumn column, Optional<Unit> unitOfRow, Problems problems) {
        String cell = row.cell(column);
        Place place = place(row, column.written());
        Matcher number = NUMBER.matcher(cell);
        if (!number.matches()) {
            problems.add(
                    place,
                    "`" + cell + "` is no number",
                    "a number such as 24 or 24.5" + (column.is(Kind.READING) ? ", or `n.s.` for not seen" : ""),
                    "write the number alone, what else there is to say under `note`");
            return Optional.empty();
        }
        if (THOUSANDS.matcher(number.group(1)).matches()) {
            problems.add(
                    place,
                    "`" + cell + "` can be read in two ways, with a decimal comma or with thousands",
                    "a number with one meaning",
                    "write " + number.group(1).replace(',', '.') + " or "
                            + number.group(1).replace(",", ""));
            return Optional.empty();
        }
        Optional<Unit> inCell = Optional.ofNullable(number.group(2)).flatMap(Unit::named);
        Optional<Unit> unit = inCell.or(column::unit).or(() -> unitOfRow);
        if (unit.isEmpty()) {
            problems.add(
                    place,
                    "`" + cell + "` says no unit, and neither does its column",
                    "mm or cm",
                    "head the column `" + column.written() + " mm`, or write the unit into a column `unit`");
            return Optional.empty();
        }
        BigDecimal plain = new BigDecimal(number.group(1).replace(',', '.'));
        if (unit.get() != Unit.CENTIMETRES) {
            return Optional.of(new Scalar(plain.toPlainString(), place));
        }
        BigDecimal millimetres = plain.movePointRight(1);
        if (millimetres.doubleValue() > StripReader.LONGEST_FRONT_MILLIMETRES) {
            problems.add(
                    place,
                    "`" + cell + "` is read in centimetres, as the column says",
                    "at most " + Numbers.plain(StripReader.LONGEST_FRONT_MILLIMETRES / 10, 0) + " cm",
                    "is it in millimetres? then write " + Numbers.plain(plain.doubleValue() / 10, 3) + ", or `" + cell
                            + " mm`");
            return Optional.empty();
        }
        return Optional.of(new Scalar(millimetres.toPlainString(), place));
    }

    private static void group(String key, List<Entry> inner, Place place, List<Entry> entries) {
        if (!inner.isEmpty()) {
            entries.add(new Entry(new Scalar(key, place), new Mapping(inner, place)));
        }
    }

    private Place place(SheetRow row, String column) {
        return sheet.place(row, column);
    }
}
