package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.wickwise.column.CollectedBand;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.DyeOutcome.Balance;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.notebook.DyeOutcome.Predicted;
import org.wickwise.notebook.Fraction;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.notebook.RunTeaches.Transfer;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Movement;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/** Says what the numbers of a finished column rest on, down to the lines of the entry. */
public final class RunGrounds {

    private static final String GRADIENT =
            "fundamental equation of gradient elution; Jandera and Churacek, Gradient Elution in Column Liquid Chromatography, 1985";
    private static final String GUM = "JCGM 100:2008, 5.1.2";

    private final RunOutcome outcome;
    private final List<Movement> movements;
    private final Map<String, Limit> limits;

    /** @param movements what the strips say of each dye in each eluent */
    public RunGrounds(RunOutcome outcome, List<Movement> movements, Map<String, Limit> limits) {
        this.outcome = outcome;
        this.movements = List.copyOf(movements);
        this.limits = limits;
    }

    /** What was poured, a line each. */
    public List<Reason> poured() {
        return outcome.run().poured().stream()
                .<Reason>map(pour -> new Reason.Observed(
                        Numbers.plain(pour.millilitres(), 1) + " mL of " + pour.eluent() + " was poured", pour.place()))
                .toList();
    }

    public Reason predicted(DyeOutcome dye) {
        Predicted predicted = dye.predicted().orElseThrow();
        List<Reason> grounds = new ArrayList<>(poured());
        outcome.run().poured().stream()
                .map(pour -> pour.eluent())
                .distinct()
                .flatMap(eluent -> movements.stream()
                        .filter(movement -> movement.dye().equals(dye.dye())
                                && movement.eluent().equals(eluent)))
                .forEach(movement -> grounds.add(movement.reason()));
        outcome.written().column().sizeStated().ifPresent(grounds::add);
        grounds.add(limits.get("scatter of the transfer to a column").reason());
        grounds.add(limits.get("uncertainty of a column volume").reason());
        return new Reason.Calculated(
                dye.dye() + " was to come " + expectedAt(predicted) + " in " + predicted.eluent(),
                "V_R = V0 + what is poured until the shares dV/(V0 k) add up to 1, for V0 = "
                        + Numbers.plain(outcome.columnVolume().orElseThrow(), 1)
                        + " mL and the volumes really poured; " + open(predicted),
                GRADIENT,
                grounds);
    }

    /** "at 30.2 ± 18.8 mL", or from when on where that is not known well. */
    public String expectedAt(Predicted predicted) {
        return predicted.isWellKnown(outcome.columnVolume().orElseThrow())
                ? "at " + shown(predicted.band().middleMillilitres(), predicted.middleUncertainty()) + " mL"
                : "no sooner than about " + Numbers.poured(predicted.earliestMillilitres()) + " mL (not known well)";
    }

    /** Half-widths of 95 % intervals, and what each comes of; the way of reckoning where no even interval tells it. */
    private String open(Predicted predicted) {
        if (!predicted.isWellKnown(outcome.columnVolume().orElseThrow())) {
            return "too much is open for an even ±, so the earliest is told, V0 + (V_R - V0)/10^a, a the root of the squares"
                    + " of what twice each uncertainty takes from log10 (V_R - V0)";
        }
        return "what is open of it: by the strips " + half(predicted.open().strips())
                + ", by the way from strip to column " + half(predicted.open().transfer())
                + ", by the liquid in the bed "
                + half(predicted.open().columnVolume());
    }

    private static String half(double uncertainty) {
        return "± " + Numbers.fixed(2 * uncertainty, 1) + " mL";
    }

    /** "at 33 mL", or between what, where the fractions give a bound only. */
    public static String when(DyeOutcome dye) {
        CollectedBand band = dye.observed().orElseThrow();
        if (dye.cameAnywhere()) {
            return "somewhere from " + Numbers.plain(band.fromMillilitres(), 0) + " to "
                    + Numbers.plain(band.toMillilitres(), 0) + " mL";
        }
        String bound = band.isCut() && band.inTheFirst() != band.inTheLast()
                ? band.inTheLast() ? "no sooner than about " : "no later than about "
                : "at ";
        return bound + Numbers.plain(band.middleMillilitres(), 0) + " mL";
    }

    public Reason observed(DyeOutcome dye) {
        CollectedBand band = dye.observed().orElseThrow();
        List<Reason> grounds = new ArrayList<>();
        for (Fraction fraction : outcome.run().fractions()) {
            if (fraction.shows(dye.dye()) || fraction.absorbed(dye.dye()).orElse(0) > 0) {
                grounds.add(fraction(fraction, dye.dye()));
            }
        }
        return new Reason.Calculated(
                dye.dye() + " came "
                        + (band.isCut()
                                ? when(dye)
                                : "at " + shown(band.middleMillilitres(), band.middleUncertainty()) + " mL"),
                dye.byAbsorbance()
                        ? "middle and width of the Gaussian band that is the likeliest to fall into these fractions in these shares"
                        : "middle between the first and the last fraction that shows it, each halved",
                dye.byAbsorbance()
                        ? "Dempster, Laird and Rubin, J. R. Stat. Soc. B 1977, 39, 1, from memory"
                        : "our choice",
                grounds);
    }

    /** What was seen or read of a dye in a fraction. */
    static Reason fraction(Fraction fraction, Dye dye) {
        String read = fraction.absorbance().containsKey(dye)
                ? ", absorbance " + Numbers.plain(fraction.absorbance().get(dye), 3)
                        + (fraction.diluted() == 1 ? "" : " diluted " + Numbers.plain(fraction.diluted(), 1) + " times")
                : "";
        return new Reason.Observed(
                dye + " is in fraction " + fraction.number() + ", "
                        + Numbers.plain(fraction.fromMillilitres(), 1) + " to "
                        + Numbers.plain(fraction.toMillilitres(), 1) + " mL" + read,
                fraction.place());
    }

    public Reason late(DyeOutcome dye) {
        double late = dye.lateMillilitres().orElseThrow();
        return new Reason.Calculated(
                dye.dye() + " came " + Numbers.plain(Math.abs(late), 1) + " mL (" + columnVolumes(Math.abs(late)) + ") "
                        + (late < 0 ? "early" : "late"),
                "what came less what was expected",
                "by definition",
                List.of(observed(dye), predicted(dye)));
    }

    public Reason wide(DyeOutcome dye) {
        return new Reason.Calculated(
                dye.dye() + " came " + Numbers.plain(dye.timesAsWide().orElseThrow(), 1) + " times as wide as expected",
                "standard deviation of what came over that expected = "
                        + Numbers.plain(
                                dye.observed().orElseThrow().sigmaMillilitres().orElseThrow(), 1) + " mL / "
                        + Numbers.plain(dye.predicted().orElseThrow().band().sigmaMillilitres(), 1) + " mL",
                "by definition",
                List.of(observed(dye), predicted(dye)));
    }

    public Reason held(DyeOutcome dye) {
        Held held = dye.held().orElseThrow();
        List<Reason> grounds = new ArrayList<>(List.of(observed(dye)));
        grounds.addAll(poured());
        outcome.written().column().sizeStated().ifPresent(grounds::add);
        return new Reason.Calculated(
                "k of " + dye.dye() + " in " + held.eluent() + " is "
                        + shown(held.retentionFactor(), held.uncertainty()) + " on the column",
                "k = (V_R - V0 - what was poured before)/(V0 (1 - x)), x the share of the bed it had behind it",
                GRADIENT,
                grounds);
    }

    /** k on the column beside k on the strip. */
    public Reason transferred(DyeOutcome dye) {
        Held held = dye.held().orElseThrow();
        List<Reason> grounds = new ArrayList<>(List.of(held(dye)));
        movements.stream()
                .filter(movement ->
                        movement.dye().equals(dye.dye()) && movement.eluent().equals(held.eluent()))
                .forEach(movement -> grounds.add(movement.reason()));
        if (held.timesTheBound().isPresent()) {
            double times = held.timesTheBound().getAsDouble();
            return new Reason.Calculated(
                    dye.dye() + " was held at least " + Numbers.plain(Math.max(times, 1 / times), 1) + " times "
                            + (times < 1 ? "less" : "more") + " in " + held.eluent() + " than its strip allows",
                    "the nearer ends of both 95 % intervals; on the strip "
                            + held.strip().orElseThrow().retentionShown(),
                    "k = (1 - Rf)/Rf",
                    grounds);
        }
        return new Reason.Calculated(
                "k of " + dye.dye() + " in " + held.eluent() + " is "
                        + Numbers.plain(Math.pow(10, held.logTransfer().orElseThrow()), 2)
                        + " times that on the strip",
                "k on the column / k on the strip = " + Numbers.plain(held.retentionFactor(), 2) + " / "
                        + Numbers.plain(held.strip().orElseThrow().retentionFactor(), 2),
                "Soczewinski, Chromatographia, doi 10.1007/BF02262058, symbols read",
                grounds);
    }

    /** The transfer that the first dye shows, put together with what was to be expected. */
    public Reason transfer(Transfer transfer) {
        return new Reason.Calculated(
                "log10 of k on the column over k on the strip is " + Numbers.plain(transfer.together(), 2) + " ± "
                        + Numbers.plain(2 * transfer.togetherUncertainty(), 2),
                "mean weighted by 1/u^2 of what the first dye shows, " + Numbers.plain(transfer.seen(), 2) + " (u "
                        + Numbers.plain(transfer.seenUncertainty(), 2) + "), and of 0 (u "
                        + Numbers.plain(outcome.tolerances().transfer(), 2) + ")",
                GUM,
                List.of(transferred(outcome.of(transfer.dye()))));
    }

    public Reason balance(DyeOutcome dye) {
        Balance balance = dye.balance().orElseThrow();
        List<Reason> grounds = new ArrayList<>();
        for (Fraction fraction : outcome.run().fractions()) {
            if (fraction.absorbed(dye.dye()).orElse(0) > 0) {
                grounds.add(fraction(fraction, dye.dye()));
            }
        }
        outcome.run()
                .load()
                .filter(load -> load.absorbance().containsKey(dye.dye()))
                .ifPresent(load -> grounds.add(new Reason.Observed(
                        "the load of " + Numbers.plain(load.millilitres(), 2) + " mL has an absorbance of "
                                + Numbers.plain(load.absorbance().get(dye.dye()), 3) + " for " + dye.dye()
                                + (load.diluted() == 1
                                        ? ""
                                        : ", diluted " + Numbers.plain(load.diluted(), 1) + " times"),
                        load.place())));
        String sum = "sum over the fractions of absorbance x dilution x mL = " + Numbers.plain(balance.collected(), 2);
        return balance.loaded().isEmpty()
                ? new Reason.Calculated(dye.dye() + " was found in the fractions", sum, "Beer's law", grounds)
                : new Reason.Calculated(
                        percent(balance.recovery().orElseThrow(), balance.recoveryUncertainty()) + " of " + dye.dye()
                                + " was found in the fractions",
                        sum + ", over that of the load, "
                                + Numbers.plain(balance.loaded().getAsDouble(), 2),
                        "mass balance; Beer's law, the dye taken to colour every eluent alike",
                        grounds);
    }

    /** More was collected than poured and held by the bed. */
    public Reason collectedTooMuch() {
        List<Reason> grounds = new ArrayList<>(poured());
        outcome.run()
                .fractions()
                .forEach(fraction -> grounds.add(new Reason.Observed(
                        "fraction " + fraction.number() + " is " + Numbers.plain(fraction.millilitres(), 1) + " mL",
                        fraction.place())));
        outcome.written().column().sizeStated().ifPresent(grounds::add);
        grounds.add(limits.get("uncertainty of a collected volume").reason());
        grounds.add(limits.get("uncertainty of a column volume").reason());
        return new Reason.Calculated(
                Numbers.plain(outcome.collectedTooMuch().orElseThrow(), 1)
                        + " mL more was collected than poured and held by the bed",
                "what was collected, less what was poured, less the liquid in the bed of "
                        + Numbers.plain(outcome.columnVolume().orElseThrow(), 1)
                        + " mL; told where it is more than twice the uncertainty of all of them",
                "mass balance; " + GUM,
                grounds);
    }

    /** More was weighed out than put on. */
    public Reason weighedTooMuch() {
        List<Reason> grounds = new ArrayList<>();
        outcome.run()
                .pools()
                .forEach(pool -> grounds.add(new Reason.Observed(
                        Numbers.plain(pool.dryMilligrams(), 1) + " mg was weighed dry", pool.place())));
        grounds.add(new Reason.Stated(
                "the load is "
                        + Numbers.plain(outcome.written().load().milligrams().orElseThrow(), 1) + " mg",
                outcome.written().load().place()));
        grounds.add(limits.get("uncertainty of a dry mass").reason());
        return new Reason.Calculated(
                Numbers.plain(outcome.weighedTooMuch().orElseThrow(), 1) + " mg more was weighed out than put on",
                "what was weighed dry less the load; told where it is more than twice the uncertainty of all masses",
                "mass balance; " + GUM,
                grounds);
    }

    /** "0.5 column volumes". */
    public String columnVolumes(double millilitres) {
        String number = Numbers.plain(millilitres / outcome.columnVolume().orElseThrow(), 1);
        return number + (number.equals("1") ? " column volume" : " column volumes");
    }

    /** "32.8 ± 1.2", the half-width being the 95 % one. */
    public static String shown(double value, double uncertainty) {
        int decimals = uncertainty < 0.05 ? 2 : 1;
        return Numbers.fixed(value, decimals) + " ± " + Numbers.fixed(2 * uncertainty, decimals);
    }

    /** "97 ± 4 %", the half-width being the 95 % one. */
    public static String percent(double share, double uncertainty) {
        return Numbers.plain(100 * share, 0) + " ± " + Numbers.plain(Math.max(1, 200 * uncertainty), 0) + " %";
    }
}
