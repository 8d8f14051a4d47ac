package org.wickwise.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** What held before, by the statement that takes its place. */
    private final Map<String, Reason.Concluded> replaced = new HashMap<>();

    /** The label under which what these rules say was told. */
    private final Map<Set<String>, String> explained = new HashMap<>();

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
        String doubt = after.guess().map(guess -> " " + guess).orElse("");
        String text = same
                ? "The plan stays: " + was + "." + doubt
                : doubt.isEmpty()
                        ? "The plan would be: " + would + "; it was: " + was + "."
                        : "The plan would be: " + would + "." + doubt + " It was: " + was + ".";
        List<Reason> grounds =
                after.linesIn(Section.VERDICT).stream().map(PlanLine::reason).toList();
        lines.add(new PlanLine("plan", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private void conclusions() {
        List<Conclusion> gained = onlyIn(after.judgement(), before.judgement());
        List<Conclusion> lost = onlyIn(before.judgement(), after.judgement()).stream()
                .filter(conclusion -> !isReplaced(conclusion, gained))
                .toList();
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

    /** What is concluded, in the place of what, and why where it takes the place of something. */
    private PlanLine gained(String label, Conclusion conclusion) {
        Reason.Concluded reason = after.judgement().reason(conclusion);
        Optional<String> taken = takenAway(conclusion);
        Optional<Reason.Concluded> instead = Optional.ofNullable(replaced.get(reason.statement()));
        String text = "Then: " + reason.statement() + taken.orElse("")
                + instead.map(held -> " (before: " + held.statement() + ")").orElse("") + "."
                + (instead.isPresent() && taken.isEmpty() ? because(label, conclusion, reason) : "");
        return new PlanLine(label, Section.STRIPS, text, reason);
    }

    /** What its rules say, told once of the same rules. */
    private String because(String label, Conclusion conclusion, Reason.Concluded reason) {
        String first = explained.putIfAbsent(rules(after, conclusion), label);
        return first == null ? " " + Told.becauses(reason) : " For the same reason as `" + first + "`.";
    }

    /** What held, why it did, and what each of its rules asks in vain afterwards. */
    private PlanLine lost(String label, Conclusion conclusion) {
        Reason.Concluded reason = before.judgement().reason(conclusion);
        return objected.gone(label, reason, rules(before, conclusion), conclusion, takenAway(conclusion));
    }

    /** Whether nothing but conclusions that come rule it out; what they take the place of is told with them. */
    private boolean isReplaced(Conclusion conclusion, List<Conclusion> gained) {
        Set<String> coming = gained.stream()
                .map(one -> after.judgement().reason(one).statement())
                .collect(Collectors.toSet());
        List<Reason> inTheWay = objected.onlyRuledOutBy(conclusion, rules(before, conclusion));
        List<String> statements = inTheWay.stream().map(Reason::statement).toList();
        if (statements.isEmpty() || !coming.containsAll(statements)) {
            return false;
        }
        statements.forEach(
                statement -> replaced.put(statement, before.judgement().reason(conclusion)));
        return true;
    }

    /** That a bottle which the eluent needs was taken away, where that makes the eluent unfit. */
    private Optional<String> takenAway(Conclusion conclusion) {
        return about(conclusion)
                .filter(eluent -> after.judgement().holds(new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT))
                        && !before.judgement().holds(new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT)))
                .flatMap(eluent -> before.judged().shelf().bottles().stream()
                        .filter(bottle -> !after.judged().shelf().bottles().contains(bottle))
                        .filter(bottle ->
                                bottle.contents().parts().stream().anyMatch(part -> eluent.contains(part.solvent())))
                        .findFirst())
                .map(bottle -> ", because the bottle " + bottle.name() + " was taken away");
    }

    private PlanLine stillBut(String label, Conclusion conclusion) {
        Reason.Concluded reason = after.judgement().reason(conclusion);
        Set<String> were = rules(before, conclusion);
        Set<String> are = rules(after, conclusion);
        Set<String> silent = without(were, are);
        Set<String> further = without(are, were);
        String how = silent.isEmpty()
                ? ", and " + named(further) + (further.size() == 1 ? " says" : " say") + " so too"
                : further.isEmpty()
                        ? " by " + named(are) + "; " + named(silent) + (silent.size() == 1 ? " falls" : " fall")
                                + " silent"
                        : ", by " + named(further) + " instead of " + named(silent);
        return new PlanLine(label, Section.STRIPS, "Still: " + reason.statement() + how + ".", reason);
    }

    private static Set<String> without(Set<String> rules, Set<String> others) {
        Set<String> rest = new TreeSet<>(rules);
        rest.removeAll(others);
        return rest;
    }

    private static String named(Set<String> rules) {
        return (rules.size() == 1 ? "rule " : "rules ") + Words.joined(List.copyOf(rules));
    }

    private void add(String label, String text) {
        lines.add(new PlanLine(label, Section.STRIPS, text, new Reason.Chosen(text, List.of(), List.of())));
    }

    /** What is concluded about an eluent that somebody ran or that a plan pours, advice and cautions left out. */
    private boolean isToTheQuestion(Conclusion conclusion) {
        return about(conclusion)
                .map(this::interests)
                .orElseGet(() ->
                        conclusion instanceof Conclusion.StripVerdict || conclusion instanceof Conclusion.SpotVerdict);
    }

    private static Optional<Eluent> about(Conclusion conclusion) {
        if (conclusion instanceof Conclusion.Behaves behaves) {
            return Optional.of(behaves.eluent());
        } else if (conclusion instanceof Conclusion.Between between) {
            return Optional.of(between.eluent());
        } else if (conclusion instanceof Conclusion.LeavesBefore leaves) {
            return Optional.of(leaves.eluent());
        } else if (conclusion instanceof Conclusion.Fitness fitness) {
            return Optional.of(fitness.eluent());
        } else if (conclusion instanceof Conclusion.Holds holds) {
            return Optional.of(holds.eluent());
        } else if (conclusion instanceof Conclusion.Releases releases) {
            return Optional.of(releases.eluent());
        } else if (conclusion instanceof Conclusion.Sweeps sweeps) {
            return Optional.of(sweeps.eluent());
        }
        return Optional.empty();
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
