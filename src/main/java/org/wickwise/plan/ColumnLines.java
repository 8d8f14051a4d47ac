package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Bed;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.LoadPlug;
import org.wickwise.column.Setup.Drive;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Apart.MeasuredGap;
import org.wickwise.strip.Movement.Measured;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** How large the column must be, how much it takes, in what portions to collect, and how long it runs. */
final class ColumnLines {

    private final Judgement judgement;
    private final Route route;
    private final ColumnSizes sizes;
    private final Column column;
    private final Flow flow;
    private final List<PlanLine> lines = new ArrayList<>();

    ColumnLines(Judgement judgement, Route route, ColumnSizes sizes) {
        this.judgement = judgement;
        this.route = route;
        this.sizes = sizes;
        this.column = judgement.judged().column();
        this.flow = new Flow(judgement);
    }

    List<PlanLine> lines() {
        narrowestGap().ifPresent(this::size);
        plug();
        fractions();
        flow();
        slowing();
        return lines;
    }

    /** The smallest measured gap between a dye that leaves and one that leaves later or stays. */
    private Optional<MeasuredGap> narrowestGap() {
        return route.steps().stream()
                .flatMap(step -> judgement.gaps().stream()
                        .filter(MeasuredGap.class::isInstance)
                        .map(MeasuredGap.class::cast)
                        .filter(gap -> gap.eluent().equals(step.eluent()))
                        .filter(gap -> isReliedOn(step, gap)))
                .min(Comparator.comparingDouble(MeasuredGap::gap)
                        .thenComparing(MeasuredGap::eluent)
                        .thenComparing(MeasuredGap::ahead)
                        .thenComparing(MeasuredGap::behind));
    }

    private static boolean isReliedOn(Step step, MeasuredGap gap) {
        boolean aheadLeaves = step.leaving().contains(gap.ahead());
        boolean sameFraction = step.fractions().stream()
                .anyMatch(fraction -> fraction.contains(gap.ahead()) && fraction.contains(gap.behind()));
        boolean behindIsOn =
                step.leaving().contains(gap.behind()) || step.staying().contains(gap.behind());
        return aheadLeaves && behindIsOn && !sameFraction;
    }

    private void size(MeasuredGap gap) {
        OptionalDouble load = judgement.judged().load().milligrams();
        String at = "at the narrowest gap the plan relies on, " + Numbers.fixed(gap.gap(), 2) + " (" + names(gap) + ")";
        if (gap.gap() < sizes.narrowGap()) {
            add(
                    "size",
                    "No table gives a load " + at
                            + "; load very little, and look for an eluent that parts them better.",
                    gap,
                    Section.PACKING);
            return;
        }
        capacity(gap, at);
        if (load.isPresent() && column.boreMillimetres().isEmpty()) {
            OptionalDouble bore = sizes.boreMillimetresFor(load.getAsDouble(), gap.gap());
            String text = "For " + Numbers.plain(load.getAsDouble(), 1) + " mg " + at + ", take a bore of "
                    + (bore.isPresent()
                            ? "about " + Numbers.plain(bore.getAsDouble(), 0) + " mm and a bed of "
                                    + Numbers.plain(sizes.bedMillimetres(), 0) + " mm."
                            : "more than the table's widest, " + Numbers.plain(sizes.widestMillimetres(), 0)
                                    + " mm, or share the load between several runs.");
            add("size", text, gap, Section.PACKING);
        }
    }

    private void capacity(MeasuredGap gap, String at) {
        if (column.boreMillimetres().isEmpty() || column.bedMillimetres().isEmpty()) {
            return;
        }
        double bore = column.boreMillimetres().getAsDouble();
        OptionalDouble capacity =
                sizes.capacityMilligrams(bore, column.bedMillimetres().getAsDouble(), gap.gap());
        if (capacity.isEmpty()) {
            add(
                    "size",
                    "A bore of " + Numbers.plain(bore, 1) + " mm lies outside the table of column sizes ("
                            + Numbers.plain(sizes.narrowestMillimetres(), 0) + " to "
                            + Numbers.plain(sizes.widestMillimetres(), 0)
                            + " mm), so no load is given; go by the ratio of "
                            + ratioWords() + ".",
                    gap,
                    Section.PACKING);
            return;
        }
        OptionalDouble load = judgement.judged().load().milligrams();
        String takes = "about " + Numbers.poured(capacity.getAsDouble()) + " mg of mixture " + at;
        if (load.isEmpty()) {
            add("size", "This bed takes " + takes + ".", gap, Section.PACKING);
        } else if (load.getAsDouble() <= capacity.getAsDouble()) {
            add(
                    "size",
                    "This bed takes " + takes + "; your load of " + Numbers.plain(load.getAsDouble(), 1)
                            + " mg is within that" + ratio(load.getAsDouble()) + ".",
                    gap,
                    Section.PACKING);
        } else {
            OptionalDouble wider = sizes.boreMillimetresFor(load.getAsDouble(), gap.gap());
            add(
                    "overload",
                    "Your load of " + Numbers.plain(load.getAsDouble(), 1) + " mg is too much: this bed takes " + takes
                            + ". Share it between "
                            + Numbers.plain(Math.ceil(load.getAsDouble() / capacity.getAsDouble()), 0) + " runs"
                            + (wider.isPresent()
                                    ? ", or take a bore of about " + Numbers.plain(wider.getAsDouble(), 0)
                                            + " mm and a bed of " + Numbers.plain(sizes.bedMillimetres(), 0) + " mm."
                                    : "."),
                    gap,
                    Section.DOUBTS);
        }
    }

    private String ratio(double loadMilligrams) {
        return ", " + Numbers.poured(Bed.adsorbentRatio(column.bedGrams().orElseThrow(), loadMilligrams)) + " g of "
                + column.phaseName() + " for each gram (" + ratioWords() + ")";
    }

    private String ratioWords() {
        return "usual " + Numbers.plain(sizes.ratio().usual(), 0) + ":1, easy pairs "
                + Numbers.plain(sizes.ratio().easy(), 0) + ":1, hard ones "
                + Numbers.plain(sizes.ratio().hard(), 0)
                + ":1";
    }

    private void add(String label, String text, MeasuredGap gap, Section section) {
        List<Reason> grounds = new ArrayList<>(List.of(gap.reason(), sizes.reason()));
        judgement
                .judged()
                .load()
                .milligrams()
                .ifPresent(load -> grounds.add(new Reason.Stated(
                        "the load is " + Numbers.plain(load, 1) + " mg",
                        judgement.judged().load().place())));
        lines.add(new PlanLine(
                label,
                section,
                text,
                new Reason.Calculated(
                        text,
                        "load of the table at this gap, between its rows as the square of the bore, and as the height of the"
                                + " bed; ratio of adsorbent: " + sizes.ratio().source(),
                        sizes.source(),
                        grounds)));
    }

    /** How much of the bed the load soaks into, by the dye that moves most in what it is loaded in. */
    private void plug() {
        OptionalDouble load = judgement.judged().load().millilitres();
        OptionalDouble columnVolume = column.columnVolumeMillilitres();
        Eluent packing = route.packing().packing();
        Optional<Measured> fastest = judgement.judged().dyes().stream()
                .flatMap(dye -> judgement.measured(dye, packing).stream())
                .max(Comparator.comparingDouble(Measured::value));
        if (load.isEmpty()
                || columnVolume.isEmpty()
                || fastest.isEmpty()
                || fastest.get().value() == 0) {
            return;
        }
        Limit most = judgement.limits().get("widest load");
        double k = fastest.get().retardationFactor().retentionFactor();
        double percent = 100
                * LoadPlug.of(load.getAsDouble(), columnVolume.getAsDouble(), k).shareOfBed();
        boolean wide = percent > most.value();
        String text = "A load of " + Numbers.plain(load.getAsDouble(), 1) + " mL in " + packing + " fills about "
                + Numbers.poured(percent) + " % of the bed"
                + (wide ? ": too much for narrow bands. Concentrate it, or load it dry." : ".");
        lines.add(new PlanLine(
                "load-volume",
                wide ? Section.DOUBTS : Section.PACKING,
                text,
                new Reason.Calculated(
                        text,
                        "share of the bed = V_load / (V0 (1 + k)), k " + Numbers.fixed(k, 1) + " of "
                                + fastest.get().dye(),
                        "standard plate theory",
                        List.of(
                                fastest.get().reason(),
                                most.reason(),
                                new Reason.Stated(
                                        "the load is " + Numbers.plain(load.getAsDouble(), 1) + " mL",
                                        judgement.judged().load().place())))));
    }

    private void fractions() {
        OptionalDouble fraction = column.boreMillimetres().isEmpty()
                ? OptionalDouble.empty()
                : sizes.fractionMillilitres(column.boreMillimetres().getAsDouble());
        fraction.ifPresent(millilitres -> {
            String text = "Where two bands leave close together, collect in portions of about "
                    + Numbers.poured(millilitres) + " mL and join what a strip shows to be alike.";
            lines.add(new PlanLine(
                    "fractions",
                    Section.PACKING,
                    text,
                    new Reason.Calculated(
                            text, "fraction of the table at this bore", sizes.source(), List.of(sizes.reason()))));
        });
    }

    private void flow() {
        List<Eluent> poured =
                route.steps().stream().map(Step::eluent).distinct().toList();
        Optional<Eluent> slowest = poured.stream()
                .filter(eluent -> flow.millilitresPerMinute(eluent).isPresent())
                .min(Comparator.comparingDouble(
                        eluent -> flow.millilitresPerMinute(eluent).orElseThrow()));
        boolean allKnown = poured.stream()
                .allMatch(eluent -> flow.minutesPerColumnVolume(eluent).isPresent());
        if (slowest.isEmpty() || !allKnown) {
            return;
        }
        Eluent first = poured.get(0);
        String text = "Expect about " + perMinute(first) + " of " + first
                + (slowest.get().equals(first) ? "" : ", and " + perMinute(slowest.get()) + " of " + slowest.get())
                + measuredOrGravity();
        lines.add(new PlanLine("flow", Section.PACKING, text, flow.reason(slowest.get(), text)));
        time();
        pressure();
    }

    private String perMinute(Eluent eluent) {
        return Numbers.poured(flow.millilitresPerMinute(eluent).orElseThrow()) + " mL a minute";
    }

    private String measuredOrGravity() {
        return column.setup().flowMillilitresPerMinute().isPresent()
                ? ", as you measured."
                : " by gravity (estimated).";
    }

    private void time() {
        double minutes = 0;
        List<String> terms = new ArrayList<>();
        for (int i = 0; i < route.steps().size(); i++) {
            Eluent eluent = route.steps().get(i).eluent();
            double step = route.elution().poured().get(i)
                    * flow.minutesPerColumnVolume(eluent).orElseThrow();
            minutes += step;
            terms.add(eluent + " " + Numbers.plain(step, 0));
        }
        String text =
                "The steps take about " + Numbers.poured(minutes) + " minutes in all; packing and loading come on top.";
        lines.add(new PlanLine(
                "time",
                Section.PACKING,
                text,
                new Reason.Calculated(
                        text,
                        "time = volume / flow, in minutes: " + String.join(" + ", terms),
                        "by definition",
                        route.steps().stream()
                                .map(Step::eluent)
                                .distinct()
                                .map(eluent -> flow.reason(eluent, "flow of " + eluent + ": " + perMinute(eluent)))
                                .toList())));
    }

    private void pressure() {
        if (column.setup().drive().filter(Drive.PRESSURE::equals).isPresent()) {
            String text =
                    "Glass that was not made for pressure must not be pressurised; a few kilopascal from a hand pump are"
                            + " enough, behind a shield, and never with a chipped or scratched tube.";
            lines.add(new PlanLine(
                    "pressure",
                    Section.SAFETY,
                    text,
                    new Reason.Stated(
                            "the column is run by pressure", column.setup().place())));
        }
    }

    /** Steps at which the flow falls markedly. */
    private void slowing() {
        Limit most = judgement.limits().get("change of flow to mention");
        for (int i = 1; i < route.steps().size(); i++) {
            Eluent before = route.steps().get(i - 1).eluent();
            Eluent after = route.steps().get(i).eluent();
            OptionalDouble slower = flow.timesSlower(before, after);
            if (slower.isPresent() && slower.getAsDouble() >= most.value()) {
                String text = "From " + before + " to " + after + " the flow falls to about 1/"
                        + Numbers.plain(slower.getAsDouble(), 1)
                        + ": do not push it, and do not take it for a blocked bed.";
                lines.add(new PlanLine(
                        "slower-" + (i + 1),
                        Section.STEPS,
                        text,
                        new Reason.Calculated(
                                text,
                                "ratio of the viscosities of the thickest parts",
                                "Darcy's law",
                                List.of(most.reason(), flow.viscosity(before), flow.viscosity(after)))));
            }
        }
    }

    private static String names(MeasuredGap gap) {
        Dye ahead = gap.ahead();
        return ahead + " and " + gap.behind() + " in " + gap.eluent();
    }
}
