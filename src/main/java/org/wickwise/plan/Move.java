package org.wickwise.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;

/**
 * One eluent poured onto a column that still holds some dyes; sets of dyes as bits.
 *
 * @param eluent its number among the choices
 * @param fractions what leaves, in the order of leaving; dyes that leave together share a fraction
 * @param staying what is still on the column afterwards
 */
record Move(int eluent, List<Integer> fractions, int staying) {

    Move {
        fractions = List.copyOf(fractions);
    }

    int leaving() {
        return fractions.stream().reduce(0, (one, other) -> one | other);
    }

    Pourable pourable(Choices choices) {
        return choices.pourable().get(eluent);
    }

    /** What the eluent does with each dye that leaves. */
    Stream<Reach> leavingReach(Choices choices) {
        int leaving = leaving();
        return IntStream.range(0, choices.dyes().size())
                .filter(dye -> (leaving & 1 << dye) != 0)
                .mapToObj(dye -> pourable(choices).reach().get(dye))
                .flatMap(Optional::stream);
    }

    /** What the eluent does to these dyes; empty when it moves none, or smears what moves into what stays. */
    static Optional<Move> of(int on, int eluent, Choices choices) {
        Pourable pourable = choices.pourable().get(eluent);
        int leaving = 0;
        for (int dye = 0; dye < choices.dyes().size(); dye++) {
            if ((on & 1 << dye) != 0) {
                Optional<Reach> reach = pourable.reach().get(dye);
                if (reach.isEmpty()) {
                    return Optional.empty();
                }
                leaving |= reach.get().behaviour().leaves() ? 1 << dye : 0;
            }
        }
        int staying = on & ~leaving;
        if (leaving == 0 || !isClean(leaving, staying, pourable)) {
            return Optional.empty();
        }
        return Optional.of(new Move(eluent, Fractions.of(leaving, pourable), staying));
    }

    private static boolean isClean(int leaving, int staying, Pourable pourable) {
        for (int dye = 0; dye < pourable.leavesBefore().size(); dye++) {
            if ((leaving & 1 << dye) != 0 && (staying & ~pourable.leavesBefore().get(dye)) != 0) {
                return false;
            }
        }
        return true;
    }
}
