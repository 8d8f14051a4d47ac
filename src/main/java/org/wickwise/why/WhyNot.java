package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wickwise.plan.Alternatives;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Objections;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.Eluent;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Subject.OfDye;
import org.wickwise.why.Subject.OfEluent;
import org.wickwise.why.Subject.OfPair;
import org.wickwise.why.Subject.OfStrip;
import org.wickwise.why.Subject.OfTable;

/**
 * Answers why something is not so: why an eluent is not poured or does not hold, release or sweep, why a dye does not leave
 * alone, why two dyes are not parted, why another order of pouring lost, why a caution is not given, why a strip is not
 * void.
 */
public final class WhyNot {

    private final Plan plan;
    private final Planner planner;
    private final Alternatives alternatives;
    private final Rulebook rulebook;
    private final Objections objections;
    private final Objected objected;
    private final Subjects subjects;

    /** @param planner that made the plan */
    public WhyNot(Plan plan, Judge judge, Planner planner) {
        this.plan = plan;
        this.planner = planner;
        this.alternatives = planner.alternatives(plan.judgement());
        this.rulebook = judge.rulebook();
        this.objections = judge.objections(plan.judgement());
        this.objected = new Objected(plan.judgement(), objections);
        this.subjects = new Subjects(plan.judgement(), judge.data());
    }

    /**
     * One line for each thing that is not so.
     *
     * @param file the case file, for the message
     * @throws ProblemsFound with what can be asked here, the nearest first, when nothing is called so
     */
    public List<PlanLine> to(String question, String file) {
        String asked = Subjects.plain(question);
        List<PlanLine> lines = new ArrayList<>();
        List<Eluent> order = subjects.order(asked);
        if (!order.isEmpty()) {
            return OrderWhyNot.of(plan, planner, alternatives, objected, order);
        }
        subjects.named(asked).forEach(subject -> lines.addAll(about(subject)));
        String rule = asked.toLowerCase(Locale.ROOT);
        if (rulebook.cautionRules().contains(rule)) {
            lines.addAll(CautionWhyNot.of(plan, objected, rule, rulebook.topics()));
        }
        if (lines.isEmpty()) {
            RuleAnswer.ofRule(plan, objections, rule).ifPresent(lines::add);
        }
        if (lines.isEmpty()) {
            throw subjects.unknown(
                    asked, file, "an order such as `A, then B`, or the name of a caution or a rule", ruleNames());
        }
        return List.copyOf(lines);
    }

    /** What was asked, as a question in full. */
    public String heading(String question) {
        String asked = Subjects.plain(question);
        if (!subjects.order(asked).isEmpty()) {
            return "Why does the plan not pour " + asked + "?";
        }
        List<Subject> meant = subjects.named(asked);
        if (meant.stream().map(Object::getClass).distinct().count() == 1) {
            return heading(meant.get(0), asked);
        }
        return rulebook.cautionRules().contains(asked.toLowerCase(Locale.ROOT)) && meant.isEmpty()
                ? "Why does the plan not give the caution " + asked + "?"
                : "Why not " + asked + "?";
    }

    private String heading(Subject subject, String asked) {
        if (subject instanceof OfDye of) {
            return "Why does " + of.dye() + " not leave alone?";
        } else if (subject instanceof OfPair of) {
            return "Why are " + of.one() + " and " + of.other() + " not parted?";
        } else if (subject instanceof OfStrip) {
            return "Why is " + asked + " not read otherwise?";
        }
        boolean isUsed = subject instanceof OfEluent of
                && plan.route()
                        .filter(route -> route.packing().packing().equals(of.eluent())
                                || route.steps().stream()
                                        .anyMatch(step -> step.eluent().equals(of.eluent())))
                        .isPresent();
        return isUsed ? "What does " + asked + " not do?" : "Why is " + asked + " not poured, and what does it not do?";
    }

    private List<String> ruleNames() {
        List<String> names = new ArrayList<>(rulebook.cautionRules());
        names.addAll(rulebook.own().ruleNames());
        return names;
    }

    /** One line for each thing that the eluent is not; first of all why the plan does not pour it. */
    public List<PlanLine> of(Eluent eluent) {
        return EluentWhyNot.of(plan, planner, alternatives, objected, eluent);
    }

    private List<PlanLine> about(Subject subject) {
        if (subject instanceof OfEluent of) {
            return of(of.eluent());
        }
        if (subject instanceof OfTable of) {
            return List.of(EluentAnswer.ofTable(plan, of.eluent()));
        }
        if (subject instanceof OfDye of) {
            return DyeWhyNot.of(plan, objected, of.dye());
        }
        if (subject instanceof OfPair of) {
            return PairWhyNot.of(plan, objected, of.one(), of.other());
        }
        OfStrip of = (OfStrip) subject;
        return StripWhyNot.of(plan, objected, of.strip(), of.label());
    }
}
