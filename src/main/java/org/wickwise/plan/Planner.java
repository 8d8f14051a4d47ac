package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.OwnRules;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.strip.BlendWishes;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Makes the plan for a judged case: the best route, what it is packed with, and the lines a person reads. */
public final class Planner {

    private static final int WANTED = 1;

    private final Preferences preferences;
    private final Burden burden;
    private final List<String> topics;
    private final ColumnSizes columnSizes;
    private final BlendWishes blends;
    private final OwnRules own;

    /** @throws org.wickwise.text.ProblemsFound when the preferences name an unknown criterion */
    public Planner(Rulebook rulebook) {
        this.preferences = Preferences.of(rulebook);
        this.burden = new Burden(rulebook.wishes().burdenOfRanking());
        this.topics = rulebook.topics();
        this.columnSizes = rulebook.columnSizes();
        this.blends = rulebook.blends();
        this.own = rulebook.own();
    }

    /** The best route of a judged case; empty when none is sound. */
    public Optional<Route> route(Judgement judgement) {
        return best(ChoicesOfCase.of(judgement, burden, columnSizes), Set.of(), true);
    }

    /** Whether a plan would say which strip to run next; asks no reason of the judgement. */
    public boolean asksForStrips(Judgement judgement, Optional<Route> route) {
        List<Dye> overlapping = overlapping(keeping(judgement, route), judgement);
        return new AdviceLines(judgement, route, overlapping, topics).asksForStrips()
                || !new BlendLines(judgement, route, overlapping, blends)
                        .lines()
                        .isEmpty();
    }

    public Plan plan(Judgement judgement) {
        Choices choices = ChoicesOfCase.of(judgement, burden, columnSizes);
        Optional<Route> route = best(choices, Set.of(), true);
        Optional<Keeping> keeping = keeping(judgement, route);
        List<Dye> overlapping = overlapping(keeping, judgement);
        List<PlanLine> lines = new ArrayList<>();
        if (route.isPresent()) {
            lines.addAll(new RouteLines(judgement, route.get(), keeping.orElseThrow(), columnSizes).lines());
            lines.addAll(new ColumnLines(judgement, route.get(), columnSizes).lines());
            lines.addAll(choiceLines(judgement, choices, route.get()));
        } else {
            lines.addAll(new RefusalLines(judgement).lines());
        }
        lines.addAll(new ShelfLines(judgement).lines(route, best(choices, Set.of(), false)));
        lines.addAll(new StripLines(judgement).lines());
        lines.addAll(new FootingLines(judgement, route).lines());
        lines.addAll(new DoubtLines(judgement, route).lines());
        lines.addAll(new OwnRulesLines(own, judgement).lines());
        lines.addAll(new AdviceLines(judgement, route, overlapping, topics).lines());
        lines.addAll(new BlendLines(judgement, route, overlapping, blends).lines());
        lines.sort(Comparator.comparing(PlanLine::section));
        return new Plan(judgement, route, lines);
    }

    private static Optional<Keeping> keeping(Judgement judgement, Optional<Route> route) {
        return route.map(found -> Keeping.of(found, judgement));
    }

    private static List<Dye> overlapping(Optional<Keeping> keeping, Judgement judgement) {
        return keeping.map(kept -> kept.overlapping(judgement)).orElse(List.of());
    }

    private Optional<Route> best(Choices choices, Set<Eluent> forbidden, boolean stocked) {
        return new RouteSearch(choices, preferences, forbidden, stocked, WANTED).best();
    }

    /** One line for each step: the best route without its eluent, and what that is worse at. */
    private List<PlanLine> choiceLines(Judgement judgement, Choices choices, Route best) {
        List<PlanLine> lines = new ArrayList<>();
        for (Step step : best.steps()) {
            Optional<Route> other = best(choices, Set.of(step.eluent()), true);
            String comparison = other.map(route -> comparison(best, route))
                    .orElse("without " + step.eluent()
                            + " no order of eluents parts the dyes and brings every one of them off");
            List<Reason> grounds = new ArrayList<>();
            step.leaving().forEach(dye -> judgement
                    .behaviour(dye, step.eluent())
                    .ifPresent(behaves -> grounds.add(judgement.reason(behaves))));
            String text = "Chosen: " + best.names() + "; " + comparison + ".";
            lines.add(new PlanLine(
                    "choice-" + (lines.size() + 1),
                    Section.CHOICE,
                    Words.capital(comparison) + ".",
                    new Reason.Chosen(text, List.of(comparison), grounds)));
        }
        return lines;
    }

    /** What else could be poured in a judged case. */
    public Alternatives alternatives(Judgement judgement) {
        return new Alternatives(ChoicesOfCase.of(judgement, burden, columnSizes), preferences);
    }

    private String comparison(Route best, Route other) {
        return "chosen over " + other.names() + ", " + worseBy(best, other);
    }

    /** What one route is better at than another; empty when it is no better by any criterion. */
    public Optional<Advantage> advantage(Route one, Route other) {
        int difference = one.firstDifference(other);
        if (difference < 0 || one.compareTo(other) > 0) {
            return Optional.empty();
        }
        Criterion criterion = preferences.criteria().get(difference);
        return Optional.of(new Advantage(
                criterion.words(),
                one.counted().get(difference),
                other.counted().get(difference),
                criterion == Criterion.COST));
    }

    /** "which counts more steps (3 against 2)": what the other route is worse at. */
    public String worseBy(Route best, Route other) {
        int difference = best.firstDifference(other);
        if (difference < 0) {
            return "which is just as good by every criterion; the first name in the alphabet decided";
        }
        Criterion criterion = preferences.criteria().get(difference);
        String figures = Numbers.plain(other.counted().get(difference), 1) + " against "
                + Numbers.plain(best.counted().get(difference), 1);
        return criterion == Criterion.COST
                ? "which costs more (" + figures + "): " + other.cost().against(best.cost())
                : "which counts more " + criterion.words() + " (" + figures + ")";
    }
}
