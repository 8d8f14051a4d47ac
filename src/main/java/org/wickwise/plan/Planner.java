package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.Eluent;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.Words;

/** Makes the plan for a judged case: the best route, what it is packed with, and the lines a person reads. */
public final class Planner {

    private final List<Criterion> criteria;
    private final Burden burden;
    private final List<String> topics;

    /** @throws ProblemsFound when the preferences name an unknown criterion */
    public Planner(Rulebook rulebook) {
        this.criteria = criteria(rulebook.preferences());
        this.burden = new Burden(rulebook.burdenOfRanking());
        this.topics = rulebook.topics();
    }

    public Plan plan(Judgement judgement) {
        Optional<Route> best = search(judgement, Set.of());
        List<PlanLine> lines = new ArrayList<>();
        Optional<MayPack> packing =
                best.flatMap(route -> packing(judgement, route.steps().get(0).eluent()));
        if (best.isPresent() && packing.isPresent()) {
            lines.addAll(new RouteLines(judgement, best.get(), packing.get()).lines());
            lines.addAll(choiceLines(judgement, best.get()));
        } else {
            lines.addAll(new RefusalLines(judgement).lines());
        }
        Optional<Eluent> packedWith = packing.map(MayPack::packing);
        Optional<Route> plentiful = new RouteSearch(judgement, criteria, burden, Set.of(), false).best();
        lines.addAll(new ShelfLines(judgement).lines(best, packedWith, plentiful));
        lines.addAll(new StripLines(judgement).lines());
        lines.addAll(new FootingLines(judgement, best, poured(best, packedWith)).lines());
        lines.addAll(new AdviceLines(judgement, best, packedWith, topics).lines());
        lines.sort(Comparator.comparing(PlanLine::section));
        return new Plan(judgement, packing.isPresent() ? best : Optional.empty(), packedWith, lines);
    }

    /** Everything that goes through the column. */
    static Set<Eluent> poured(Optional<Route> route, Optional<Eluent> packing) {
        Set<Eluent> poured = new TreeSet<>();
        route.ifPresent(found -> found.steps().forEach(step -> poured.add(step.eluent())));
        packing.ifPresent(poured::add);
        return poured;
    }

    private Optional<Route> search(Judgement judgement, Set<Eluent> forbidden) {
        return new RouteSearch(judgement, criteria, burden, forbidden, true).best();
    }

    /** The best-backed packing before this first eluent: seen before reckoned, light before burdensome. */
    private Optional<MayPack> packing(Judgement judgement, Eluent first) {
        return judgement.all(MayPack.class).stream()
                .filter(may -> may.first().equals(first))
                .min(Comparator.comparing(MayPack::kind)
                        .thenComparing(may -> !judgement.tried(may.packing()))
                        .thenComparing(may -> burden.of(may.packing()))
                        .thenComparing(MayPack::packing));
    }

    /** One line for each step: the best route without its eluent, and what that is worse at. */
    private List<PlanLine> choiceLines(Judgement judgement, Route best) {
        List<PlanLine> lines = new ArrayList<>();
        for (Step step : best.steps()) {
            Optional<Route> other = search(judgement, Set.of(step.eluent()));
            String comparison = other.map(route -> comparison(best, route))
                    .orElse("without " + step.eluent() + " no order of eluents brings every dye off");
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

    private String comparison(Route best, Route other) {
        int difference = best.firstDifference(other);
        String over = "chosen over " + other.names();
        if (difference < 0) {
            return over + ", which is just as good by every criterion; the first name in the alphabet decided";
        }
        return over + ", which counts more " + criteria.get(difference).words() + " ("
                + Numbers.plain(other.counts().get(difference), 1) + " against "
                + Numbers.plain(best.counts().get(difference), 1) + ")";
    }

    private static List<Criterion> criteria(List<String> preferences) {
        Problems problems = new Problems();
        List<Criterion> criteria = new ArrayList<>();
        for (String words : preferences) {
            Criterion.named(words)
                    .ifPresentOrElse(
                            criteria::add,
                            () -> problems.add(
                                    Place.wholeFile("rules/preferences.yaml"),
                                    "`" + words + "` is no criterion",
                                    "one of: " + String.join("; ", Criterion.allWords()),
                                    NearMiss.suggestion(words, Criterion.allWords())));
        }
        problems.throwIfAny();
        return List.copyOf(criteria);
    }
}
