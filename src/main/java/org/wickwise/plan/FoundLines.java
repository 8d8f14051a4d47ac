package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.notebook.ColumnRun.WeighedPool;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.DyeOutcome.Balance;
import org.wickwise.notebook.PooledFractions;
import org.wickwise.notebook.PooledFractions.Share;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.RunGrounds;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Which fractions of a finished column to put together, how pure that is, and how much of each dye was found again. */
final class FoundLines {

    private static final double PER_CENT = 100;
    private static final double COVERAGE = 2;
    /** A share that lies wholly above this is told as "over 99 %", not as 100 ± 1 %. */
    private static final double NEARLY_ALL = 0.99;

    private final RunOutcome outcome;
    private final RunGrounds grounds;
    private final double wantedPurityPercent;
    private final List<PlanLine> lines = new ArrayList<>();

    FoundLines(RunOutcome outcome, RunGrounds grounds, double wantedPurityPercent) {
        this.outcome = outcome;
        this.grounds = grounds;
        this.wantedPurityPercent = wantedPurityPercent;
    }

    /** @param order the dyes in the order of leaving, then those that did not leave */
    List<PlanLine> lines(List<DyeOutcome> order) {
        order.forEach(this::pool);
        order.forEach(this::balance);
        weighed();
        return lines;
    }

    private void pool(DyeOutcome dye) {
        if (dye.observed().isEmpty()) {
            return;
        }
        Optional<PooledFractions> pool = PooledFractions.of(dye, outcome, wantedPurityPercent / PER_CENT);
        String text = pool.map(found -> pooled(found, dye))
                .orElse("No fractions of " + dye.dye()
                        + (dye.byAbsorbance()
                                ? " together hold it " + Numbers.plain(wantedPurityPercent, 1)
                                        + " % pure: keep them apart, and part them again."
                                : " show it alone: keep them apart, and part them again."));
        Reason reason = new Reason.Calculated(
                text,
                dye.byAbsorbance()
                        ? "every stretch of fractions was tried for the most of the dye at a purity of "
                                + Numbers.plain(wantedPurityPercent, 1) + " % or more, by absorbance x mL"
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
            add(
                    label("balance", dye),
                    Section.BALANCE,
                    text,
                    new Reason.Observed(text, outcome.run().place()));
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
        for (WeighedPool pool : outcome.run().pools()) {
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

    private void add(String label, Section section, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    private static String label(String kind, DyeOutcome dye) {
        return kind + "-" + Words.slug(dye.dye().name());
    }
}
