package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Objection;
import org.wickwise.rulebook.Objections;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * Why an eluent is not what somebody thought of: why it may not enter the column, hold the load, release a dye or sweep,
 * and why the plan does not pour it. Four kinds of answer: something rules it out (a veto), the strips say otherwise,
 * nobody knows, or no rule speaks of it (a gap).
 */
public final class WhyNot {

    private final Judgement judgement;
    private final Plan plan;
    private final Planner planner;
    private final Objections objections;

    public WhyNot(Plan plan, Judge judge, Planner planner) {
        this.plan = plan;
        this.judgement = plan.judgement();
        this.planner = planner;
        this.objections = judge.objections(judgement);
    }

    /** One line for each thing that the eluent is not; first of all why the plan does not pour it. */
    public List<PlanLine> of(Eluent eluent) {
        List<PlanLine> lines = new ArrayList<>();
        poured(eluent).ifPresent(lines::add);
        if (judgement.holds(new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT))) {
            lines.add(barred(eluent));
        }
        add(lines, eluent, "hold", eluent + " does not hold every dye", new Conclusion.Holds(eluent));
        for (Dye dye : judgement.judged().dyes()) {
            add(
                    lines,
                    eluent,
                    "release-" + slug(dye.name()),
                    eluent + " does not release " + dye,
                    new Conclusion.Releases(eluent, dye));
        }
        add(lines, eluent, "sweep", eluent + " does not sweep every dye out", new Conclusion.Sweeps(eluent));
        return List.copyOf(lines);
    }

    private Optional<PlanLine> poured(Eluent eluent) {
        Optional<Route> best = plan.route();
        if (best.isEmpty()) {
            return Optional.empty();
        }
        if (best.get().steps().stream().anyMatch(step -> step.eluent().equals(eluent))) {
            return Optional.of(line(
                    "poured",
                    "The plan does pour " + eluent + ".",
                    new Reason.Chosen(eluent + " is part of " + best.get().names(), List.of(), List.of())));
        }
        if (best.get().packing().packing().equals(eluent)) {
            return Optional.of(line(
                    "poured",
                    "The plan packs and loads with " + eluent + ".",
                    judgement.reason(best.get().packing())));
        }
        Optional<Route> with = planner.routePouring(eluent, judgement);
        String text = with.isEmpty()
                ? "No sound order of eluents pours " + eluent + "."
                : "With " + eluent + " the best plan would be " + with.get().names() + ", "
                        + planner.worseBy(best.get(), with.get()) + ".";
        return Optional.of(line("poured", text, new Reason.Chosen(text, List.of(), List.of())));
    }

    private PlanLine barred(Eluent eluent) {
        Reason.Concluded unfit = judgement.reason(new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT));
        String because = unfit.arguments().stream()
                .map(Reason.Argument::because)
                .distinct()
                .collect(Collectors.joining(" "));
        return line("enter", eluent + " may not enter this column, whatever else speaks for it. " + because, unfit);
    }

    private void add(List<PlanLine> lines, Eluent eluent, String label, String statement, Conclusion wanted) {
        if (judgement.holds(wanted)) {
            return;
        }
        List<Objection> all = objections.to(wanted);
        String why = all.isEmpty()
                ? "no rule of the book says when it would"
                : all.stream()
                        .map(objection -> inShort(objection, eluent))
                        .distinct()
                        .collect(Collectors.joining("; or "));
        lines.add(line(
                label,
                statement + ": " + why + ".",
                new Reason.Chosen(
                        statement, List.of(), all.stream().map(WhyNot::reason).toList())));
    }

    /** "it would take that every dye stays in E, but rust travels in E (Rf 0.31 ± 0.02)". */
    private String inShort(Objection objection, Eluent eluent) {
        String asked = "it would take that " + objection.unmet();
        if (!objection.inTheWay().isEmpty()) {
            String found = Words.joined(objection.inTheWay().stream()
                    .map(Reason::statement)
                    .map(statement -> statement + reading(statement, eluent))
                    .toList());
            return asked
                    + (objection.ruledOut() ? ", which is ruled out: " : ", but ")
                    + found
                    + objection.missing().stream()
                            .mapToObj(missing -> " (short by " + Numbers.plain(missing, 2) + ")")
                            .collect(Collectors.joining());
        }
        if (objection.further().isEmpty()) {
            return asked
                    + (judgement.tried(eluent) ? ", and no strip says so" : ", and nobody ran a strip in " + eluent);
        }
        return asked + "; " + inShort(objection.further().get(0), eluent);
    }

    /** The Rf behind a statement of what a dye does, where it was measured. */
    private String reading(String statement, Eluent eluent) {
        return judgement.judged().dyes().stream()
                .filter(dye -> judgement
                        .behaviour(dye, eluent)
                        .filter(behaves -> judgement.reason(behaves).statement().equals(statement))
                        .isPresent())
                .flatMap(dye -> judgement.measured(dye, eluent).stream())
                .map(measured -> " (Rf " + measured.retardationFactor().shown() + ")")
                .findFirst()
                .orElse("");
    }

    private static Reason reason(Objection objection) {
        List<String> met = objection.met().stream()
                .map(sentence -> "this holds: " + sentence)
                .toList();
        List<Reason> grounds = new ArrayList<>(objection.inTheWay());
        objection.further().stream().map(WhyNot::reason).forEach(grounds::add);
        String statement = "rule " + objection.ruleId() + " (" + objection.place() + ") asks that " + objection.unmet()
                + (objection.isForWantOfKnowledge()
                        ? ": nothing says so"
                        : objection.ruledOut() ? ": ruled out" : ": not so");
        return new Reason.Chosen(statement, met, grounds);
    }

    private static PlanLine line(String label, String text, Reason reason) {
        return new PlanLine(label, Section.CHOICE, text, reason);
    }

    private static String slug(String name) {
        return name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
