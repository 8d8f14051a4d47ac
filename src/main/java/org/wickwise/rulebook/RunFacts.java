package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.bench.Case;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.DyeOutcome.Bound;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.notebook.Fraction;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.notebook.RunTolerances;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/** Lays out as facts what came of a finished column. */
public final class RunFacts {

    private static final double PER_CENT = 100;
    private static final double COVERAGE = 2;
    private static final double MILLIGRAMS_PER_GRAM = 1000;

    private final RunOutcome outcome;
    private final RunGrounds grounds;
    private final List<Object> facts = new ArrayList<>();

    private RunFacts(RunOutcome outcome, RunGrounds grounds) {
        this.outcome = outcome;
        this.grounds = grounds;
    }

    /** What came of a run, beside what the judged strips let one expect. */
    public static RunOutcome outcome(Judgement judgement, ColumnRun run) {
        return outcome(judgement.judged(), run, judgement.movements(), judgement.limits());
    }

    static RunOutcome outcome(Case written, ColumnRun run, List<Movement> movements, Map<String, Limit> limits) {
        return RunOutcome.of(
                written, run, RunTolerances.of(name -> limits.get(name).value()), (dye, eluent) -> movements.stream()
                        .filter(movement ->
                                movement.dye().equals(dye) && movement.eluent().equals(eluent))
                        .findFirst()
                        .flatMap(movement -> retardation(movement, limits)));
    }

    /** As read or reckoned; a dye that was only watched to stay lies at the origin, up to about the staying limit. */
    private static Optional<RetardationFactor> retardation(Movement movement, Map<String, Limit> limits) {
        boolean isWatchedToStay =
                movement instanceof Movement.Watched watched && watched.behaviour() == Behaviour.STAYS;
        return isWatchedToStay
                ? Optional.of(
                        new RetardationFactor(0, limits.get("staying limit").value() / COVERAGE))
                : movement.retardation();
    }

    static Collection<Object> of(RunOutcome outcome, List<Movement> movements, Map<String, Limit> limits) {
        RunFacts facts = new RunFacts(outcome, new RunGrounds(outcome, movements, limits));
        outcome.run()
                .wentWrong()
                .forEach(mishap -> facts.facts.add(
                        new Fact.RunWentWrong(mishap, outcome.run().place())));
        outcome.dyes().forEach(facts::dye);
        facts.all();
        facts.pairs();
        facts.shared();
        facts.load();
        facts.notCollected();
        return facts.facts;
    }

    private void dye(DyeOutcome dye) {
        dye.lateMillilitres().ifPresent(late -> outcome.columnVolume().ifPresent(one -> {
            boolean isBound = dye.observed().orElseThrow().inTheLast() && late < 0
                    || dye.observed().orElseThrow().inTheFirst() && late > 0;
            if (!isBound) {
                facts.add(new Fact.CameAt(
                        dye.dye(),
                        dye.predicted().orElseThrow().eluent(),
                        Numbers.steady(late / one),
                        grounds.late(dye)));
            }
        }));
        dye.timesAsWide().ifPresent(times -> {
            if (!dye.observed().orElseThrow().isCut()) {
                facts.add(new Fact.CameWide(dye.dye(), Numbers.steady(times), grounds.wide(dye)));
            }
        });
        if (dye.stuck()) {
            facts.add(new Fact.StillOnBed(dye.dye(), outcome.run().place()));
        }
        dye.balance()
                .filter(balance -> balance.recovery().isPresent())
                .ifPresent(balance -> facts.add(new Fact.Found(
                        dye.dye(),
                        Numbers.steady(PER_CENT
                                * (balance.recovery().orElseThrow() + COVERAGE * balance.recoveryUncertainty())),
                        grounds.balance(dye))));
        dye.held().filter(held -> held.bound() == Bound.ABOUT).ifPresent(held -> heldOnColumn(dye, held));
        dye.observed().ifPresent(band -> ends(dye, band));
    }

    private void heldOnColumn(DyeOutcome dye, Held held) {
        OptionalDouble times = held.logTransfer().isPresent()
                ? OptionalDouble.of(Math.pow(10, held.logTransfer().getAsDouble()))
                : held.timesTheBound();
        times.ifPresent(found -> facts.add(
                new Fact.HeldOnColumn(dye.dye(), held.eluent(), Numbers.steady(found), grounds.transferred(dye))));
    }

    /** Whether the first fraction goes on to where the dye was to come, so that finding it there tells of no haste. */
    private boolean isInItsTime(DyeOutcome dye) {
        double ends = outcome.run().fractions().get(0).toMillilitres();
        return dye.predicted()
                .filter(predicted -> predicted.band().middleMillilitres() <= ends)
                .isPresent();
    }

    private void ends(DyeOutcome dye, CollectedBand band) {
        List<Fraction> fractions = outcome.run().fractions();
        if (fractions.size() == 1) {
            return;
        }
        if (band.inTheFirst() && !isInItsTime(dye)) {
            facts.add(new Fact.AtTheEndOfARun(dye.dye(), false, fractions.get(0).place()));
        }
        if (band.inTheLast()) {
            facts.add(new Fact.AtTheEndOfARun(
                    dye.dye(), true, fractions.get(fractions.size() - 1).place()));
        }
        if (outcome.columnVolume().isEmpty()) {
            return;
        }
        for (int pour = 0; pour + 1 < outcome.run().poured().size(); pour++) {
            double arrives = outcome.run().pouredBefore(pour + 1)
                    + outcome.columnVolume().getAsDouble();
            boolean straddles = band.fromMillilitres() < arrives && lastBegins(dye.dye()) > arrives;
            if (straddles) {
                facts.add(new Fact.NotAllLeft(
                        dye.dye(),
                        outcome.run().poured().get(pour).eluent(),
                        new Reason.Calculated(
                                dye.dye() + " was still coming when the eluent after "
                                        + outcome.run().poured().get(pour).eluent() + " reached the outlet at about "
                                        + Numbers.plain(arrives, 0) + " mL",
                                "what was poured before, and one column volume",
                                "the liquid in the bed comes out first",
                                List.of(grounds.observed(dye)))));
            }
        }
    }

    /** Where the last fraction begins that shows the dye. */
    private double lastBegins(Dye dye) {
        return outcome.run().fractions().stream()
                .filter(fraction -> fraction.shows(dye))
                .mapToDouble(Fraction::fromMillilitres)
                .max()
                .orElse(0);
    }

    private void all() {
        List<Fact.CameAt> came = facts.stream()
                .filter(Fact.CameAt.class::isInstance)
                .map(Fact.CameAt.class::cast)
                .toList();
        if (came.size() > 1 && outcome.columnVolume().isPresent()) {
            facts.add(new Fact.AllCameAt(
                    came.stream().mapToDouble(Fact.CameAt::early).min().orElseThrow(),
                    came.stream().mapToDouble(Fact.CameAt::late).min().orElseThrow(),
                    new Reason.Calculated(
                            "every dye that was expected came at its own distance from its time",
                            "the least of them",
                            "by definition",
                            came.stream().map(Fact.CameAt::reason).toList())));
        }
    }

    private void pairs() {
        List<DyeOutcome> expected = outcome.dyes().stream()
                .filter(dye -> dye.predicted().isPresent())
                .sorted(Comparator.comparingDouble(
                        dye -> dye.predicted().orElseThrow().band().middleMillilitres()))
                .toList();
        for (int i = 1; i < expected.size(); i++) {
            DyeOutcome ahead = expected.get(i - 1);
            DyeOutcome behind = expected.get(i);
            double resolution = ahead.predicted()
                    .orElseThrow()
                    .band()
                    .resolutionTo(behind.predicted().orElseThrow().band());
            facts.add(new Fact.PairExpected(
                    ahead.dye(),
                    behind.dye(),
                    Numbers.steady(resolution),
                    resolution(
                            ahead, behind, resolution, List.of(grounds.predicted(ahead), grounds.predicted(behind)))));
            Optional<Band> first = ahead.band();
            Optional<Band> second = behind.band();
            if (first.isPresent() && second.isPresent()) {
                double came = first.get().resolutionTo(second.get());
                facts.add(new Fact.PairCame(
                        ahead.dye(),
                        behind.dye(),
                        Numbers.steady(came),
                        resolution(ahead, behind, came, List.of(grounds.observed(ahead), grounds.observed(behind)))));
            }
        }
    }

    private static Reason resolution(DyeOutcome ahead, DyeOutcome behind, double value, List<Reason> grounds) {
        return new Reason.Calculated(
                "the resolution of " + ahead.dye() + " and " + behind.dye() + " is " + Numbers.plain(value, 1),
                "Rs = (V2 - V1)/(2 (sigma1 + sigma2))",
                "IUPAC; Ettre, Pure Appl. Chem. 1993, 65, 819",
                grounds);
    }

    private void shared() {
        List<Dye> dyes = outcome.written().dyes();
        for (int i = 0; i < dyes.size(); i++) {
            for (int j = i + 1; j < dyes.size(); j++) {
                Dye one = dyes.get(i);
                Dye other = dyes.get(j);
                outcome.run().fractions().stream()
                        .filter(fraction -> fraction.shows(one) && fraction.shows(other))
                        .findFirst()
                        .ifPresent(fraction ->
                                facts.add(new Fact.SharedFraction(one, other, fraction.number(), fraction.place())));
            }
        }
    }

    private void load() {
        OptionalDouble millilitres = outcome.run().load().isPresent()
                ? OptionalDouble.of(outcome.run().load().get().millilitres())
                : outcome.written().load().millilitres();
        if (millilitres.isPresent() && outcome.columnVolume().isPresent()) {
            double percent = PER_CENT
                    * millilitres.getAsDouble()
                    / outcome.columnVolume().getAsDouble();
            facts.add(new Fact.LoadFills(
                    Numbers.steady(percent),
                    new Reason.Calculated(
                            "the load of " + Numbers.plain(millilitres.getAsDouble(), 2) + " mL is "
                                    + Numbers.plain(percent, 0) + " % of a column volume",
                            "volume of the load / liquid in the bed",
                            "by definition",
                            List.of(new Reason.Stated(
                                    "the load is " + Numbers.plain(millilitres.getAsDouble(), 2) + " mL",
                                    outcome.run().load().isPresent()
                                            ? outcome.run().load().get().place()
                                            : outcome.written().load().place())))));
        }
        OptionalDouble milligrams = outcome.written().load().milligrams();
        OptionalDouble grams = outcome.written().column().bedGrams();
        if (milligrams.isPresent() && grams.isPresent()) {
            double times = MILLIGRAMS_PER_GRAM * grams.getAsDouble() / milligrams.getAsDouble();
            facts.add(new Fact.AdsorbentOverLoad(
                    Numbers.steady(times),
                    new Reason.Calculated(
                            "the bed weighs " + Numbers.plain(times, 0) + " times as much as the load",
                            "dry bed / load = " + Numbers.plain(grams.getAsDouble(), 1) + " g / "
                                    + Numbers.plain(milligrams.getAsDouble(), 1) + " mg",
                            "by definition",
                            List.of(new Reason.Stated(
                                    "the load is " + Numbers.plain(milligrams.getAsDouble(), 1) + " mg",
                                    outcome.written().load().place())))));
        }
    }

    private void notCollected() {
        outcome.columnVolume().ifPresent(one -> {
            double missing = outcome.run().pouredMillilitres() - outcome.run().collectedMillilitres();
            List<Reason> all = new ArrayList<>(grounds.poured());
            all.add(new Reason.Observed(
                    Numbers.plain(outcome.run().collectedMillilitres(), 1) + " mL was collected in all",
                    outcome.run().place()));
            facts.add(new Fact.NotCollected(
                    Numbers.steady(missing / one),
                    new Reason.Calculated(
                            Numbers.plain(missing, 1) + " mL less was collected than poured",
                            "what was poured less what was collected",
                            "mass balance",
                            all)));
        });
    }
}
