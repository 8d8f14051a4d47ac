package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.DyeOutcome.Predicted;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.RunGrounds;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** When each dye came off a finished column, how wide, and how well apart, beside what was to be expected. */
final class CameLines {

    private static final double COVERAGE = 2;

    private final RunOutcome outcome;
    private final RunGrounds grounds;
    private final List<PlanLine> lines = new ArrayList<>();

    CameLines(RunOutcome outcome, RunGrounds grounds) {
        this.outcome = outcome;
        this.grounds = grounds;
    }

    /** @param order the dyes in the order of leaving, then those that did not leave */
    List<PlanLine> lines(List<DyeOutcome> order) {
        order.forEach(this::came);
        apart();
        plusAndMinus();
        return lines;
    }

    private void came(DyeOutcome dye) {
        String name = Words.capital(dye.dye().name());
        String expected = dye.predicted().map(this::expected).orElseGet(() -> notExpected(dye));
        if (dye.observed().isEmpty()) {
            String text = name + " is in no fraction; " + (expected.isEmpty() ? "" : expected + "; ")
                    + (dye.stuck() ? "it is still seen on the bed." : "nobody saw it on the bed either.");
            Reason nowhere = new Reason.Observed(
                    dye.dye() + " is in no fraction", outcome.run().place());
            add(
                    label("came", dye),
                    Section.CAME,
                    text,
                    dye.predicted().isPresent()
                            ? new Reason.Chosen(text, List.of(), List.of(nowhere, grounds.predicted(dye)))
                            : nowhere);
            return;
        }
        CollectedBand band = dye.observed().get();
        String text = name + " came " + (dye.cameAnywhere() ? anywhere(band) : where(dye, band))
                + (expected.isEmpty() ? "" : "; " + expected) + "." + difference(dye) + width(dye);
        add(label("came", dye), Section.CAME, text, grounds(dye));
    }

    private Reason grounds(DyeOutcome dye) {
        if (dye.lateMillilitres().isPresent()) {
            return grounds.late(dye);
        }
        return dye.predicted().isEmpty()
                ? grounds.observed(dye)
                : new Reason.Chosen(
                        dye.dye() + " came " + RunGrounds.when(dye),
                        List.of(),
                        List.of(grounds.observed(dye), grounds.predicted(dye)));
    }

    private String where(DyeOutcome dye, CollectedBand band) {
        return (band.isCut()
                        ? "with its middle " + RunGrounds.when(dye)
                        : "with its middle at " + shownMillilitres(band.middleMillilitres(), band.middleUncertainty()))
                + " (in fractions from " + Numbers.plain(band.fromMillilitres(), 0) + " to "
                + Numbers.plain(band.toMillilitres(), 0) + " mL, " + (dye.byAbsorbance() ? "by absorbance" : "by eye")
                + ")";
    }

    private String anywhere(CollectedBand band) {
        return (outcome.run().fractions().size() == 1
                        ? "in the one fraction there is"
                        : "in the first fraction and the last")
                + ", so when is not known (somewhere from " + Numbers.plain(band.fromMillilitres(), 0) + " to "
                + Numbers.plain(band.toMillilitres(), 0) + " mL)";
    }

    private String expected(Predicted predicted) {
        double arrived =
                outcome.run().pouredMillilitres() + outcome.columnVolume().orElseThrow();
        if (predicted.isWellKnown(outcome.columnVolume().orElseThrow())) {
            return "it was to come at "
                    + shownMillilitres(predicted.band().middleMillilitres(), predicted.middleUncertainty()) + " in "
                    + predicted.eluent();
        }
        return "it was to come no sooner than about " + Numbers.poured(predicted.earliestMillilitres())
                + " mL in "
                + predicted.eluent() + ", when is not known well"
                + (predicted.earliestMillilitres() > arrived ? ", and not with what was poured" : "");
    }

    private String notExpected(DyeOutcome dye) {
        if (outcome.columnVolume().isEmpty()) {
            return "";
        }
        return dye.wasToStay()
                ? "by the strips it was to stay on the bed in what was poured"
                : "when it was to come is not known, because no strip tells its Rf in every eluent poured";
    }

    /** What each half-width of this section comes of. */
    private void plusAndMinus() {
        List<DyeOutcome> known = outcome.dyes().stream()
                .filter(dye -> dye.observed().isPresent())
                .toList();
        if (known.isEmpty()) {
            return;
        }
        boolean isCompared =
                outcome.dyes().stream().anyMatch(dye -> dye.predicted().isPresent());
        String text = "Each ± holds 95 of 100 cases. Where a dye came, it comes of the size of the fractions and the"
                + " measuring of volumes"
                + (isCompared
                        ? "; where it was to come, of the ruler on the strips, of the way from strip to column (k may change"
                                + " by a factor of "
                                + Numbers.plain(
                                        Math.pow(
                                                10,
                                                COVERAGE * outcome.tolerances().transfer()),
                                        1)
                                + ") and of the liquid in the bed (± "
                                + Numbers.plain(200 * outcome.tolerances().columnVolume(), 0) + " %)."
                        : ".");
        add(
                "plus-and-minus",
                Section.CAME,
                text,
                new Reason.Chosen(
                        text,
                        List.of(),
                        known.stream()
                                .map(dye ->
                                        dye.predicted().isPresent() ? grounds.predicted(dye) : grounds.observed(dye))
                                .toList()));
    }

    /** By how much it came early or late, and whether strips and bed leave as much open. */
    private String difference(DyeOutcome dye) {
        if (dye.lateMillilitres().isEmpty()) {
            return "";
        }
        double late = dye.lateMillilitres().getAsDouble();
        double open = COVERAGE
                * Math.hypot(
                        dye.observed().orElseThrow().middleUncertainty(),
                        dye.predicted().orElseThrow().middleUncertainty());
        if (!dye.predicted().orElseThrow().isWellKnown(outcome.columnVolume().orElseThrow())) {
            return soonerThanPossible(dye);
        }
        if (Math.abs(late) < COVERAGE * dye.observed().orElseThrow().middleUncertainty()) {
            return " That is when it was expected, as nearly as the fractions tell.";
        }
        return " It came " + Numbers.plain(Math.abs(late), 0) + " mL (" + grounds.columnVolumes(Math.abs(late)) + ") "
                + (late < 0 ? "early" : "late")
                + (Math.abs(late) <= open
                        ? ", no more than strips and bed leave open."
                        : ", more than strips and bed leave open.");
    }

    private String soonerThanPossible(DyeOutcome dye) {
        double came = dye.observed().orElseThrow().middleMillilitres()
                + COVERAGE * dye.observed().orElseThrow().middleUncertainty();
        return came < dye.predicted().orElseThrow().earliestMillilitres()
                ? " It came early, more than strips and bed leave open."
                : "";
    }

    private String width(DyeOutcome dye) {
        CollectedBand band = dye.observed().orElseThrow();
        if (dye.cameAnywhere()) {
            return "";
        }
        if (band.sigmaMillilitres().isEmpty() || band.isCut()) {
            return band.sigmaMillilitres().isEmpty() ? " Too few fractions hold it to tell its width." : "";
        }
        String came = " It came "
                + RunGrounds.shown(4 * band.sigmaMillilitres().getAsDouble(), 4 * band.sigmaUncertainty()) + " mL wide";
        return came
                + dye.predicted()
                        .map(predicted -> ", against "
                                + Numbers.plain(predicted.band().baseWidthMillilitres(), 0) + " mL expected.")
                        .orElse(".");
    }

    private void apart() {
        List<DyeOutcome> order = outcome.inOrder();
        for (int i = 1; i < order.size(); i++) {
            DyeOutcome ahead = order.get(i - 1);
            DyeOutcome behind = order.get(i);
            Optional<Band> first = ahead.band();
            Optional<Band> second = behind.band();
            if (first.isPresent() && second.isPresent()) {
                String came = Numbers.plain(first.get().resolutionTo(second.get()), 1);
                String expected = ahead.predicted().isPresent()
                                && behind.predicted().isPresent()
                        ? ", against "
                                + Numbers.plain(
                                        ahead.predicted()
                                                .get()
                                                .band()
                                                .resolutionTo(
                                                        behind.predicted().get().band()),
                                        1)
                                + " expected"
                        : "";
                String text = Words.capital(ahead.dye().name()) + " and " + behind.dye() + " came with a resolution of "
                        + came + expected + ".";
                add(
                        "apart-" + Words.slug(ahead.dye().name()) + "-"
                                + Words.slug(behind.dye().name()),
                        Section.CAME,
                        text,
                        new Reason.Calculated(
                                text,
                                "Rs = (V2 - V1)/(2 (sigma1 + sigma2))",
                                "IUPAC; Ettre, Pure Appl. Chem. 1993, 65, 819",
                                List.of(grounds.observed(ahead), grounds.observed(behind))));
            }
        }
    }

    private void add(String label, Section section, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    private static String shownMillilitres(double value, double uncertainty) {
        return Numbers.plain(value, 0) + " ± " + Numbers.plain(Math.max(1, COVERAGE * uncertainty), 0) + " mL";
    }

    private static String label(String kind, DyeOutcome dye) {
        return kind + "-" + Words.slug(dye.dye().name());
    }
}
