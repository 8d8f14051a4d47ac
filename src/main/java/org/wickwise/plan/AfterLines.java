package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.RunMishap;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.RunFacts;
import org.wickwise.rulebook.RunGrounds;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Says what came of a finished column beside what was to be expected, what to keep of it, and what it teaches. */
public final class AfterLines {

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
        this.grounds = new RunGrounds(outcome, judgement.movements(), judgement.limits());
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
        lines.lines.addAll(new CameLines(lines.outcome, lines.grounds).lines(order));
        lines.lines.addAll(new FoundLines(lines.outcome, lines.grounds, judgement.limit("wanted purity")).lines(order));
        lines.reasons();
        lines.lines.addAll(new TeachLines(lines.outcome, lines.grounds).lines());
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
        outcome.collectedTooMuch().ifPresent(this::tooMuch);
        planned.ifPresent(this::asPlanned);
        if (outcome.columnVolume().isEmpty()) {
            String text =
                    "How large the bed is was not written down, so nothing can be said of when a dye was to come, nor of"
                            + " k: add `bore mm` and `bed mm` to the column.";
            add("size", Section.CAME, text, new Reason.Stated("the column has no size", run.place()));
        }
    }

    private void tooMuch(double much) {
        add(
                "too-much",
                Section.CAME,
                millilitres(run.collectedMillilitres()) + " was collected, but only "
                        + millilitres(run.pouredMillilitres()) + " poured, and the bed holds about "
                        + millilitres(outcome.columnVolume().orElseThrow()) + ": about " + Numbers.plain(much, 0)
                        + " mL cannot have come from there. A volume is wrong or counted twice, or something that was"
                        + " poured is not written down; mend that first.",
                grounds.collectedTooMuch());
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
        List<Reason> reasons = new ArrayList<>(same ? List.of() : grounds.poured());
        reasons.addAll(groundsOf(route));
        add("as-planned", Section.CAME, text, new Reason.Chosen(text, List.of(), reasons));
    }

    /** What its volumes rest on: the bed, its plates, and each dye in every eluent poured up to its own. */
    private List<Reason> groundsOf(Route route) {
        List<Reason> reasons = new ArrayList<>();
        outcome.written().column().sizeStated().ifPresent(reasons::add);
        reasons.add(VolumeLines.plates(judgement));
        for (int i = 0; i < route.steps().size(); i++) {
            for (Dye dye : route.steps().get(i).leaving()) {
                route.steps().subList(0, i + 1).forEach(step -> judgement
                        .measured(dye, step.eluent())
                        .ifPresent(measured -> reasons.add(measured.reason())));
            }
        }
        return reasons;
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
            List<Reason> compared = outcome.dyes().stream()
                    .filter(dye -> dye.lateMillilitres().isPresent())
                    .map(grounds::late)
                    .toList();
            String text = compared.isEmpty()
                    ? "Of no dye it is known when it came and when it was to come, so no rule asks why."
                    : "Nothing differs so much that a rule asks why.";
            add(
                    "no-reason",
                    Section.REASONS,
                    text,
                    new Reason.Chosen(text, List.of(), compared.isEmpty() ? grounds.poured() : compared));
        }
    }

    private static String millilitres(double value) {
        return Numbers.plain(value, 1) + " mL";
    }
}
