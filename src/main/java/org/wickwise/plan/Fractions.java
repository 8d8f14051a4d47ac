package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wickwise.plan.Choices.Pourable;

/** Sorts the dyes that leave in one eluent into fractions: what does not part shares one. Sets of dyes as bits. */
final class Fractions {

    private Fractions() {}

    /** In the order of leaving. */
    static List<Integer> of(int leaving, Pourable pourable) {
        List<Integer> fractions = new ArrayList<>();
        for (int dye = 0; dye < pourable.leavesBefore().size(); dye++) {
            if ((leaving & 1 << dye) != 0) {
                add(dye, fractions, pourable);
            }
        }
        List<Integer> all = List.copyOf(fractions);
        fractions.sort(Comparator.comparingLong((Integer fraction) -> all.stream()
                        .filter(other -> pourable.isBefore(first(other), first(fraction)))
                        .count())
                .thenComparing(Fractions::first));
        return fractions;
    }

    private static void add(int dye, List<Integer> fractions, Pourable pourable) {
        int merged = 1 << dye;
        for (Integer fraction : List.copyOf(fractions)) {
            if (doesNotPart(dye, fraction, pourable)) {
                merged |= fraction;
                fractions.remove(fraction);
            }
        }
        fractions.add(merged);
    }

    private static boolean doesNotPart(int dye, int fraction, Pourable pourable) {
        for (int other = 0; other < pourable.leavesBefore().size(); other++) {
            if ((fraction & 1 << other) != 0 && !pourable.isBefore(dye, other) && !pourable.isBefore(other, dye)) {
                return true;
            }
        }
        return false;
    }

    private static int first(int fraction) {
        return Integer.numberOfTrailingZeros(fraction);
    }
}
