package org.wickwise.lesson;

import java.util.List;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;

/**
 * The ways of many groups that ran much the same strips. One case stays laid out and takes the readings of group after group, so
 * that what is known of the solvents is laid before the rules once. Such a plan has a way and no lines; where a group has
 * no way, or should run a strip, its plan is made anew with all its lines and reasons. Not for several threads.
 */
public final class BriefPlans implements AutoCloseable {

    private final Judge judge;
    private final Planner planner;
    private Optional<LaidOutCase> laidOut = Optional.empty();

    public BriefPlans(Judge judge, Planner planner) {
        this.judge = judge;
        this.planner = planner;
    }

    /** @throws org.wickwise.text.ProblemsFound when strips that should agree contradict each other */
    public Plan of(Case written) {
        Judgement judgement = judged(written);
        Optional<Route> route = planner.route(judgement);
        boolean hasSomethingToSay = route.isEmpty() || planner.asksForStrips(judgement, route);
        return hasSomethingToSay ? planner.plan(judge.judge(written)) : new Plan(judgement, route, List.of());
    }

    private Judgement judged(Case written) {
        try {
            if (laidOut.isEmpty()) {
                laidOut = Optional.of(judge.layOut(written));
            }
            return laidOut.get().suppose(written, judge.rulebook().limits());
        } catch (RuntimeException broken) {
            close();
            throw broken;
        }
    }

    /** Forgets what is laid out; it is laid out anew when it is wanted again. */
    @Override
    public void close() {
        laidOut.ifPresent(LaidOutCase::close);
        laidOut = Optional.empty();
    }
}
