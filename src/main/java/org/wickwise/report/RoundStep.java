package org.wickwise.report;

import java.util.List;

/**
 * The distance between the marks of a scale: 1, 2 or 5 times a power of ten.
 *
 * @param size in the unit of the scale, above 0
 * @param decimals as many as its multiples need
 */
record RoundStep(double size, int decimals) {

    /** The smallest that is no smaller than this, which has to be above 0. */
    static RoundStep atLeast(double least) {
        int exponent = (int) Math.floor(Math.log10(least));
        double size = List.of(1, 2, 5, 10).stream()
                .mapToDouble(times -> times * Math.pow(10, exponent))
                .filter(distance -> distance >= least)
                .findFirst()
                .orElse(Math.pow(10, exponent + 1.0));
        return new RoundStep(size, Math.max(0, -exponent));
    }
}
