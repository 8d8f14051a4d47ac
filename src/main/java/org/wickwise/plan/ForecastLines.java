package org.wickwise.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.bench.Case;
import org.wickwise.notebook.Recall;
import org.wickwise.notebook.Recollection;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What a plan made from earlier strips says beside itself: what it remembers, and which strips the class should run. */
public final class ForecastLines {

    private final Plan forecast;
    private final Recall recall;
    private final Judgement judgement;
    private final List<PlanLine> lines = new ArrayList<>();

    private ForecastLines(Plan forecast, Recall recall) {
        this.forecast = forecast;
        this.recall = recall;
        this.judgement = forecast.judgement();
    }

    /** A plan from what is remembered, saying that it is a forecast. */
    public static Plan forecast(Recall recall, Judge judge, Planner planner) {
        Plan plan = planner.plan(judge.judge(recall.withMemory()));
        ForecastLines lines = new ForecastLines(plan, recall);
        lines.footing();
        lines.remembered();
        lines.unknown();
        lines.strips(plan.isRefusal() ? planOfTheKnown(recall, judge, planner) : Optional.of(plan));
        return plan.without(lines::isNotForEarlierStrips).with(lines.lines);
    }

    /** A strip of another year cannot be run longer, and none of this year's was tried. */
    private boolean isNotForEarlierStrips(PlanLine line) {
        return line.saysNoStripIsWanted()
                || line.section() == Section.NEXT
                        && judgement.all(Conclusion.RunAgain.class).stream()
                                .filter(again -> again.strip().isRemembered())
                                .anyMatch(again -> judgement.reason(again).equals(line.reason()));
    }

    /** The plan for the dyes of which something is remembered; empty where they are too few or there is none. */
    private static Optional<Plan> planOfTheKnown(Recall recall, Judge judge, Planner planner) {
        List<Dye> unknown = recall.unknown();
        Case whole = recall.withMemory();
        List<Dye> known =
                whole.dyes().stream().filter(dye -> !unknown.contains(dye)).toList();
        if (unknown.isEmpty() || known.size() < Case.FEWEST_DYES) {
            return Optional.empty();
        }
        return Optional.of(planner.plan(judge.judge(whole.of(known)))).filter(plan -> !plan.isRefusal());
    }

    private void footing() {
        List<Reason> grounds =
                recall.recollections().stream().map(Recollection::reason).toList();
        long own = recall.withMemory().strips().stream()
                .filter(strip -> !strip.isRemembered())
                .count();
        String text = grounds.isEmpty()
                ? "The notebook remembers none of these dyes on " + phase() + "."
                : "This is a forecast from earlier strips"
                        + (own == 0 ? "" : " and " + own + (own == 1 ? " strip" : " strips") + " of this case")
                        + ", not yet a plan: run the strips named below first.";
        lines.add(new PlanLine("forecast", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private String phase() {
        return judgement.judged().column().phaseName();
    }

    private void remembered() {
        for (Eluent eluent : recall.eluents()) {
            List<String> words = new ArrayList<>();
            List<Reason> grounds = new ArrayList<>();
            for (Dye dye : judgement.judged().dyes()) {
                Optional<Recollection> known = recall.of(dye, eluent);
                known.map(Recollection::reason).ifPresent(grounds::add);
                words.add(dye + " " + known.map(ForecastLines::shown).orElse("not remembered"));
            }
            String text = "In " + eluent + ": " + String.join("; ", words) + "." + otherMixtures(eluent);
            lines.add(new PlanLine(
                    "memory-" + Words.slug(eluent.name()),
                    Section.BASIS,
                    text,
                    new Reason.Chosen(text, List.of(), grounds)));
        }
    }

    private static String shown(Recollection known) {
        return known.retardationFactor().shown() + " (" + known.from()
                + (known.strips() > 1
                        ? ", " + Numbers.fixed(known.lowest(), 2) + " to " + Numbers.fixed(known.highest(), 2)
                        : "")
                + ")";
    }

    /** A name may mean another dye in another mixture. */
    private String otherMixtures(Eluent eluent) {
        List<String> others = judgement.judged().dyes().stream()
                .flatMap(dye -> recall.of(dye, eluent).stream())
                .flatMap(known -> known.mixtures().stream())
                .filter(mixture -> !mixture.equalsIgnoreCase(judgement.judged().mixture()))
                .distinct()
                .sorted()
                .toList();
        return others.isEmpty()
                ? ""
                : " Some of it from " + Words.joined(others) + ": make sure that the names mean the same dyes.";
    }

    private void unknown() {
        for (Dye dye : recall.unknown()) {
            String held = judgement
                    .judged()
                    .column()
                    .phase()
                    .howItHolds(dye.dyeClass())
                    .map(how -> " A dye that is " + dye.dyeClass().word() + " is held by " + phase() + " " + how + ".")
                    .orElse(" Its class is not stated, so nothing can be said before a strip was run.");
            String text = "Nothing is remembered of " + dye + " on " + phase() + "." + held;
            lines.add(new PlanLine(
                    "unknown-" + Words.slug(dye.name()),
                    Section.BASIS,
                    text,
                    new Reason.Chosen(
                            text,
                            List.of(),
                            List.of(dye.stated(), judgement.judged().column().reason()))));
        }
    }

    /** One strip in each eluent that the plan pours, and nobody ran for this case; more would change nothing. */
    private void strips(Optional<Plan> plan) {
        if (plan.isEmpty()) {
            return;
        }
        Set<Eluent> poured = new LinkedHashSet<>();
        plan.get().packing().ifPresent(poured::add);
        plan.get().route().ifPresent(route -> route.steps().forEach(step -> poured.add(step.eluent())));
        Set<Eluent> run = new LinkedHashSet<>();
        judgement.judged().strips().stream()
                .filter(strip -> !strip.isRemembered())
                .map(Strip::eluent)
                .forEach(run::add);
        poured.stream().filter(eluent -> !run.contains(eluent)).forEach(eluent -> strip(eluent, plan.get()));
        if (!plan.get().equals(forecast)) {
            String text = "These are the strips of a plan for the dyes that are remembered; "
                    + Words.joined(recall.unknown().stream().map(Dye::name).toList())
                    + " may need another eluent, which these strips will tell.";
            lines.add(new PlanLine("run-then", Section.EXPECT, text, new Reason.Chosen(text, List.of(), List.of())));
        }
    }

    private void strip(Eluent eluent, Plan plan) {
        Limit front = judgement.limits().get("front of an unrun strip");
        List<Reason> grounds = new ArrayList<>(List.of(front.reason()));
        List<String> words = new ArrayList<>();
        for (Dye dye : judgement.judged().dyes()) {
            Optional<RetardationFactor> value = judgement.movement(dye, eluent).flatMap(Movement::retardation);
            judgement.movement(dye, eluent).map(Movement::reason).ifPresent(grounds::add);
            words.add(dye + " "
                    + value.map(rf -> Numbers.plain(rf.lowest() * front.value(), 0) + " to "
                                    + Numbers.plain(rf.highest() * front.value(), 0) + " mm")
                            .orElse("unknown"));
        }
        String use = plan.packing().filter(eluent::equals).isPresent()
                ? "the plan packs and loads with it"
                : "the plan pours it as step " + (1 + stepOf(eluent, plan));
        String known = judgement.isRemembered(eluent) ? "" : " Nobody ran it before: this is reckoned.";
        String text = "Run a strip in " + eluent + ": " + use + ". Expect, with the front at "
                + Numbers.plain(front.value(), 0) + " mm: " + String.join("; ", words) + "." + known;
        lines.add(new PlanLine(
                "run-" + Words.slug(eluent.name()),
                Section.EXPECT,
                text,
                new Reason.Calculated(
                        text, "travel = Rf x front, at the ends of the 95 % interval", "definition of Rf", grounds)));
    }

    private static int stepOf(Eluent eluent, Plan plan) {
        List<Eluent> steps =
                plan.route().orElseThrow().steps().stream().map(Step::eluent).toList();
        return steps.indexOf(eluent);
    }
}
