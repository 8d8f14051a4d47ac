package org.wickwise.why;

import java.util.Map;
import java.util.Optional;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** Something that somebody wishes were so. */
public sealed interface Aim {

    /** "E holds the load", as a person says it. */
    String words();

    boolean isMet(Judgement judgement, Planner planner);

    /** The eluent that the rules say this of, and what they say; empty where the aim is about the plan. */
    default Optional<Map.Entry<Eluent, Conclusion>> saidOf() {
        return Optional.empty();
    }

    /** That the rules conclude something. */
    record Concluded(Eluent eluent, Conclusion conclusion, String words) implements Aim {
        @Override
        public boolean isMet(Judgement judgement, Planner planner) {
            return judgement.holds(conclusion);
        }

        @Override
        public Optional<Map.Entry<Eluent, Conclusion>> saidOf() {
            return Optional.of(Map.entry(eluent, conclusion));
        }
    }

    /** That an eluent may enter the column, as the last step or at any. */
    record MayEnter(Eluent eluent) implements Aim {
        @Override
        public String words() {
            return eluent + " may enter the column";
        }

        @Override
        public boolean isMet(Judgement judgement, Planner planner) {
            return !judgement.holds(new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT))
                    && judgement.eluents().contains(eluent);
        }

        @Override
        public Optional<Map.Entry<Eluent, Conclusion>> saidOf() {
            return Optional.of(Map.entry(eluent, new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT)));
        }
    }

    /** That the best plan pours an eluent. */
    record PlanPours(Eluent eluent) implements Aim {
        @Override
        public String words() {
            return "the plan pours " + eluent;
        }

        @Override
        public boolean isMet(Judgement judgement, Planner planner) {
            return planner.route(judgement).stream()
                    .flatMap(route -> route.steps().stream())
                    .anyMatch(step -> step.eluent().equals(eluent));
        }
    }

    /** That there is a sound plan. */
    record SomePlan() implements Aim {
        @Override
        public String words() {
            return "there is a plan";
        }

        @Override
        public boolean isMet(Judgement judgement, Planner planner) {
            return planner.route(judgement).isPresent();
        }
    }

    /** That by the best plan a dye leaves in a fraction of its own. */
    record LeavesAlone(Dye dye) implements Aim {
        @Override
        public String words() {
            return dye + " leaves alone";
        }

        @Override
        public boolean isMet(Judgement judgement, Planner planner) {
            Optional<Route> route = planner.route(judgement);
            return route.stream()
                    .flatMap(found -> found.steps().stream())
                    .flatMap(step -> step.fractions().stream())
                    .anyMatch(fraction -> fraction.size() == 1 && fraction.contains(dye));
        }
    }
}
