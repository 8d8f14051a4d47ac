package org.wickwise.column;

import java.util.Arrays;
import java.util.List;

/**
 * What enters a row of mixing cells, by inlet volume: how fast a dye is carried out of a cell that holds each pour. The
 * bed is taken to hold the first pour from the start, the last one has no end.
 */
final class Inlet {

    private final double cellMillilitres;
    private final double[] start;
    private final double[] rate;
    private final double[] carried;

    Inlet(List<Pour> pours, double cellMillilitres) {
        Expected.aboveZero("the number of pours", pours.size());
        this.cellMillilitres = cellMillilitres;
        start = new double[pours.size()];
        rate = new double[pours.size()];
        carried = new double[pours.size()];
        for (int i = 0; i < pours.size(); i++) {
            rate[i] = 1 / (cellMillilitres * (1 + pours.get(i).retentionFactor()));
            if (i > 0) {
                double millilitres = pours.get(i - 1).millilitres();
                start[i] = start[i - 1] + millilitres;
                carried[i] = carried[i - 1] + rate[i - 1] * millilitres;
            }
        }
    }

    double cellMillilitres() {
        return cellMillilitres;
    }

    /** Where the pour at an inlet volume stands in the order, searched from one that stands no earlier. */
    int pourAt(double millilitres, int from) {
        int pour = from;
        while (pour > 0 && start[pour] > millilitres) {
            pour--;
        }
        return pour;
    }

    /** The pour at an inlet volume, searched from one that stands no later. */
    int laterPourAt(double millilitres, int from) {
        int pour = from;
        while (pour + 1 < start.length && start[pour + 1] <= millilitres) {
            pour++;
        }
        return pour;
    }

    /**
     * How much may be poured until some cell has passed on a share of its dye.
     *
     * @param oldest pour in the last cell that holds dye
     * @param newest pour in the first such cell
     * @param at inlet volume that fills that cell
     * @return infinite when the dye does not move in any of these and nothing else follows
     */
    double millilitresFor(double share, int oldest, int newest, double at) {
        double fastest = 0;
        for (int pour = oldest; pour <= newest; pour++) {
            fastest = Math.max(fastest, rate[pour]);
        }
        double millilitres = share / fastest;
        for (int next = newest + 1; next < start.length && start[next] < at + millilitres; next++) {
            millilitres = Math.min(millilitres, Math.max(start[next] - at, share / rate[next]));
        }
        return millilitres;
    }

    /** The shares that leave cells {@code first} to {@code last} while {@code millilitres} are poured after {@code poured}. */
    void shares(double poured, double millilitres, int first, int last, int oldest, double[] share) {
        int after = laterPourAt(poured + millilitres - first * cellMillilitres, oldest);
        if (after == oldest) {
            Arrays.fill(share, first, last + 1, rate[after] * millilitres);
            return;
        }
        int before = after;
        for (int i = first; i <= last; i++) {
            double bottom = poured - i * cellMillilitres;
            after = pourAt(bottom + millilitres, after);
            before = pourAt(bottom, Math.min(before, after));
            share[i] = after == before
                    ? rate[after] * millilitres
                    : carried[after]
                            + rate[after] * (bottom + millilitres - start[after])
                            - carried[before]
                            - rate[before] * (bottom - start[before]);
        }
    }
}
