package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.wickwise.column.Bed;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.LoadPlug;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Apart.MeasuredGap;
import org.wickwise.strip.Movement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** How large the column must be, how much it takes, and in what portions to collect. */
final class ColumnLines {

    private final Judgement judgement;
    private final Route route;
    private final ColumnSizes sizes;
    private final Column column;
    private final OptionalDouble load;
    private final List<PlanLine> lines = new ArrayList<>();

    ColumnLines(Judgement judgement, Route route, ColumnSizes sizes) {
        this.judgement = judgement;
        this.route = route;
        this.sizes = sizes;
        this.column = judgement.judged().column();
        this.load = judgement.judged().load().milligrams();
    }

    List<PlanLine> lines() {
        narrowestGap().ifPresent(this::size);
        judgement.judged().load().millilitres().ifPresent(this::plug);
        fractions();
        lines.addAll(new FlowLines(judgement, route, new Flow(judgement, sizes)).lines());
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
        String at = "at the narrowest gap the plan relies on, " + Numbers.fixed(gap.gap(), 2) + " (" + names(gap) + ")";
        if (sizes.isTooNarrow(gap.gap())) {
            add(
                    "size",
                    "No table gives a load " + at
                            + "; load very little, and look for an eluent that parts them better.",
                    gap,
                    Section.PACKING);
        } else if (column.boreMillimetres().isPresent()) {
            given(column.boreMillimetres().getAsDouble(), gap, at);
        } else {
            load.ifPresent(milligrams -> wanted(milligrams, gap, at));
        }
    }

    /** Which bore to take for a load. */
    private void wanted(double milligrams, MeasuredGap gap, String at) {
        OptionalDouble bore = sizes.boreMillimetresFor(milligrams, gap.gap());
        String take = bore.isEmpty()
                ? "share the load between several runs: the table's widest column, "
                        + Numbers.plain(sizes.widestMillimetres(), 0) + " mm, does not take it."
                : "take a bore of about " + boreAndBed(bore.getAsDouble()) + ", and have about "
                        + Numbers.poured(
                                sizes.eluentMillilitres(bore.getAsDouble()).orElseThrow())
                        + " mL of eluent." + madeOnOther();
        add("size", "For " + Numbers.plain(milligrams, 1) + " mg " + at + ", " + take, gap, Section.PACKING);
    }

    private String boreAndBed(double bore) {
        return Numbers.plain(Math.ceil(Numbers.steady(bore)), 0) + " mm and a bed of "
                + Numbers.plain(sizes.bedMillimetres(), 0) + " mm";
    }

    /** What a bore takes, and whether that is enough. */
    private void given(double bore, MeasuredGap gap, String at) {
        OptionalDouble capacity = sizes.capacityMilligrams(bore, bedMillimetres(), gap.gap());
        if (capacity.isEmpty()) {
            add(
                    "size",
                    "A bore of " + Numbers.plain(bore, 1) + " mm lies outside the table of column sizes ("
                            + Numbers.plain(sizes.narrowestMillimetres(), 0) + " to "
                            + Numbers.plain(sizes.widestMillimetres(), 0)
                            + " mm), so no load is given; go by the weight of adsorbent for each gram of mixture"
                            + ratio() + ".",
                    gap,
                    Section.PACKING);
            return;
        }
        String takes = (column.bedMillimetres().isPresent()
                        ? "this bed takes about "
                        : "a bed of " + Numbers.plain(sizes.bedMillimetres(), 0) + " mm in this bore takes about ")
                + Numbers.poured(capacity.getAsDouble()) + " mg of mixture " + at;
        if (load.isEmpty()) {
            add("size", Words.capital(takes) + "." + madeOnOther(), gap, Section.PACKING);
        } else if (load.getAsDouble() <= capacity.getAsDouble()) {
            add(
                    "size",
                    Words.capital(takes) + "; your load of " + Numbers.plain(load.getAsDouble(), 1)
                            + " mg is within that" + ratio() + "." + madeOnOther(),
                    gap,
                    Section.PACKING);
        } else {
            add(
                    "overload",
                    "Your load of " + Numbers.plain(load.getAsDouble(), 1) + " mg is too much: " + takes
                            + ". Share it between "
                            + Numbers.plain(Math.ceil(load.getAsDouble() / capacity.getAsDouble()), 0) + " runs"
                            + orLarger(bore, capacity.getAsDouble(), gap) + "." + madeOnOther(),
                    gap,
                    Section.DOUBTS);
        }
    }

    private double bedMillimetres() {
        return column.bedMillimetres().orElse(sizes.bedMillimetres());
    }

    private String orLarger(double bore, double capacity, MeasuredGap gap) {
        OptionalDouble enough = sizes.boreMillimetresFor(load.getAsDouble(), gap.gap());
        if (enough.isEmpty()) {
            return "";
        }
        double higher = Math.ceil(bedMillimetres() * load.getAsDouble() / capacity);
        return enough.getAsDouble() <= bore
                ? ", or pack a bed of " + Numbers.plain(higher, 0) + " mm" + inLongerTube(higher)
                : ", or take a bore of about " + boreAndBed(enough.getAsDouble())
                        + inLongerTube(sizes.bedMillimetres());
    }

    /** A bed does not go into a tube that is no longer than itself. */
    private String inLongerTube(double bed) {
        OptionalDouble tube = column.setup().tubeMillimetres();
        return tube.isPresent() && tube.getAsDouble() <= bed
                ? " in a tube longer than yours of " + Numbers.plain(tube.getAsDouble(), 1) + " mm"
                : "";
    }

    /** Where the table was made on something else, it promises too much. */
    private String madeOnOther() {
        List<String> other = new ArrayList<>();
        if (!column.phaseName().equals(sizes.phaseName())) {
            other.add(sizes.phaseName());
        }
        if (column.setup()
                .particles()
                .filter(grains -> grains.meanMicrometres() > sizes.grains().toMicrometres())
                .isPresent()) {
            other.add("finer grains (" + sizes.grains().shown() + ")");
        }
        return other.isEmpty() ? "" : " The table was made on " + String.join(" of ", other) + "; stay well below it.";
    }

    private String ratio() {
        OptionalDouble grams = column.bedGrams();
        String yours = grams.isPresent() && load.isPresent()
                ? ", " + Numbers.poured(Bed.adsorbentRatio(grams.getAsDouble(), load.getAsDouble())) + " g of "
                        + column.phaseName() + " for each gram"
                : "";
        return yours + " (usual " + Numbers.plain(sizes.ratio().usual(), 0) + ":1, easy pairs "
                + Numbers.plain(sizes.ratio().easy(), 0) + ":1, hard ones "
                + Numbers.plain(sizes.ratio().hard(), 0) + ":1)";
    }

    private void add(String label, String text, MeasuredGap gap, Section section) {
        List<Reason> grounds = new ArrayList<>(List.of(gap.reason(), sizes.reason()));
        load.ifPresent(milligrams -> grounds.add(new Reason.Stated(
                "the load is " + Numbers.plain(milligrams, 1) + " mg",
                judgement.judged().load().place())));
        column.sizeStated().ifPresent(grounds::add);
        lines.add(new PlanLine(
                label,
                section,
                text,
                new Reason.Calculated(
                        text,
                        "the table's load for a gap of "
                                + Numbers.plain(
                                        Numbers.steady(gap.gap()) >= sizes.easyGap()
                                                ? sizes.easyGap()
                                                : sizes.narrowGap(),
                                        2)
                                + " or more, between its rows as the square of the bore, times bed height / "
                                + Numbers.plain(sizes.bedMillimetres(), 0) + " mm; ratio of adsorbent: "
                                + sizes.ratio().source(),
                        sizes.source(),
                        grounds)));
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
                            text,
                            "the table's fraction, between its rows as the square of the bore",
                            sizes.source(),
                            Stream.concat(Stream.of(sizes.reason()), column.sizeStated().stream())
                                    .toList())));
        });
    }

    /** How much of the bed a load in so much of the packing liquid fills. */
    private void plug(double millilitres) {
        Eluent packing = route.packing().packing();
        List<Dye> dyes = judgement.judged().dyes();
        Optional<Movement> leastHeld = dyes.stream()
                .flatMap(dye -> judgement.movement(dye, packing).stream())
                .filter(movement -> movement.retardation().isPresent())
                .max(Comparator.comparingDouble(ColumnLines::highest).thenComparing(Movement::dye));
        boolean allKnown = dyes.stream()
                .allMatch(dye -> judgement.retardation(dye, packing).isPresent());
        OptionalDouble columnVolume = column.columnVolumeMillilitres();
        if (leastHeld.isEmpty() || !allKnown || columnVolume.isEmpty()) {
            return;
        }
        double highest = highest(leastHeld.get());
        double share = LoadPlug.of(millilitres, columnVolume.getAsDouble(), (1 - highest) / highest)
                .shareOfBed();
        Limit most = judgement.limits().get("widest load");
        String fills = Numbers.plain(millilitres, 2) + " mL of " + packing
                + " with the mixture in it: once the bed holds the dyes, they fill at most about "
                + Numbers.poured(100 * Math.min(1, share)) + " % of the bed ("
                + leastHeld.get().dye()
                + " is held least)";
        boolean wide = Numbers.steady(100 * share) > most.value();
        String text = wide
                ? fills + ", which widens the bands: take the mixture up in less, or load it dry on a little "
                        + column.phaseName() + "."
                : fills + "; that is narrow enough.";
        List<Reason> grounds = new ArrayList<>(List.of(
                new Reason.Stated(
                        "the load is " + Numbers.plain(millilitres, 2) + " mL",
                        judgement.judged().load().place()),
                leastHeld.get().reason(),
                most.reason()));
        column.sizeStated().ifPresent(grounds::add);
        lines.add(new PlanLine(
                "load-volume",
                wide ? Section.DOUBTS : Section.PACKING,
                text,
                new Reason.Calculated(
                        text,
                        "load / (column volume (1 + k)) = load x Rf / column volume, with the high end of Rf, "
                                + Numbers.fixed(highest, 3) + ": " + Numbers.plain(millilitres, 2) + " x "
                                + Numbers.fixed(highest, 3) + " / " + Numbers.fixed(columnVolume.getAsDouble(), 1),
                        "standard plate theory, before dispersion",
                        grounds)));
    }

    /** The high end of a dye's Rf: the careful end for what is to be held. */
    private static double highest(Movement movement) {
        return movement.retardation().orElseThrow().highest();
    }

    private static String names(MeasuredGap gap) {
        Dye ahead = gap.ahead();
        return ahead + " and " + gap.behind() + " in " + gap.eluent();
    }
}
