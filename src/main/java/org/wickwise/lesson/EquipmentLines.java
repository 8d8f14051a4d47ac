package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Bed;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Portions;
import org.wickwise.plan.Route;
import org.wickwise.plan.Step;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Strips, jars, columns and what fills them, tubes and flasks. */
final class EquipmentLines {

    private static final String SPARE_STRIPS = "reserve of strips";
    private static final String IN_A_JAR = "number of strips in a jar";
    private static final String SAND = "layer of sand";
    private static final String SAND_DENSITY = "density of sand";
    private static final String SPARE_TUBES = "reserve of tubes";

    private final LaidOutLesson laidOut;
    private final ColumnSizes sizes;
    private final Column column;
    private final int groups;
    private final ReasonedLines lines = new ReasonedLines();

    EquipmentLines(LaidOutLesson laidOut, ColumnSizes sizes) {
        this.laidOut = laidOut;
        this.sizes = sizes;
        this.column = laidOut.plan().judged().column();
        this.groups = laidOut.groups();
    }

    List<PlanLine> lines() {
        strips();
        if (!laidOut.plan().isRefusal()) {
            columns();
            tubes();
            flasks();
        }
        return lines.all();
    }

    private void strips() {
        int each = laidOut.stripsOfAGroup();
        double jars = Math.ceil(Numbers.steady(each / laidOut.value(IN_A_JAR)));
        String text = "Strips: cut " + Numbers.plain(withSpare((double) groups * each, SPARE_STRIPS), 0) + " ("
                + groups * each + " to run, " + laidOut.limit(SPARE_STRIPS).shown() + " spare) and set out "
                + Numbers.plain(groups * jars, 0)
                + (groups * jars == 1 ? " jar with a lid. In: " : " jars with lids. In: ")
                + (laidOut.stripEluents().isEmpty()
                        ? "eluents that nobody has named yet"
                        : Words.joined(laidOut.stripEluents().stream()
                                .map(Eluent::name)
                                .toList()))
                + ".";
        lines.reckoned(
                Section.PACKING,
                "strips",
                text,
                "groups x strips x (1 + spare), rounded up; jars: groups x strips / strips in a jar, rounded up for"
                        + " each group",
                List.of(
                        laidOut.groupsStated(),
                        laidOut.stripsStated(),
                        laidOut.limit(SPARE_STRIPS).reason(),
                        laidOut.limit(IN_A_JAR).reason()));
    }

    private double withSpare(double amount, String limit) {
        return Math.ceil(Numbers.steady(amount * laidOut.timesWith(limit)));
    }

    private void columns() {
        OptionalDouble grams = column.bedGrams();
        if (grams.isEmpty()) {
            return;
        }
        double bore = column.boreMillimetres().orElseThrow();
        double adsorbent = laidOut.adsorbentGrams().orElseThrow();
        double sand = 2 * Bed.millilitres(bore, laidOut.value(SAND)) * laidOut.value(SAND_DENSITY) * groups;
        List<Reason> grounds = new ArrayList<>(List.of(
                laidOut.groupsStated(),
                laidOut.limit(LaidOutLesson.SPARE_ADSORBENT).reason(),
                laidOut.limit(SAND).reason(),
                laidOut.limit(SAND_DENSITY).reason()));
        column.sizeStated().ifPresent(grounds::add);
        String text = groups + (groups == 1 ? " column" : " columns") + " of " + Numbers.plain(bore, 1)
                + " mm bore with tap and stand: " + ReadyAmount.grams(adsorbent) + " of " + column.phaseName() + " ("
                + Numbers.plain(grams.getAsDouble(), 1) + " g each, "
                + laidOut.limit(LaidOutLesson.SPARE_ADSORBENT).shown() + " spare), " + ReadyAmount.grams(sand)
                + " of clean sand for a layer under and on each bed, and a tuft of wadding each.";
        lines.reckoned(
                Section.PACKING,
                "columns",
                text,
                "groups x bed volume x packed density x (1 + spare): " + groups + " x "
                        + Numbers.fixed(grams.getAsDouble(), 2) + " x "
                        + Numbers.plain(laidOut.timesWith(LaidOutLesson.SPARE_ADSORBENT), 3)
                        + "; sand: groups x 2 layers x pi d^2/4 x layer x density; "
                        + column.phase().figuresFrom(),
                grounds);
    }

    private void tubes() {
        Route route = laidOut.plan().route().orElseThrow();
        Optional<Portions> portions = Portions.of(route, laidOut.plan().judgement(), sizes);
        if (portions.isEmpty() || laidOut.columnVolumeMillilitres().isEmpty()) {
            return;
        }
        double columnVolume = laidOut.columnVolumeMillilitres().getAsDouble();
        double portion = portions.get().millilitres();
        double each = route.elution().poured().stream()
                .mapToDouble(poured -> Math.ceil(Numbers.steady(poured * columnVolume / portion)))
                .sum();
        String text =
                "Tubes: " + Numbers.plain(withSpare(groups * each, SPARE_TUBES), 0) + " (" + Numbers.plain(each, 0)
                        + " a group, filled with " + portions.get().shown() + " each, "
                        + laidOut.limit(SPARE_TUBES).shown() + " spare) and racks.";
        List<Reason> grounds = new ArrayList<>(
                List.of(laidOut.groupsStated(), laidOut.limit(SPARE_TUBES).reason()));
        grounds.addAll(portions.get().grounds());
        lines.reckoned(
                Section.PACKING,
                "tubes",
                text,
                "for each step its volume / portion, rounded up; portion: "
                        + portions.get().formula(),
                sizes.source(),
                grounds);
    }

    private void flasks() {
        Route route = laidOut.plan().route().orElseThrow();
        int fractions =
                route.steps().stream().mapToInt(step -> step.fractions().size()).sum();
        int between = route.steps().size();
        String text = "Flasks: " + groups * (fractions + between) + " (a group needs " + fractions
                + " for what leaves and " + between + " for what runs between), each with a label.";
        lines.reckoned(
                Section.PACKING,
                "flasks",
                text,
                "groups x (fractions of the steps + one between-fraction a step)",
                List.of(
                        laidOut.groupsStated(),
                        new Reason.Chosen("the steps are " + route.names(), List.of(), steps(route))));
    }

    private List<Reason> steps(Route route) {
        List<Reason> reasons = new ArrayList<>();
        for (Step step : route.steps()) {
            laidOut.plan()
                    .line("step-" + (route.steps().indexOf(step) + 1))
                    .ifPresent(line -> reasons.add(line.reason()));
        }
        return reasons;
    }
}
