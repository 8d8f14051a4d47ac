package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Bed;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.Loading.Plug;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Apart.MeasuredGap;
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
    private final Loading loading;
    private final List<PlanLine> lines = new ArrayList<>();

    ColumnLines(Judgement judgement, Route route, ColumnSizes sizes) {
        this.judgement = judgement;
        this.route = route;
        this.sizes = sizes;
        this.column = judgement.judged().column();
        this.load = judgement.judged().load().milligrams();
        this.loading = new Loading(judgement);
    }

    List<PlanLine> lines() {
        narrowestGap().ifPresent(this::size);
        loading.plug(route.packing().packing()).ifPresent(this::plug);
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
        Portions.of(route, judgement, sizes).ifPresent(portions -> {
            String ofBand = portions.narrowest()
                    .map(dye -> ", small enough for the narrowest band (" + dye + "),")
                    .orElse("");
            String ofTable = portions.narrowest().isPresent()
                            && portions.ofTable().isPresent()
                    ? " The table's " + Numbers.poured(portions.ofTable().getAsDouble()) + " mL suit wider bands."
                    : "";
            String text = "Where two bands leave close together, collect in portions of about " + portions.shown()
                    + ofBand + " and join what a strip shows to be alike." + ofTable;
            lines.add(new PlanLine(
                    "fractions",
                    Section.PACKING,
                    text,
                    new Reason.Calculated(text, portions.formula(), sizes.source(), portions.grounds())));
        });
    }

    /** How much of the bed the load fills. */
    private void plug(Plug plug) {
        Eluent packing = route.packing().packing();
        double highest = Loading.highest(plug.leastHeld());
        Limit most = judgement.limits().get("widest load");
        String load = Numbers.plain(plug.millilitres(), 2) + " mL";
        String fills = load + " of " + packing
                + " with the mixture in it: once the bed holds the dyes, they fill at most about "
                + Numbers.poured(100 * Math.min(1, plug.shareOfBed())) + " % of the bed ("
                + plug.leastHeld().dye() + " is held least)";
        boolean wide = loading.isWide(plug);
        String text = wide
                ? fills
                        + ", which widens the bands, and the figures of this plan count that: take the mixture up in less,"
                        + " or load it dry on a little " + column.phaseName() + "."
                : fills + "; that is narrow enough.";
        List<Reason> grounds = new ArrayList<>(List.of(
                new Reason.Stated(
                        "the load is " + load, judgement.judged().load().place()),
                plug.leastHeld().reason(),
                most.reason()));
        column.sizeStated().ifPresent(grounds::add);
        lines.add(new PlanLine(
                "load-volume",
                wide ? Section.DOUBTS : Section.PACKING,
                text,
                new Reason.Calculated(
                        text,
                        "load / (column volume (1 + k)) = load x Rf / column volume, with the high end of Rf, "
                                + Numbers.fixed(highest, 3) + ": " + Numbers.plain(plug.millilitres(), 2) + " x "
                                + Numbers.fixed(highest, 3) + " / "
                                + Numbers.fixed(column.columnVolumeMillilitres().orElseThrow(), 1)
                                + "; an even plug adds load^2/12 to the variance of a band, times (k/k of the load)^2",
                        "standard plate theory; Sternberg, Adv. Chromatogr. 1966, 2, 205, from memory",
                        grounds)));
    }

    private static String names(MeasuredGap gap) {
        Dye ahead = gap.ahead();
        return ahead + " and " + gap.behind() + " in " + gap.eluent();
    }
}
