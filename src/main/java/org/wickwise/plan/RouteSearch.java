package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * Finds the best route exactly: over every set of dyes that may still be on the column and every eluent poured last,
 * the best way on is worked out once. Every criterion adds up over the steps, so the best way on does not depend on
 * how the set came about. A single step that brings everything off in one fraction parts nothing and is no route.
 */
final class RouteSearch {

    private final Judgement judgement;
    private final List<Dye> dyes;
    private final List<Eluent> eluents;
    private final List<Criterion> criteria;
    private final Burden burden;
    private final Supply supply;
    private final boolean stocked;
    private final Map<State, Optional<Route>> bestFrom = new HashMap<>();
    private final Map<State, Optional<Step>> stepInto = new HashMap<>();
    private final Set<Conclusion.LeavesBefore> leavesBefore;
    private final Set<Conclusion.MayNotFollow> mayNotFollow;
    private final Map<Dye, Map<Eluent, Conclusion.Behaves>> behaviours = new HashMap<>();

    /** @param dyes still on the column, one bit each */
    private record State(int dyes, Optional<Eluent> last) {}

    /** @param stocked whether a step may take more than the bottles hold; it may not when this is true */
    RouteSearch(Judgement judgement, List<Criterion> criteria, Burden burden, Set<Eluent> forbidden, boolean stocked) {
        this.judgement = judgement;
        this.dyes = judgement.judged().dyes();
        this.criteria = criteria;
        this.burden = burden;
        this.supply = new Supply(judgement);
        this.stocked = stocked;
        this.leavesBefore = Set.copyOf(judgement.all(Conclusion.LeavesBefore.class));
        this.mayNotFollow = Set.copyOf(judgement.all(Conclusion.MayNotFollow.class));
        judgement.all(Conclusion.Behaves.class).forEach(behaves -> behaviours
                .computeIfAbsent(behaves.dye(), any -> new HashMap<>())
                .put(behaves.eluent(), behaves));
        this.eluents = judgement.eluents().stream()
                .filter(eluent -> !forbidden.contains(eluent))
                .filter(eluent -> !judgement.holds(new Conclusion.Fitness(eluent, Fit.UNFIT)))
                .toList();
    }

    /** The best route; empty when no order of eluents brings every dye off. */
    Optional<Route> best() {
        return from(new State((1 << dyes.size()) - 1, Optional.empty()));
    }

    private Optional<Route> from(State state) {
        if (state.dyes() == 0) {
            return Optional.of(
                    new Route(List.of(), criteria.stream().map(any -> 0.0).toList()));
        }
        Optional<Route> known = bestFrom.get(state);
        if (known == null) {
            known = eluents.stream()
                    .filter(eluent -> mayFollow(state.last(), eluent))
                    .flatMap(eluent -> continued(state, eluent).stream())
                    .min(Comparator.naturalOrder());
            bestFrom.put(state, known);
        }
        return known;
    }

    private boolean mayFollow(Optional<Eluent> last, Eluent next) {
        return last.isEmpty()
                || !last.get().equals(next) && !mayNotFollow.contains(new Conclusion.MayNotFollow(last.get(), next));
    }

    private Optional<Route> continued(State state, Eluent eluent) {
        Optional<Step> step =
                stepInto.computeIfAbsent(new State(state.dyes(), Optional.of(eluent)), key -> step(key.dyes(), eluent));
        if (step.isEmpty()) {
            return Optional.empty();
        }
        boolean last = step.get().staying().isEmpty();
        boolean partsNothing =
                state.last().isEmpty() && last && step.get().fractions().size() == 1;
        if (partsNothing) {
            return Optional.empty();
        }
        if (!last && judgement.holds(new Conclusion.Fitness(eluent, Fit.LAST_ONLY))) {
            return Optional.empty();
        }
        return from(new State(bits(step.get().staying()), Optional.of(eluent)))
                .map(rest -> joined(step.get(), state.last(), rest));
    }

    private Route joined(Step step, Optional<Eluent> before, Route rest) {
        List<Step> steps = new ArrayList<>(List.of(step));
        steps.addAll(rest.steps());
        List<Double> counts = new ArrayList<>();
        for (int i = 0; i < criteria.size(); i++) {
            counts.add(criteria.get(i).count(step, before, judgement, burden)
                    + rest.counts().get(i));
        }
        return new Route(steps, counts);
    }

    /** What the eluent does to these dyes; empty when it moves none, or smears what moves into what stays. */
    private Optional<Step> step(int on, Eluent eluent) {
        List<Dye> leaving = new ArrayList<>();
        List<Dye> staying = new ArrayList<>();
        for (Dye dye : dyes) {
            if ((on & bits(List.of(dye))) == 0) {
                continue;
            }
            Conclusion.Behaves behaves = behaviours.getOrDefault(dye, Map.of()).get(eluent);
            if (behaves == null) {
                return Optional.empty();
            }
            (behaves.leaves() ? leaving : staying).add(dye);
        }
        boolean clean = leaving.stream()
                .allMatch(first -> staying.stream().allMatch(second -> isBefore(eluent, first, second)));
        if (leaving.isEmpty() || !clean) {
            return Optional.empty();
        }
        Step step = new Step(eluent, fractions(eluent, leaving), staying);
        return stocked && !supply.isEnoughFor(step) ? Optional.empty() : Optional.of(step);
    }

    private List<List<Dye>> fractions(Eluent eluent, List<Dye> leaving) {
        List<List<Dye>> fractions = new ArrayList<>();
        for (Dye dye : leaving) {
            List<Dye> merged = new ArrayList<>(List.of(dye));
            List<List<Dye>> near = fractions.stream()
                    .filter(fraction -> fraction.stream()
                            .anyMatch(other -> !isBefore(eluent, dye, other) && !isBefore(eluent, other, dye)))
                    .toList();
            near.forEach(merged::addAll);
            fractions.removeAll(near);
            merged.sort(Comparator.naturalOrder());
            fractions.add(merged);
        }
        fractions.sort(Comparator.comparingLong((List<Dye> fraction) -> fractions.stream()
                        .filter(other -> isBefore(eluent, other.get(0), fraction.get(0)))
                        .count())
                .thenComparing(fraction -> fraction.get(0)));
        return fractions;
    }

    private boolean isBefore(Eluent eluent, Dye first, Dye second) {
        return leavesBefore.contains(new Conclusion.LeavesBefore(eluent, first, second));
    }

    private int bits(List<Dye> some) {
        return some.stream().mapToInt(dye -> 1 << dyes.indexOf(dye)).sum();
    }
}
