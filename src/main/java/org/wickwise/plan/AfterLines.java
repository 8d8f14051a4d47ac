package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.notebook.ColumnRun.WeighedPool;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.DyeOutcome.Balance;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.notebook.DyeOutcome.Predicted;
import org.wickwise.notebook.PooledFractions;
import org.wickwise.notebook.PooledFractions.Share;
import org.wickwise.notebook.RunMishap;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.notebook.RunTeaches;
import org.wickwise.notebook.RunTeaches.Plates;
import org.wickwise.notebook.RunTeaches.Transfer;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.RunFacts;
import org.wickwise.rulebook.RunGrounds;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Says what came of a finished column beside what was to be expected, what to keep of it, and what it teaches. */
public final class AfterLines {

    private static final double PER_CENT = 100;
    private static final double COVERAGE = 2;
    private static final double NEARLY_ALL = 0.99;

    private final Judgement judgement;
    private final Optional<Route> planned;
    private final RunOutcome outcome;
    private final RunGrounds grounds;
    private final ColumnRun run;
    private final List<PlanLine> lines = new ArrayList<>();

    private AfterLines(Judgement judgement, Optional<Route> planned, ColumnRun run) {
        this.judgement = judgement;
        this.planned = planned;
        this.outcome = RunFacts.outcome(judgement, run);
        this.grounds = new RunGrounds(outcome, judgement.movements());
        this.run = run;
    }

    /**
     * @param judgement of the case with its run
     * @param planned the way planned for the same case; empty where no plan is sound
     */
    public static List<PlanLine> of(Judgement judgement, Optional<Route> planned, ColumnRun run) {
        AfterLines lines = new AfterLines(judgement, planned, run);
        lines.ran();
        List<DyeOutcome> order = lines.inOrder();
        order.forEach(lines::came);
        lines.apart();
        order.forEach(lines::pool);
        order.forEach(lines::balance);
        lines.weighed();
        lines.reasons();
        lines.teaches();
        return List.copyOf(lines.lines);
    }

    /** The dyes in the order of leaving, then those that did not leave. */
    private List<DyeOutcome> inOrder() {
        List<DyeOutcome> order = new ArrayList<>(outcome.inOrder());
        outcome.dyes().stream().filter(dye -> dye.observed().isEmpty()).forEach(order::add);
        return order;
    }

    private void add(String label, Section section, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    private void ran() {
        String poured = run.poured().stream()
                .map(pour -> millilitres(pour.millilitres()) + " of " + pour.eluent())
                .collect(Collectors.joining(", then "));
        String wrong = run.wentWrong().isEmpty()
                ? ""
                : " Went wrong: "
                        + run.wentWrong().stream().map(RunMishap::word).collect(Collectors.joining(", ")) + ".";
        add(
                "run",
                Section.CAME,
                "Poured " + poured + "; collected " + millilitres(run.collectedMillilitres()) + " in "
                        + run.fractions().size() + (run.fractions().size() == 1 ? " fraction." : " fractions.") + wrong,
                new Reason.Chosen(
                        millilitres(run.pouredMillilitres()) + " was poured and "
                                + millilitres(run.collectedMillilitres()) + " collected",
                        List.of(),
                        grounds.poured()));
        planned.ifPresent(this::asPlanned);
        if (outcome.columnVolume().isEmpty()) {
            String text =
                    "How large the bed is was not written down, so nothing can be said of when a dye was to come, nor of"
                            + " k: add `bore mm` and `bed mm` to the column.";
            add("size", Section.CAME, text, new Reason.Stated("the column has no size", run.place()));
        }
    }

    private void asPlanned(Route route) {
        OptionalDouble one = outcome.columnVolume();
        String steps = route.steps().stream()
                .map(step -> (one.isEmpty()
                                ? ""
                                : "about "
                                        + Numbers.poured(one.getAsDouble()
                                                * route.elution()
                                                        .poured()
                                                        .get(route.steps().indexOf(step)))
                                        + " mL of ")
                        + step.eluent())
                .collect(Collectors.joining(", then "));
        boolean same = route.steps().stream()
                .map(step -> step.eluent().name())
                .toList()
                .equals(run.poured().stream().map(pour -> pour.eluent().name()).toList());
        String text = "The plan for these strips pours " + steps + "."
                + (same
                        ? ""
                        : " What was poured is something else; what follows is reckoned for what was really poured.");
        add("as-planned", Section.CAME, text, new Reason.Chosen(text, List.of(), List.of()));
    }

    private void came(DyeOutcome dye) {
        String name = Words.capital(dye.dye().name());
        String expected = dye.predicted()
                .map(this::expected)
                .orElse(
                        outcome.columnVolume().isEmpty()
                                ? ""
                                : "when it was to come is not known, because no strip tells its Rf in every eluent poured");
        if (dye.observed().isEmpty()) {
            String text = name + " is in no fraction; " + (expected.isEmpty() ? "" : expected + "; ")
                    + (dye.stuck() ? "it is still seen on the bed." : "nobody saw it on the bed either.");
            add(label("came", dye), Section.CAME, text, new Reason.Observed(text, run.place()));
            return;
        }
        CollectedBand band = dye.observed().get();
        String text =
                name + " came at " + bound(band) + shownMillilitres(band.middleMillilitres(), band.middleUncertainty())
                        + " (fractions from " + Numbers.plain(band.fromMillilitres(), 0) + " to "
                        + Numbers.plain(band.toMillilitres(), 0) + " mL, "
                        + (dye.byAbsorbance() ? "by absorbance" : "by eye") + ")"
                        + (expected.isEmpty() ? "" : "; " + expected) + "." + difference(dye) + width(dye);
        add(
                label("came", dye),
                Section.CAME,
                text,
                dye.predicted().isPresent() ? grounds.late(dye) : grounds.observed(dye));
    }

    private static String bound(CollectedBand band) {
        return band.inTheLast() ? "no sooner than about " : band.inTheFirst() ? "no later than about " : "";
    }

    private String expected(Predicted predicted) {
        return "it was to come at "
                + shownMillilitres(predicted.band().middleMillilitres(), predicted.middleUncertainty())
                + " (" + Numbers.plain(predicted.band().fromMillilitres(), 0) + " to "
                + Numbers.plain(predicted.band().toMillilitres(), 0) + " mL) in " + predicted.eluent();
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
        if (Math.abs(late) < COVERAGE * dye.observed().orElseThrow().middleUncertainty()) {
            return " That is when it was expected, as nearly as the fractions tell.";
        }
        return " It came " + Numbers.plain(Math.abs(late), 0) + " mL (" + grounds.columnVolumes(Math.abs(late)) + ") "
                + (late < 0 ? "early" : "late")
                + (Math.abs(late) <= open
                        ? ", no more than strips and bed leave open."
                        : ", more than strips and bed leave open.");
    }

    private String width(DyeOutcome dye) {
        CollectedBand band = dye.observed().orElseThrow();
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
            Optional<Band> first = ahead.observed().flatMap(CollectedBand::band);
            Optional<Band> second = behind.observed().flatMap(CollectedBand::band);
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

    private void pool(DyeOutcome dye) {
        if (dye.observed().isEmpty()) {
            return;
        }
        double wanted = judgement.limit("wanted purity");
        Optional<PooledFractions> pool = PooledFractions.of(dye, outcome, wanted / PER_CENT);
        String text = pool.map(found -> pooled(found, dye))
                .orElse("No fractions of " + dye.dye()
                        + (dye.byAbsorbance()
                                ? " together hold it " + Numbers.plain(wanted, 1)
                                        + " % pure: keep them apart, and part them again."
                                : " show it alone: keep them apart, and part them again."));
        Reason reason = new Reason.Calculated(
                text,
                dye.byAbsorbance()
                        ? "every stretch of fractions was tried for the most of the dye at a purity of "
                                + Numbers.plain(wanted, 1) + " % or more, by absorbance x mL"
                        : "the longest stretch of fractions that shows no other dye; ranges from the bands, every dye in the same amount",
                "mass balance; JCGM 100:2008, 5.1.2",
                List.of(
                        dye.byAbsorbance() && dye.balance().isPresent()
                                ? grounds.balance(dye)
                                : grounds.observed(dye)));
        add(label("pool", dye), Section.POOLS, text, reason);
    }

    private String pooled(PooledFractions pool, DyeOutcome dye) {
        boolean ofLoad =
                dye.balance().filter(balance -> balance.loaded().isPresent()).isPresent();
        String which = pool.first() == pool.last()
                ? "Keep fraction " + pool.first() + " for " + dye.dye()
                : "Put fractions " + pool.first() + (pool.last() == pool.first() + 1 ? " and " : " to ") + pool.last()
                        + " together for " + dye.dye();
        String purity = pool.purity()
                .map(share -> "purity " + shown(share))
                .orElse("purity not known (no other colour is seen in " + (pool.first() == pool.last() ? "it" : "them")
                        + ")");
        String recovery = pool.recovery()
                .map(share -> shown(share) + (ofLoad ? " of what was loaded" : " of what came"))
                .orElse("recovery not known");
        return which + ": " + purity + ", " + recovery + ".";
    }

    private static String shown(Share share) {
        if (share.byEye()) {
            String lowest = Numbers.plain(Math.floor(PER_CENT * share.lowest()), 0);
            String highest = Numbers.plain(Math.min(PER_CENT, Math.ceil(PER_CENT * share.highest())), 0);
            return (lowest.equals(highest) ? "about " + lowest : lowest + " to " + highest) + " % by eye";
        }
        if (share.lowest() >= NEARLY_ALL) {
            return "over " + Numbers.plain(PER_CENT * NEARLY_ALL, 0) + " %";
        }
        double half = (share.highest() - share.value()) / COVERAGE;
        return RunGrounds.percent(share.value(), half);
    }

    private void balance(DyeOutcome dye) {
        String name = Words.capital(dye.dye().name());
        Optional<Balance> balance = dye.balance();
        if (balance.isEmpty() || balance.get().recovery().isEmpty()) {
            String text = name + ": how much of it was recovered is not known, because "
                    + (balance.isEmpty()
                            ? "its absorbance was not read in every fraction that shows it"
                            : "the load was not read")
                    + "." + (dye.stuck() ? " Some of it is still seen on the bed." : "");
            add(label("balance", dye), Section.BALANCE, text, new Reason.Observed(text, run.place()));
            return;
        }
        double recovery = balance.get().recovery().orElseThrow();
        double uncertainty = balance.get().recoveryUncertainty();
        boolean closes = Math.abs(1 - recovery) <= COVERAGE * uncertainty;
        String rest = RunGrounds.percent(Math.max(0, 1 - recovery), uncertainty);
        String text = name + ": " + RunGrounds.percent(recovery, uncertainty)
                + " of what was loaded is in the fractions"
                + (dye.stuck()
                        ? "; it is still seen on the bed, so about " + rest + " stuck there, if nothing was lost."
                        : closes
                                ? "; the balance closes."
                                : recovery < 1
                                        ? "; " + rest + " is not accounted for."
                                        : "; that is more than was loaded, so some reading is wrong.");
        add(label("balance", dye), Section.BALANCE, text, grounds.balance(dye));
    }

    private void weighed() {
        int number = 0;
        for (WeighedPool pool : run.pools()) {
            number++;
            String numbers =
                    Words.joined(pool.fractions().stream().map(String::valueOf).toList());
            OptionalDouble load = outcome.written().load().milligrams();
            String text = "Fractions " + numbers + " weighed " + Numbers.plain(pool.dryMilligrams(), 1) + " mg dry"
                    + (load.isPresent()
                            ? ", " + Numbers.plain(PER_CENT * pool.dryMilligrams() / load.getAsDouble(), 0)
                                    + " % of the " + Numbers.plain(load.getAsDouble(), 1) + " mg that were loaded."
                            : "; the load was not weighed.");
            add("weighed-" + number, Section.BALANCE, text, new Reason.Observed(text, pool.place()));
        }
    }

    private void reasons() {
        Map<String, List<Reason.Concluded>> why = new TreeMap<>();
        judgement.all(Conclusion.LikelyReason.class).forEach(found -> why.computeIfAbsent(
                        found.rule(), any -> new ArrayList<>())
                .add(judgement.reason(found)));
        judgement.all(Conclusion.LikelyReasonFor.class).forEach(found -> why.computeIfAbsent(
                        found.rule(), any -> new ArrayList<>())
                .add(judgement.reason(found)));
        why.forEach((rule, reasons) -> {
            String text = Words.capital(reasons.stream()
                    .flatMap(reason -> reason.arguments().stream())
                    .filter(argument -> argument.ruleId().equals(rule))
                    .map(Reason.Argument::because)
                    .distinct()
                    .collect(Collectors.joining(" ")));
            add(
                    rule,
                    Section.REASONS,
                    text,
                    reasons.size() == 1
                            ? reasons.get(0)
                            : new Reason.Chosen(text, List.of(), List.<Reason>copyOf(reasons)));
        });
        if (why.isEmpty()) {
            String text = "Nothing differs so much that a rule asks why.";
            add(
                    "no-reason",
                    Section.REASONS,
                    text,
                    new Reason.Chosen(
                            text,
                            List.of(),
                            outcome.dyes().stream()
                                    .filter(dye -> dye.lateMillilitres().isPresent())
                                    .map(grounds::late)
                                    .toList()));
        }
    }

    private void teaches() {
        RunTeaches teaches = RunTeaches.of(outcome);
        if (teaches.isDoubtful()) {
            String text = "Something went wrong with this run ("
                    + run.wentWrong().stream().map(RunMishap::word).collect(Collectors.joining(", "))
                    + "), so take what it teaches with doubt.";
            add("doubt", Section.TEACHES, text, new Reason.Observed(text, run.place()));
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
                    + bound + RunGrounds.shown(taught.retentionFactor(), taught.uncertainty())
                    + (held.onStrip().isPresent()
                            ? "; on the strip "
                                    + RunGrounds.shown(held.onStrip().getAsDouble(), held.onStripUncertainty()) + "."
                            : "; no strip tells k there.");
            add(label("k", dye), Section.TEACHES, text, grounds.held(dye));
        });
        teaches.plates().ifPresent(this::plates);
        teaches.transfer().ifPresent(this::transfer);
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

    private static String label(String kind, DyeOutcome dye) {
        return kind + "-" + Words.slug(dye.dye().name());
    }

    private static String millilitres(double value) {
        return Numbers.plain(value, 1) + " mL";
    }

    private static String shownMillilitres(double value, double uncertainty) {
        return Numbers.plain(value, 0) + " ± " + Numbers.plain(Math.max(1, COVERAGE * uncertainty), 0) + " mL";
    }
}
