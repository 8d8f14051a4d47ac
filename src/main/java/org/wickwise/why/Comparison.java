package org.wickwise.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Objections;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/**
 * What a supposition changes: the plan, the conclusions that come, those that go with what is in their way then, and those
 * that stay for another reason.
 */
public final class Comparison {

    private static final int MOST_TOLD = 12;

    private final Plan before;
    private final Plan after;
    private final Objected objected;
    private final List<PlanLine> lines = new ArrayList<>();

    private Comparison(Plan before, Plan after, Objections objections) {
        this.before = before;
        this.after = after;
        this.objected = new Objected(after.judgement(), objections);
    }

    /**
     * One line for each difference; a single line when there is none.
     *
     * @param objections to what was not concluded afterwards
     */
    public static List<PlanLine> of(Plan before, Plan after, Objections objections) {
        Comparison comparison = new Comparison(before, after, objections);
        comparison.plan();
        comparison.conclusions();
        return List.copyOf(comparison.lines);
    }

    private void plan() {
        String was = Impact.inShort(before);
        String would = Impact.inShort(after);
        boolean same = was.equals(would);
        String text = same ? "The plan stays: " + was + "." : "The plan would be: " + would + "; it was: " + was + ".";
        List<Reason> grounds =
                after.linesIn(Section.VERDICT).stream().map(PlanLine::reason).toList();
        lines.add(new PlanLine("plan", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private void conclusions() {
        List<Conclusion> gained = onlyIn(after.judgement(), before.judgement());
        List<Conclusion> lost = onlyIn(before.judgement(), after.judgement());
        List<Conclusion> otherwise = forAnotherReason();
        told("new-", "Then: ", gained, this::gained);
        told("gone-", "No longer: ", lost, this::lost);
        told("still-", "Still: ", otherwise, this::stillBut);
        if (gained.isEmpty() && lost.isEmpty() && otherwise.isEmpty()) {
            add("same", "Nothing else changes of what is concluded about the strips' eluents and the plan's.");
        }
    }

    /** What one judgement concludes and the other does not, each statement once. */
    private List<Conclusion> onlyIn(Judgement own, Judgement other) {
        Map<String, Conclusion> only = new LinkedHashMap<>();
        for (Conclusion conclusion : own.reasons().keySet()) {
            if (isToTheQuestion(conclusion) && !saysTheSame(conclusion, other, own)) {
                only.putIfAbsent(own.reason(conclusion).statement(), conclusion);
            }
        }
        return List.copyOf(only.values());
    }

    /** What both conclude, but not by the same rules. */
    private List<Conclusion> forAnotherReason() {
        return before.judgement().reasons().keySet().stream()
                .filter(this::isToTheQuestion)
                .filter(after.judgement()::holds)
                .filter(conclusion -> !rules(before, conclusion).equals(rules(after, conclusion)))
                .toList();
    }

    private static Set<String> rules(Plan plan, Conclusion conclusion) {
        return plan.judgement().reason(conclusion).arguments().stream()
                .map(Reason.Argument::ruleId)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private interface Telling {
        PlanLine of(String label, Conclusion conclusion);
    }

    private void told(String label, String opening, List<Conclusion> conclusions, Telling telling) {
        for (int i = 0; i < Math.min(conclusions.size(), MOST_TOLD); i++) {
            lines.add(telling.of(label + (i + 1), conclusions.get(i)));
        }
        if (conclusions.size() > MOST_TOLD) {
            add(label + "more", opening + (conclusions.size() - MOST_TOLD) + " more of the kind.");
        }
    }

    private PlanLine gained(String label, Conclusion conclusion) {
        Reason.Concluded reason = after.judgement().reason(conclusion);
        return new PlanLine(label, Section.STRIPS, "Then: " + reason.statement() + ".", reason);
    }

    /** What held, why it did, and what each of its rules asks in vain afterwards. */
    private PlanLine lost(String label, Conclusion conclusion) {
        Reason.Concluded reason = before.judgement().reason(conclusion);
        return objected.gone(label, reason, rules(before, conclusion), conclusion);
    }

    private PlanLine stillBut(String label, Conclusion conclusion) {
        Reason.Concluded reason = after.judgement().reason(conclusion);
        String text = "Still: " + reason.statement() + ", though by " + named(rules(after, conclusion)) + " and not by "
                + named(rules(before, conclusion)) + ".";
        return new PlanLine(label, Section.STRIPS, text, reason);
    }

    private static String named(Set<String> rules) {
        return (rules.size() == 1 ? "rule " : "rules ") + Words.joined(List.copyOf(rules));
    }

    private void add(String label, String text) {
        lines.add(new PlanLine(label, Section.STRIPS, text, new Reason.Chosen(text, List.of(), List.of())));
    }

    /** What is concluded about an eluent that somebody ran or that a plan pours, advice and cautions left out. */
    private boolean isToTheQuestion(Conclusion conclusion) {
        if (conclusion instanceof Conclusion.Behaves behaves) {
            return interests(behaves.eluent());
        } else if (conclusion instanceof Conclusion.Between between) {
            return interests(between.eluent());
        } else if (conclusion instanceof Conclusion.LeavesBefore leaves) {
            return interests(leaves.eluent());
        } else if (conclusion instanceof Conclusion.Fitness fitness) {
            return interests(fitness.eluent());
        } else if (conclusion instanceof Conclusion.Holds holds) {
            return interests(holds.eluent());
        } else if (conclusion instanceof Conclusion.Releases releases) {
            return interests(releases.eluent());
        } else if (conclusion instanceof Conclusion.Sweeps sweeps) {
            return interests(sweeps.eluent());
        }
        return conclusion instanceof Conclusion.StripVerdict || conclusion instanceof Conclusion.SpotVerdict;
    }

    private boolean interests(Eluent eluent) {
        return Stream.of(before, after)
                .anyMatch(plan -> plan.judgement().tried(eluent)
                        || plan.route()
                                .flatMap(route -> route.steps().stream()
                                        .filter(step -> step.eluent().equals(eluent))
                                        .findFirst())
                                .isPresent());
    }

    /** Conclusions about a strip that was read otherwise count as the same when they say the same. */
    private static boolean saysTheSame(Conclusion conclusion, Judgement other, Judgement own) {
        return other.holds(conclusion)
                || other.reasons().values().stream().anyMatch(reason -> reason.statement()
                        .equals(own.reason(conclusion).statement()));
    }
}
