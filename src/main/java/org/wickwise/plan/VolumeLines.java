package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.column.Band;
import org.wickwise.column.Column;
import org.wickwise.column.Setup;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Ranges.Range;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** When each dye is to be expected, how much to have ready, and how well the bands part. */
final class VolumeLines {

    private static final String GRADIENT_THEORY = "fundamental equation of gradient elution, Drake 1955, Freiling 1955;"
            + " Jandera and Churacek, Gradient Elution in Column Liquid Chromatography, 1985, from memory";

    private static final String COVERED =
            "The range covers the width of the band, the uncertainty of its Rf and how far columns stray from strips.";
    private static final String EACH_COVERED =
            "Each range covers the width of the band, the uncertainty of its Rf and how far columns stray from strips; they"
                    + " stray for all dyes alike, so two ranges may meet where the bands do not.";

    private final Judgement judgement;
    private final Route route;
    private final Column column;
    private final Elution elution;
    private final Ranges ranges;
    private final Misgivings misgivings;
    private final StepReasons stepReasons;
    private final Set<String> told = new HashSet<>();

    VolumeLines(Judgement judgement, Route route, Misgivings misgivings, StepReasons stepReasons) {
        this.judgement = judgement;
        this.route = route;
        this.column = judgement.judged().column();
        this.elution = route.elution();
        this.ranges = Ranges.of(route, judgement);
        this.misgivings = misgivings;
        this.stepReasons = stepReasons;
    }

    /** When each dye of a step is to be expected, counted from the first drop of the step's own eluent. */
    PlanLine volume(Step step, int index) {
        String number = Integer.toString(index + 1);
        List<Dye> reckoned =
                step.leaving().stream().filter(elution.bands()::containsKey).toList();
        if (reckoned.isEmpty()) {
            String text = "How much it takes was not measured; have about "
                    + column.readyInWords(elution.poured().get(index)) + " ready and go by the colour.";
            Reason usual = judgement.limits().get(ChoicesOfCase.UNMEASURED_STEP).reason();
            return new PlanLine(
                    "volume-" + number,
                    Section.STEPS,
                    text,
                    new Reason.Chosen(text, List.of(), List.of(usual, stepReasons.of(step))));
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
        return new PlanLine(
                "volume-" + number,
                Section.STEPS,
                text,
                new Reason.Calculated(text, formula, GRADIENT_THEORY, grounds));
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

    /** A sentence behind a blank; nothing where a step above says it. */
    private String told(String sentence) {
        return told.add(sentence) ? " " + sentence : "";
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
    Optional<PlanLine> apart() {
        List<Dye> inOrder = elution.bands().keySet().stream()
                .sorted(Comparator.comparingDouble(
                        dye -> elution.bands().get(dye).middleMillilitres()))
                .toList();
        if (inOrder.size() < 2) {
            return Optional.empty();
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
                + " on two bands are parted to the base line, below it they overlap. Estimated from "
                + (route.poured().stream().anyMatch(judgement::isRemembered) ? "earlier strips" : "the strips")
                + ", not seen on a column.";
        String text = ((pairs.isEmpty() ? "" : reckoned) + misgivings.why("resolution", inOrder)).strip();
        return Optional.of(new PlanLine(
                "apart",
                Section.STEPS,
                text,
                new Reason.Calculated(text, "Rs = (V2 - V1) / (2 (sigma1 + sigma2))", GRADIENT_THEORY, grounds)));
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

    private static String names(List<Dye> dyes) {
        return Words.joined(dyes.stream().map(Dye::name).toList());
    }
}
