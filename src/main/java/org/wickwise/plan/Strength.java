package org.wickwise.plan;

import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** Which of two eluents is stronger for the dyes at hand, as the strips show it. */
final class Strength {

    private Strength() {}

    /** Whether no dye moves more in the first than in the second, and some dye moves less. */
    static boolean weakerByStrips(Eluent weak, Eluent strong, Judgement judgement) {
        boolean someLess = false;
        for (Dye dye : judgement.judged().dyes()) {
            int less = compare(dye, weak, strong, judgement);
            if (less > 0) {
                return false;
            }
            someLess |= less < 0;
        }
        return someLess;
    }

    private static int compare(Dye dye, Eluent one, Eluent other, Judgement judgement) {
        var inOne = judgement.measured(dye, one);
        var inOther = judgement.measured(dye, other);
        if (inOne.isPresent() && inOther.isPresent()) {
            boolean apart = inOne.get().highest() < inOther.get().lowest()
                    || inOther.get().highest() < inOne.get().lowest();
            return apart ? Double.compare(inOne.get().value(), inOther.get().value()) : 0;
        }
        return judgement
                .behaviour(dye, one)
                .flatMap(first ->
                        judgement.behaviour(dye, other).map(second -> compare(first.behaviour(), second.behaviour())))
                .orElse(0);
    }

    private static int compare(Behaviour one, Behaviour other) {
        return one.compareTo(other);
    }
}
