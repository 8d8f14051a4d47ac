package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wickwise.column.Band;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.Setup;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Ranges.Range;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Conclusion.PackingKind;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What to pack, load and pour, step by step. */
final class RouteLines {

    private static final String GRADIENT_THEORY = "fundamental equation of gradient elution, Drake 1955, Freiling 1955;"
            + " Jandera and Churacek, Gradient Elution in Column Liquid Chromatography, 1985, from memory";

    private static final String COVERED =
            "The range covers the width of the band, the uncertainty of its Rf and how far columns stray from strips.";
    private static final String EACH_COVERED =
            "Each range covers the width of the band, the uncertainty of its Rf and how far columns stray from strips; they"
                    + " stray for all dyes alike, so two ranges may meet where the bands do not.";

    private final Judgement judgement;
    private final Route route;
    private final KeepLines keepLines;
    private final List<Dye> overlapping;
    private final MayPack packing;
    private final Column column;
    private final Elution elution;
    private final Ranges ranges;
    private final Misgivings misgivings;
    private final List<PlanLine> lines = new ArrayList<>();

    RouteLines(Judgement judgement, Route route, Keeping keeping, ColumnSizes sizes) {
        this.judgement = judgement;
        this.route = route;
        this.keepLines = new KeepLines(judgement, route, keeping, sizes);
        this.overlapping = keeping.overlapping(judgement);
        this.packing = route.packing();
        this.column = judgement.judged().column();
        this.elution = route.elution();
        this.ranges = Ranges.of(route, judgement);
        this.misgivings = new Misgivings(judgement, route);
    }

    List<PlanLine> lines() {
        verdict();
        pack();
        for (int i = 0; i < route.steps().size(); i++) {
            step(i);
        }
        apart();
        lines.addAll(keepLines.overlap());
        return lines;
    }

    private void verdict() {
        int alone = (int) route.steps().stream()
                .flatMap(step -> step.fractions().stream())
                .filter(fraction -> fraction.size() == 1 && !overlapping.contains(fraction.get(0)))
                .count();
        int all = judgement.judged().dyes().size();
        String share = alone == all
                ? "each of the " + all + " dyes comes off alone"
                : alone + " of " + all + " dyes " + (alone == 1 ? "comes" : "come") + " off alone";
        String text = "Pack with " + packing.packing() + ", then pour " + route.names() + ": " + share + "."
                + misgivings.inShort();
        List<Reason> grounds = new ArrayList<>(List.of(judgement.reason(packing)));
        route.steps().forEach(step -> grounds.add(reasonOf(step)));
        grounds.addAll(misgivings.grounds());
        lines.add(new PlanLine("plan", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private void pack() {
        Eluent with = packing.packing();
        String how = packing.kind() == PackingKind.HOLDS_ALL
                ? "every dye stays in it" + (judgement.tried(with) ? "" : " (estimated, not seen on a strip)")
                : packing.kind() == PackingKind.WEAKEST_PART
                        ? "the weak part of the first eluent (estimated, not tried on a strip)"
                        : "the first eluent itself, since nothing tried holds every dye and may come before it";
        add(
                "pack",
                Section.PACKING,
                "Pack the " + column.phaseName() + " column in " + with + ": " + how + ". "
                        + column.phase().conditioning(),
                reasonOfPacking());
        String load = packing.kind() == PackingKind.HOLDS_ALL
                ? "Load the mixture in the least " + with
                        + " that takes it up, let it sink in as a narrow band, and rinse the wall with the same; it may wait there."
                : "Load the mixture in the least " + with
                        + " that takes it up, as narrow a band as you can; the dyes may begin to move at once, so have the first flask ready.";
        add("load", Section.PACKING, load, reasonOfPacking());
        bed();
    }

    /** The rule that lets it pack, and what each dye does in it, or in the first eluent where nobody saw it. */
    private Reason reasonOfPacking() {
        Eluent seen = judgement.judged().dyes().stream()
                        .anyMatch(dye ->
                                judgement.behaviour(dye, packing.packing()).isPresent())
                ? packing.packing()
                : packing.first();
        Reason.Concluded rule = judgement.reason(packing);
        List<Reason> grounds = new ArrayList<>(List.of(rule));
        judgement.judged().dyes().stream()
                .flatMap(dye -> judgement.behaviour(dye, seen).stream())
                .map(judgement::reason)
                .forEach(grounds::add);
        return new Reason.Chosen("the column is packed with " + packing.packing(), List.of(), grounds);
    }

    private void bed() {
        if (column.bedMillilitres().isEmpty()) {
            return;
        }
        double bore = column.boreMillimetres().orElseThrow();
        double bed = column.bedMillimetres().orElseThrow();
        String text = "The bed of " + Numbers.plain(bore, 1) + " mm by " + Numbers.plain(bed, 1) + " mm takes about "
                + Numbers.poured(column.bedGrams().orElseThrow()) + " g of dry " + column.phaseName()
                + "; one column volume, the liquid in it, is about "
                + Numbers.poured(column.columnVolumeMillilitres().orElseThrow()) + " mL.";
        add(
                "bed",
                Section.PACKING,
                text,
                new Reason.Calculated(
                        text,
                        "bed volume = pi d^2 L / 4 = "
                                + Numbers.fixed(column.bedMillilitres().orElseThrow(), 1)
                                + " mL; mass = " + Numbers.plain(column.phase().packedDensityGramsPerMillilitre(), 3)
                                + " g/mL x bed volume; column volume = "
                                + Numbers.plain(column.phase().totalPorosity(), 3) + " x bed volume",
                        column.phase().figuresFrom(),
                        List.of(column.reason())));
    }

    private void step(int index) {
        Step step = route.steps().get(index);
        String number = Integer.toString(index + 1);
        boolean last = index == route.steps().size() - 1;
        String verb = last && index > 0 ? "Sweep with " : "Pour ";
        String estimate = restsOnEstimate(step) ? " (estimated, not tried on a strip)" : "";
        add(
                "step-" + number,
                Section.STEPS,
                verb + step.eluent() + estimate + ": " + leaving(step) + staying(step) + ".",
                reasonOf(step));
        volume(step, index);
        collect(step, number);
        lines.addAll(keepLines.lines(index));
        if (last) {
            String end = "Stop when the drops run colourless and no colour is left on the bed.";
            add("switch-" + number, Section.STEPS, end, reasonOf(step));
        } else {
            Eluent next = route.steps().get(index + 1).eluent();
            String change = "Change to " + next + " when the drops run colourless and only " + names(step.staying())
                    + " can be seen on the bed.";
            add("switch-" + number, Section.STEPS, change, reasonOf(step));
        }
    }

    private static String leaving(Step step) {
        List<String> fractions = step.fractions().stream()
                .map(fraction -> names(fraction) + (fraction.size() > 1 ? " (together)" : ""))
                .toList();
        if (fractions.size() == 1) {
            return fractions.get(0) + (step.fractions().get(0).size() > 1 ? " leave" : " leaves");
        }
        return String.join(", then ", fractions) + " leave in that order";
    }

    private static String staying(Step step) {
        return step.staying().isEmpty()
                ? "; nothing is left"
                : "; " + names(step.staying()) + (step.staying().size() == 1 ? " stays" : " stay") + " on the column";
    }

    /** When each dye of a step is to be expected, counted from the first drop of the step's own eluent. */
    private void volume(Step step, int index) {
        String number = Integer.toString(index + 1);
        List<Dye> reckoned =
                step.leaving().stream().filter(elution.bands()::containsKey).toList();
        if (reckoned.isEmpty()) {
            String text = "How much it takes was not measured; have about "
                    + column.readyInWords(elution.poured().get(index)) + " ready and go by the colour.";
            Reason usual = judgement.limits().get(ChoicesOfCase.UNMEASURED_STEP).reason();
            add(
                    "volume-" + number,
                    Section.STEPS,
                    text,
                    new Reason.Chosen(text, List.of(), List.of(usual, reasonOf(step))));
            return;
        }
        double before = elution.pouredBefore(index);
        String each = reckoned.stream()
                .map(dye -> dye + " at about " + within(ranges.byDye().get(dye), before))
                .collect(Collectors.joining("; "));
        String text = "Counted from here: " + each + "." + covered(reckoned) + " Expect to pour "
                + column.inWords(elution.poured().get(index)) + ", and have about "
                + column.readyInWords(ranges.ready().get(index)) + " ready"
                + (ranges.mayFallShort().get(index) || !misgivings.areEndsSure(reckoned)
                        ? "; even that may not be enough."
                        : ".");
        List<Reason> grounds = new ArrayList<>();
        List<String> terms = new ArrayList<>();
        for (Dye dye : reckoned) {
            Band band = elution.bands().get(dye);
            terms.add(dye + ": middle " + Numbers.fixed(band.middleMillilitres(), 2) + ", sigma "
                    + Numbers.fixed(band.sigmaMillilitres(), 2) + " column volumes from the first drop of step 1");
            grounds.addAll(route.groundsOfBand(dye, judgement));
        }
        grounds.add(plates(judgement));
        grounds.add(
                judgement.limits().get("scatter of the transfer to a column").reason());
        if (ranges.mayFallShort().get(index)) {
            grounds.add(judgement.limits().get("most eluent to keep ready").reason());
        }
        String formula =
                "k = 1/Rf - 1; each eluent moves a dye dV/(V0 k) of the bed; V_R = V0 + volume used; from and to are"
                        + " the ends of the band, two standard deviations from its middle, moved outwards by the root of the"
                        + " summed squares of what each Rf at the end of its interval, and every k at 2 x the scatter of the"
                        + " transfer, does to them: " + String.join("; ", terms);
        add("volume-" + number, Section.STEPS, text, new Reason.Calculated(text, formula, GRADIENT_THEORY, grounds));
    }

    /** What the ranges of these dyes cover, told once for all steps, and for which of them no end can be told. */
    private String covered(List<Dye> reckoned) {
        boolean one = reckoned.size() == 1;
        if (misgivings.isGuess()) {
            return told((one ? "The range covers" : "Each range covers")
                    + " the width of the band and the uncertainty of its Rf, but not that strips were run on another"
                    + " stationary phase.");
        }
        List<Dye> tailing =
                reckoned.stream().filter(misgivings.tailing()::contains).toList();
        return told(one ? COVERED : EACH_COVERED)
                + (tailing.isEmpty() ? "" : " No end can be told for " + names(tailing) + ", which streaked.");
    }

    /** A sentence behind a blank; nothing where a line above says it. */
    private String told(String sentence) {
        return lines.stream().anyMatch(line -> line.text().contains(sentence)) ? "" : " " + sentence;
    }

    /** "3 column volumes, within 1.6 to 6 (26 to 98 mL)". */
    private String within(Range range, double before) {
        String middle = Numbers.plain(Math.max(0, range.middle() - before), 1);
        double from = Math.max(0, range.from() - before);
        return range.hasEnd()
                ? middle + ", within " + column.betweenInWords(from, range.to() - before)
                : column.inWords(range.middle() - before) + ", not before " + Numbers.plain(from, 1)
                        + "; until when nobody can say, since by the strips it may not move at all";
    }

    /** How well the bands part, where all of them were measured. */
    private void apart() {
        List<Dye> inOrder = elution.bands().keySet().stream()
                .sorted(Comparator.comparingDouble(
                        dye -> elution.bands().get(dye).middleMillilitres()))
                .toList();
        if (inOrder.size() < 2) {
            return;
        }
        List<Dye> unknown = misgivings.isGuess() ? inOrder : misgivings.tailing();
        List<String> pairs = new ArrayList<>();
        List<Reason> grounds = new ArrayList<>();
        for (int i = 1; i < inOrder.size(); i++) {
            Band earlier = elution.bands().get(inOrder.get(i - 1));
            Band later = elution.bands().get(inOrder.get(i));
            if (!unknown.contains(inOrder.get(i - 1)) && !unknown.contains(inOrder.get(i))) {
                pairs.add(inOrder.get(i - 1) + " and " + inOrder.get(i) + " "
                        + Numbers.fixed(earlier.resolutionTo(later), 1));
            }
        }
        Limit parted = judgement.limits().get("resolution of parted bands");
        grounds.add(parted.reason());
        grounds.add(plates(judgement));
        inOrder.forEach(dye -> grounds.addAll(route.groundsOfBand(dye, judgement)));
        String reckoned = "Reckoned resolution of neighbours, where the bands are most likely: "
                + String.join("; ", pairs)
                + ". From " + Numbers.plain(parted.value(), 2)
                + " on two bands are parted to the base line, below it they overlap. Estimated from the strips, not seen on"
                + " a column.";
        String text = ((pairs.isEmpty() ? "" : reckoned) + misgivings.why("resolution", inOrder)).strip();
        add(
                "apart",
                Section.STEPS,
                text,
                new Reason.Calculated(text, "Rs = (V2 - V1) / (2 (sigma1 + sigma2))", GRADIENT_THEORY, grounds));
    }

    /** Where the number of plates comes from: the writer's own figure, or the limit. */
    static Reason plates(Judgement judgement) {
        Setup setup = judgement.judged().column().setup();
        return setup.plates().isPresent()
                ? new Reason.Stated(
                        "the column has " + Numbers.plain(setup.plates().getAsDouble(), 0) + " plates, measured",
                        setup.place())
                : judgement.limits().get("plates of a hand-packed column").reason();
    }

    private void collect(Step step, String number) {
        String each = step.fractions().stream().map(RouteLines::names).collect(Collectors.joining("; then "));
        String text = "Collect " + each + (step.fractions().size() > 1 ? ", each in its own flask" : "")
                + ", from the first drop that shows it to the last.";
        add("collect-" + number, Section.STEPS, text, reasonOf(step));
        if (step.fractions().size() > 1 || !step.staying().isEmpty()) {
            String between = step.fractions().size() > 1
                    ? "Between two bands change flasks while the colour is thin, and keep that in-between fraction apart."
                    : "Keep the thin-coloured end of the band apart, as an in-between fraction.";
            add("between-" + number, Section.STEPS, between, reasonOf(step));
        }
    }

    private Reason reasonOf(Step step) {
        List<Reason> grounds = new ArrayList<>();
        for (Dye dye : step.leaving()) {
            judgement.behaviour(dye, step.eluent()).ifPresent(behaves -> grounds.add(judgement.reason(behaves)));
        }
        for (Dye dye : step.staying()) {
            judgement.behaviour(dye, step.eluent()).ifPresent(behaves -> grounds.add(judgement.reason(behaves)));
        }
        for (Conclusion.LeavesBefore before : judgement.all(Conclusion.LeavesBefore.class)) {
            boolean here = before.eluent().equals(step.eluent())
                    && step.leaving().contains(before.first())
                    && (step.leaving().contains(before.second())
                            || step.staying().contains(before.second()));
            if (here) {
                grounds.add(judgement.reason(before));
            }
        }
        judgement.all(Conclusion.Between.class).stream()
                .filter(between -> between.eluent().equals(step.eluent())
                        && between.separation() != Conclusion.Separation.PARTED
                        && step.leaving().containsAll(List.of(between.ahead(), between.behind())))
                .map(judgement::reason)
                .forEach(grounds::add);
        judgement.all(Conclusion.DyeCaution.class).stream()
                .filter(caution ->
                        caution.eluent().equals(step.eluent()) && step.leaving().contains(caution.dye()))
                .map(judgement::reason)
                .forEach(grounds::add);
        fitness(step.eluent()).ifPresent(grounds::add);
        judgement.judged().dyes().stream()
                .filter(dye -> !dye.note().isEmpty())
                .filter(dye -> step.leaving().contains(dye) || step.staying().contains(dye))
                .forEach(dye -> grounds.add(dye.stated()));
        String statement = step.eluent() + ": " + leaving(step) + staying(step);
        return new Reason.Chosen(statement, List.of(), grounds);
    }

    private boolean restsOnEstimate(Step step) {
        return step.leaving().stream()
                .flatMap(dye -> judgement.behaviour(dye, step.eluent()).stream())
                .anyMatch(behaves -> behaves.basis() == Conclusion.Basis.ESTIMATED);
    }

    private Optional<Reason> fitness(Eluent eluent) {
        return judgement
                .first(Conclusion.Fitness.class, fitness -> fitness.eluent().equals(eluent))
                .map(judgement::reason);
    }

    private void add(String label, Section section, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    private static String names(List<Dye> dyes) {
        return Words.joined(dyes.stream().map(Dye::name).toList());
    }
}
