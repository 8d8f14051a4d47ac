package org.wickwise.column;

import java.util.Arrays;
import java.util.Optional;

/**
 * What of one dye left a column, portion by portion, as shares of what was loaded. Volumes are in millilitres at the
 * outlet, from the moment the first pour meets the loaded bed.
 */
public final class Outflow {

    private final double[] from;
    private final double end;
    private final double[] share;
    private final double leftOnBed;

    private Outflow(double[] from, double end, double[] share, double leftOnBed) {
        this.from = from;
        this.end = end;
        this.share = share;
        this.leftOnBed = leftOnBed;
    }

    /** Number of portions; each begins where the one before it ends. */
    public int portions() {
        return share.length;
    }

    public double fromMillilitres(int portion) {
        return from[portion];
    }

    public double toMillilitres(int portion) {
        return portion + 1 < from.length ? from[portion + 1] : end;
    }

    /** Share of the dye in a portion, 0 to 1. */
    public double share(int portion) {
        return share[portion];
    }

    /** Share of the dye that is still on the bed, 0 to 1. */
    public double leftOnBed() {
        return leftOnBed;
    }

    /** Share of the dye that has left up to a volume; evenly spread within a portion. */
    public double leftBy(double millilitres) {
        double sum = 0;
        for (int i = 0; i < share.length && from[i] < millilitres; i++) {
            double to = toMillilitres(i);
            sum += millilitres >= to ? share[i] : share[i] * (millilitres - from[i]) / (to - from[i]);
        }
        return sum;
    }

    /** Mean and standard deviation of what has left; empty when nothing has. */
    public Optional<Band> band() {
        double total = 0;
        double moment = 0;
        for (int i = 0; i < share.length; i++) {
            total += share[i];
            moment += share[i] * middle(i);
        }
        if (total == 0) {
            return Optional.empty();
        }
        double mean = moment / total;
        double squares = 0;
        for (int i = 0; i < share.length; i++) {
            double off = middle(i) - mean;
            squares += share[i] * off * off;
        }
        return Optional.of(new Band(mean, Math.sqrt(squares / total)));
    }

    private double middle(int portion) {
        return (from[portion] + toMillilitres(portion)) / 2;
    }

    /** Gathers portions while they come. */
    static final class Collector {

        private double[] from = new double[256];
        private double[] share = new double[256];
        private int portions;
        private double end;
        private double total;

        void collect(double fromMillilitres, double millilitres, double leaving) {
            if (portions == from.length) {
                from = Arrays.copyOf(from, 2 * portions);
                share = Arrays.copyOf(share, 2 * portions);
            }
            from[portions] = fromMillilitres;
            share[portions] = leaving;
            portions++;
            end = fromMillilitres + millilitres;
            total += leaving;
        }

        double total() {
            return total;
        }

        Outflow outflow(double leftOnBed) {
            return new Outflow(Arrays.copyOf(from, portions), end, Arrays.copyOf(share, portions), leftOnBed);
        }
    }
}
