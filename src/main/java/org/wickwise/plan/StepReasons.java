package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** What a step rests on, and what leaves and stays in words. */
final class StepReasons {

    private final Judgement judgement;

    StepReasons(Judgement judgement) {
        this.judgement = judgement;
    }

    static String leaving(Step step) {
        List<String> fractions = step.fractions().stream()
                .map(fraction -> names(fraction) + (fraction.size() > 1 ? " (together)" : ""))
                .toList();
        if (fractions.size() == 1) {
            return fractions.get(0) + (step.fractions().get(0).size() > 1 ? " leave" : " leaves");
        }
        return String.join(", then ", fractions) + " leave in that order";
    }

    static String staying(Step step) {
        return step.staying().isEmpty()
                ? "; nothing is left"
                : "; " + names(step.staying()) + (step.staying().size() == 1 ? " stays" : " stay") + " on the column";
    }

    Reason of(Step step) {
        List<Reason> grounds = new ArrayList<>();
        for (Dye dye : step.leaving()) {
            judgement.behaviour(dye, step.eluent()).ifPresent(behaves -> grounds.add(judgement.reason(behaves)));
        }
        for (Dye dye : step.staying()) {
            judgement.behaviour(dye, step.eluent()).ifPresent(behaves -> grounds.add(judgement.reason(behaves)));
        }
        for (Conclusion.LeavesBefore before : judgement.all(Conclusion.LeavesBefore.class)) {
            boolean here = before.eluent().equals(step.eluent())
                    && step.leaving().contains(before.first())
                    && (step.leaving().contains(before.second())
                            || step.staying().contains(before.second()));
            if (here) {
                grounds.add(judgement.reason(before));
            }
        }
        judgement.all(Conclusion.Between.class).stream()
                .filter(between -> between.eluent().equals(step.eluent())
                        && between.separation() != Conclusion.Separation.PARTED
                        && step.leaving().containsAll(List.of(between.ahead(), between.behind())))
                .map(judgement::reason)
                .forEach(grounds::add);
        judgement.all(Conclusion.DyeCaution.class).stream()
                .filter(caution ->
                        caution.eluent().equals(step.eluent()) && step.leaving().contains(caution.dye()))
                .map(judgement::reason)
                .forEach(grounds::add);
        fitness(step.eluent()).ifPresent(grounds::add);
        judgement.judged().dyes().stream()
                .filter(dye -> !dye.note().isEmpty())
                .filter(dye -> step.leaving().contains(dye) || step.staying().contains(dye))
                .forEach(dye -> grounds.add(dye.stated()));
        String statement = step.eluent() + ": " + leaving(step) + staying(step);
        return new Reason.Chosen(statement, List.of(), grounds);
    }

    boolean restsOnEstimate(Step step) {
        return step.leaving().stream()
                .flatMap(dye -> judgement.behaviour(dye, step.eluent()).stream())
                .anyMatch(behaves -> behaves.basis() == Conclusion.Basis.ESTIMATED);
    }

    private Optional<Reason> fitness(Eluent eluent) {
        return judgement
                .first(Conclusion.Fitness.class, fitness -> fitness.eluent().equals(eluent))
                .map(judgement::reason);
    }

    private static String names(List<Dye> dyes) {
        return Words.joined(dyes.stream().map(Dye::name).toList());
    }
}
