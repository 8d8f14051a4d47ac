package org.wickwise.why;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.wickwise.plan.Route;
import org.wickwise.plan.Step;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.rulebook.Conclusion.LeavesBefore;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** The judgements of readings that a route rests on: what each dye does in what is poured on it, and which dyes part. */
final class PlanGrounds {

    private final Judgement judgement;
    private final Set<Conclusion> conclusions = new LinkedHashSet<>();

    private PlanGrounds(Judgement judgement) {
        this.judgement = judgement;
    }

    static List<Conclusion> of(Route route, Judgement judgement) {
        PlanGrounds grounds = new PlanGrounds(judgement);
        grounds.behaviours(judgement.judged().dyes(), route.packing().packing());
        for (Step step : route.steps()) {
            grounds.behaviours(step.leaving(), step.eluent());
            grounds.behaviours(step.staying(), step.eluent());
            grounds.partings(step);
        }
        return List.copyOf(grounds.conclusions);
    }

    private void behaviours(List<Dye> dyes, Eluent eluent) {
        dyes.forEach(dye -> judgement.behaviour(dye, eluent).ifPresent(conclusions::add));
    }

    /** What leaves is parted from what stays and from what leaves after it, where the step counts on it. */
    private void partings(Step step) {
        for (Dye first : step.leaving()) {
            for (Dye second : judgement.judged().dyes()) {
                Between parted = new Between(step.eluent(), first, second, Separation.PARTED);
                boolean isUsed = judgement.holds(new LeavesBefore(step.eluent(), first, second))
                        && (step.leaving().contains(second) || step.staying().contains(second));
                if (isUsed && judgement.holds(parted)) {
                    conclusions.add(parted);
                }
            }
        }
    }
}
