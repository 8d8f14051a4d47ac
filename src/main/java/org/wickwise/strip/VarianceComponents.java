package org.wickwise.strip;

import java.util.List;
import org.hipparchus.stat.StatUtils;

/**
 * Repeats in several groups, their scatter parted into what lies within a group and what lies between groups: one-way
 * analysis of variance with random groups, mean squares set equal to what is expected of them (from memory; the layout is that of
 * O. L. Davies and P. L. Goldsmith, Statistical Methods in Research and Production, 4th ed. 1972, section 6.4).
 *
 * @param mean of all values
 * @param withinVariance mean square within groups
 * @param betweenVariance (mean square between - mean square within)/n0, not below 0
 * @param degreesOfFreedomWithin values less groups, 1 or more
 */
public record VarianceComponents(
        double mean, double withinVariance, double betweenVariance, int groups, int degreesOfFreedomWithin) {

    /**
     * With groups of different size, n0 = (N - sum of n^2 / N)/(groups - 1).
     *
     * @param groups two or more, none empty, at least one of them with a repeat
     * @throws IllegalArgumentException with fewer groups, or without a repeat
     */
    public static VarianceComponents of(List<double[]> groups) {
        double[] all = groups.stream().flatMapToDouble(java.util.Arrays::stream).toArray();
        int within = all.length - groups.size();
        if (groups.size() < 2 || within < 1 || groups.stream().anyMatch(values -> values.length == 0)) {
            throw new IllegalArgumentException(groups.size() + " groups with " + all.length
                    + " values in all; expected two groups or more, none empty, one with a repeat");
        }
        double mean = StatUtils.mean(all);
        double squaresWithin = 0;
        double squaresBetween = 0;
        double squaresOfSizes = 0;
        for (double[] values : groups) {
            double ofGroup = StatUtils.mean(values);
            for (double value : values) {
                squaresWithin += (value - ofGroup) * (value - ofGroup);
            }
            squaresBetween += values.length * (ofGroup - mean) * (ofGroup - mean);
            squaresOfSizes += (double) values.length * values.length;
        }
        double meanSquareWithin = squaresWithin / within;
        double meanSquareBetween = squaresBetween / (groups.size() - 1);
        double size = (all.length - squaresOfSizes / all.length) / (groups.size() - 1);
        return new VarianceComponents(
                mean,
                meanSquareWithin,
                Math.max(0, (meanSquareBetween - meanSquareWithin) / size),
                groups.size(),
                within);
    }
}
