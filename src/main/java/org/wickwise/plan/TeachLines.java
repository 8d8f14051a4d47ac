package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.DyeOutcome.Bound;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.notebook.RunMishap;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.notebook.RunTeaches;
import org.wickwise.notebook.RunTeaches.Plates;
import org.wickwise.notebook.RunTeaches.Transfer;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.RunGrounds;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What a finished column teaches the next one: k of each dye, the plates of the bed, and the way from strip to column. */
final class TeachLines {

    private static final double COVERAGE = 2;

    private final RunOutcome outcome;
    private final RunGrounds grounds;
    private final List<PlanLine> lines = new ArrayList<>();

    TeachLines(RunOutcome outcome, RunGrounds grounds) {
        this.outcome = outcome;
        this.grounds = grounds;
    }

    List<PlanLine> lines() {
        RunTeaches teaches = RunTeaches.of(outcome);
        if (teaches.isDoubtful()) {
            List<String> wrong = new ArrayList<>(
                    outcome.run().wentWrong().stream().map(RunMishap::word).toList());
            outcome.collectedTooMuch().ifPresent(much -> wrong.add("more was collected than can have come"));
            String text = "Something went wrong with this run (" + String.join(", ", wrong)
                    + "), so take what it teaches with doubt.";
            add(
                    "doubt",
                    Section.TEACHES,
                    text,
                    new Reason.Observed(text, outcome.run().place()));
        }
        teaches.retentions().forEach(taught -> {
            DyeOutcome dye = outcome.of(taught.dye());
            Held held = dye.held().orElseThrow();
            String bound =
                    switch (taught.bound()) {
                        case ABOUT -> "";
                        case AT_LEAST -> "at least about ";
                        case AT_MOST -> "at most about ";
                    };
            String text = "k of " + taught.dye() + " in " + taught.eluent() + " on a column of " + teaches.phase()
                    + ": "
                    + bound + shown(taught.retentionFactor(), taught.uncertainty()) + "; " + besideTheStrip(held);
            add(
                    label("k", dye),
                    Section.TEACHES,
                    text,
                    held.logTransfer().isPresent() || held.timesTheBound().isPresent()
                            ? grounds.transferred(dye)
                            : grounds.held(dye));
        });
        teaches.plates().ifPresent(this::plates);
        teaches.transfer().ifPresent(this::transfer);
        return lines;
    }

    /** "2.6 ± 0.7", or between what, where the interval would reach 0. */
    private static String shown(double retention, double uncertainty) {
        return COVERAGE * uncertainty < retention
                ? RunGrounds.shown(retention, uncertainty)
                : Numbers.plain(retention, 1) + ", not known well (0 to "
                        + Numbers.plain(retention + COVERAGE * uncertainty, 1) + ")";
    }

    /** What its strip says there, and whether the column held it more or less than that. */
    private static String besideTheStrip(Held held) {
        if (held.strip().isEmpty()) {
            return "no strip tells k there.";
        }
        String onStrip = "on the strip "
                + held.strip().get().retentionShown().replaceFirst("^k ", "").replaceFirst("^not", "it is not");
        if (held.bound() != Bound.ABOUT) {
            return onStrip + ".";
        }
        if (held.timesTheBound().isPresent()) {
            return onStrip + ", so " + compared(held.timesTheBound().getAsDouble(), "at least ");
        }
        boolean differs = held.logTransfer().isPresent()
                && Math.abs(held.logTransfer().getAsDouble()) > COVERAGE * held.logTransferUncertainty();
        return differs
                ? onStrip + ", so " + compared(Math.pow(10, held.logTransfer().getAsDouble()), "about ")
                : onStrip + ".";
    }

    private static String compared(double times, String bound) {
        return "the column held it " + bound + Numbers.plain(Math.max(times, 1 / times), 1) + " times "
                + (times < 1 ? "less: it came faster" : "more: it came slower")
                + " than on the strip. Why that may be stands above.";
    }

    private void plates(Plates plates) {
        double half = COVERAGE * plates.uncertainty();
        boolean isTooUncertain = half >= plates.number() / 2;
        String text = "The bed reached about " + Numbers.poured(plates.number()) + " plates (give or take "
                + Numbers.poured(half) + ", from " + (plates.bands() == 1 ? "one band" : plates.bands() + " bands")
                + "), the width of the load counted in; "
                + Numbers.plain(outcome.tolerances().plates(), 0) + " were taken."
                + (isTooUncertain
                        ? " That is too uncertain to go by."
                        : " For the next one write `plates: " + Numbers.poured(plates.number()) + "` under `column`.");
        add(
                "plates",
                Section.TEACHES,
                text,
                new Reason.Calculated(
                        text,
                        "N = (V0 (1 + k)/sigma)^2 times the share of the way; geometric mean, weighted by 1/u^2",
                        "IUPAC; Ettre, Pure Appl. Chem. 1993, 65, 819; Birge, Phys. Rev. 1932, 40, 207",
                        outcome.inOrder().stream()
                                .filter(dye -> dye.held()
                                        .flatMap(held ->
                                                held.plates().isPresent() ? Optional.of(held) : Optional.empty())
                                        .isPresent())
                                .sorted(Comparator.comparing(DyeOutcome::dye))
                                .map(grounds::held)
                                .toList()));
    }

    private void transfer(Transfer transfer) {
        String text =
                "From strip to column k changed by " + times(transfer.seen(), transfer.seenUncertainty()) + ", by "
                        + transfer.dye() + " in " + transfer.eluent()
                        + ", the first to leave; with what is usual, reckon the next column with "
                        + times(transfer.together(), transfer.togetherUncertainty()) + ".";
        add("transfer", Section.TEACHES, text, grounds.transfer(transfer));
    }

    /** "a factor of 0.9 (0.6 to 1.3)". */
    private static String times(double log, double uncertainty) {
        return "a factor of " + Numbers.plain(Math.pow(10, log), 2) + " ("
                + Numbers.plain(Math.pow(10, log - COVERAGE * uncertainty), 2) + " to "
                + Numbers.plain(Math.pow(10, log + COVERAGE * uncertainty), 2) + ")";
    }

    private void add(String label, Section section, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    private static String label(String kind, DyeOutcome dye) {
        return kind + "-" + Words.slug(dye.dye().name());
    }
}
