package org.wickwise.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Route;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;

/** What a supposition changes: the plan, and the conclusions that come and go, each with its reason. */
public final class Comparison {

    private static final int MOST_TOLD = 12;

    private final Plan before;
    private final Plan after;
    private final List<PlanLine> lines = new ArrayList<>();

    private Comparison(Plan before, Plan after) {
        this.before = before;
        this.after = after;
    }

    /** One line for each difference; a single line when there is none. */
    public static List<PlanLine> of(Plan before, Plan after) {
        Comparison comparison = new Comparison(before, after);
        comparison.plan();
        comparison.conclusions();
        return List.copyOf(comparison.lines);
    }

    private void plan() {
        String was = inShort(before.route());
        String would = inShort(after.route());
        boolean same = was.equals(would);
        String text = same ? "The plan stays: " + was + "." : "The plan would be: " + would + "; it was: " + was + ".";
        List<Reason> grounds =
                after.linesIn(Section.VERDICT).stream().map(PlanLine::reason).toList();
        lines.add(new PlanLine("plan", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private static String inShort(Optional<Route> route) {
        return route.map(found -> "pack with " + found.packing().packing() + ", then pour " + found.inShort())
                .orElse("no plan is sound");
    }

    private void conclusions() {
        Judgement old = before.judgement();
        Judgement now = after.judgement();
        List<Reason.Concluded> gained = onlyIn(now, old);
        List<Reason.Concluded> lost = onlyIn(old, now);
        told("new-", "Then: ", gained);
        told("gone-", "No longer: ", lost);
        if (gained.isEmpty() && lost.isEmpty()) {
            add("same", "Nothing else changes of what is concluded about the strips' eluents and the plan's.");
        }
    }

    /** What one judgement concludes and the other does not, each statement once. */
    private List<Reason.Concluded> onlyIn(Judgement own, Judgement other) {
        Map<String, Reason.Concluded> only = new LinkedHashMap<>();
        for (Conclusion conclusion : own.reasons().keySet()) {
            if (isToTheQuestion(conclusion) && !saysTheSame(conclusion, other, own)) {
                only.putIfAbsent(own.reason(conclusion).statement(), own.reason(conclusion));
            }
        }
        return List.copyOf(only.values());
    }

    private void told(String label, String opening, List<Reason.Concluded> reasons) {
        for (int i = 0; i < Math.min(reasons.size(), MOST_TOLD); i++) {
            lines.add(new PlanLine(
                    label + (i + 1), Section.STRIPS, opening + reasons.get(i).statement() + ".", reasons.get(i)));
        }
        if (reasons.size() > MOST_TOLD) {
            add(label + "more", opening + (reasons.size() - MOST_TOLD) + " more of the kind.");
        }
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
