package org.wickwise.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.wickwise.Benchmarks;
import org.wickwise.plan.Choices.Pourable;

/**
 * The search for the best plan over everything that may be poured. Trying everything is not run but counted: how many
 * steps it would follow, without those of bottles that are too empty.
 */
@State(Scope.Benchmark)
public class SearchBenchmark {

    private static final double LEAST_SAVING = 100;

    @Param({"2", "4", "8"})
    private int dyes;

    @Param({"10", "20", "40"})
    private int solvents;

    private Choices choices;
    private Preferences preferences;

    /** Dyes still on the column and what was poured last. */
    private record OnBed(int on, int last) {}

    @Setup
    public void countTheSteps() {
        choices = new NeutralMixture(dyes, solvents).choices();
        preferences = NeutralMixture.preferences();
        RouteSearch search = new RouteSearch(choices, preferences, Set.of(), false, 1);
        Optional<Route> best = search.best();
        double everything = stepsOfTryingEverything();
        Benchmarks.note(
                "%d dyes, %d solvents, %d eluents with their blends: %s; %d steps followed, trying everything follows %s",
                dyes,
                solvents,
                choices.pourable().size(),
                best.map(route -> route.steps().size() + " steps in the best plan")
                        .orElse("no plan"),
                search.stepsTried(),
                BigDecimal.valueOf(everything).round(new MathContext(2)).toEngineeringString());
        if (dyes == 8 && solvents == 40 && everything < LEAST_SAVING * search.stepsTried()) {
            throw new IllegalStateException("the search followed " + search.stepsTried() + " steps, trying everything "
                    + everything + "; expected at least " + LEAST_SAVING + " times as many");
        }
    }

    @Benchmark
    public Optional<Route> search() {
        return new RouteSearch(choices, preferences, Set.of(), false, 1).best();
    }

    private double stepsOfTryingEverything() {
        Map<OnBed, Double> known = new HashMap<>();
        double steps = 0;
        for (int eluent = 0; eluent < choices.pourable().size(); eluent++) {
            Pourable first = choices.pourable().get(eluent);
            steps += first.packings().size() * stepsInto(choices.everyDye(), eluent, known);
        }
        return steps;
    }

    /** This step with each tail, and every step that may follow it. */
    private double stepsInto(int on, int eluent, Map<OnBed, Double> known) {
        Optional<Move> move = Move.of(on, eluent, choices);
        if (move.isEmpty()
                || choices.pourable().get(eluent).lastOnly() && move.get().staying() != 0) {
            return 0;
        }
        int tails = preferences.wishes().tailsToWaitFor().size();
        return tails * (1 + stepsAfter(move.get().staying(), eluent, known));
    }

    private double stepsAfter(int on, int last, Map<OnBed, Double> known) {
        if (on == 0) {
            return 0;
        }
        OnBed state = new OnBed(on, last);
        Double sum = known.get(state);
        if (sum == null) {
            sum = 0.0;
            for (int next = 0; next < choices.pourable().size(); next++) {
                if (next != last && !choices.pourable().get(next).notAfter().get(last)) {
                    sum += stepsInto(on, next, known);
                }
            }
            known.put(state, sum);
        }
        return sum;
    }
}
