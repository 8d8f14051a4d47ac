package org.wickwise.strip;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.descriptive.rank.Median;

/**
 * Tests for readings that do not belong with the others. They say how far a reading lies out; whether that is too far is
 * the caller's to judge. Grubbs and Dixon look for one outlier in values that are otherwise normal, and two of them hide
 * each other; the median and its absolute deviations stand up to several.
 */
public final class Outliers {

    /** Makes the median absolute deviation of normal values their standard deviation. */
    private static final double OF_NORMAL_VALUES = 1.4826;

    /** 0.6745, under the same assumption, as the modified z is defined. */
    private static final double MODIFIED_Z = 0.6745;

    private Outliers() {}

    /**
     * Grubbs' statistic: the largest distance from the mean over the standard deviation (Grubbs, Technometrics 1969, 11,
     * 1, from memory).
     *
     * @param index of the value that lies furthest out
     * @param count how many values there are
     */
    public record Grubbs(int index, double statistic, int count) {

        /** @param level chance of calling a sound reading an outlier, above 0 and below 1; either side may be out */
        public boolean isOutlier(double level) {
            return statistic > criticalTwoSided(count, level);
        }
    }

    /** @param values 3 or more that are not all equal */
    public static Grubbs grubbs(List<Double> values) {
        List<Double> statistics = grubbsStatistics(values, 0);
        int index = IntStream.range(0, values.size())
                .boxed()
                .max((one, other) -> Double.compare(statistics.get(one), statistics.get(other)))
                .orElseThrow();
        return new Grubbs(index, statistics.get(index), values.size());
    }

    /**
     * For each value its distance from the mean over the standard deviation, as Grubbs' test takes it.
     *
     * @param values 3 or more
     * @param leastScatter the standard deviation is not taken below this: what the ruler alone makes of equal strips.
     *     Above 0 where all values may be equal
     */
    public static List<Double> grubbsStatistics(List<Double> values, double leastScatter) {
        atLeastThree(values.size());
        double[] numbers = numbers(values);
        double mean = StatUtils.mean(numbers);
        double scatter = some(Math.max(leastScatter, Math.sqrt(StatUtils.variance(numbers))));
        return Arrays.stream(numbers)
                .mapToObj(value -> Math.abs(value - mean) / scatter)
                .toList();
    }

    /**
     * What Grubbs' statistic has to exceed when an outlier on one named side is looked for: from Student's t at level/n
     * with n - 2 degrees of freedom.
     *
     * @param count 3 or more
     */
    public static double criticalOneSided(int count, double level) {
        return critical(count, level / count);
    }

    /** The same for an outlier on either side: from Student's t at level/(2n). */
    public static double criticalTwoSided(int count, double level) {
        return critical(count, level / (2 * count));
    }

    private static double critical(int count, double tail) {
        atLeastThree(count);
        double t = new TDistribution(count - 2.0).inverseCumulativeProbability(1 - tail);
        return (count - 1) / Math.sqrt(count) * Math.sqrt(t * t / (count - 2 + t * t));
    }

    /**
     * The median, and how far values usually lie from it.
     *
     * @param medianDeviation median of the absolute distances from the median, MAD
     * @param scatter 1.4826 MAD, which is the standard deviation where values are normal, or the least scatter where that
     *     is wider
     */
    public record Robust(double median, double medianDeviation, double scatter) {

        /**
         * How far a value lies from the median in units of the scatter, with its sign. Where the MAD counts, this is the
         * modified z, 0.6745 (x - median)/MAD (Iglewicz and Hoaglin, How to Detect and Handle Outliers, 1993, from
         * memory).
         */
        public double modifiedZ(double value) {
            double distance = value - median;
            return OF_NORMAL_VALUES * medianDeviation < scatter
                    ? distance / scatter
                    : MODIFIED_Z * distance / medianDeviation;
        }

        /** The same values for a reading whose ruler makes this scatter of equal strips, above 0 where the MAD is 0. */
        public Robust withLeastScatter(double leastScatter) {
            return new Robust(
                    median, medianDeviation, some(Math.max(leastScatter, OF_NORMAL_VALUES * medianDeviation)));
        }
    }

    /**
     * The median and the scatter around it.
     *
     * @param values at least one
     * @param leastScatter what the ruler alone makes of equal strips. It stands in when the MAD is 0, as when most
     *     readings fall on one division, and when the MAD is narrower than the ruler can show. Above 0 where the MAD may
     *     be 0
     */
    public static Robust robust(List<Double> values, double leastScatter) {
        double[] numbers = numbers(values);
        double median = new Median().evaluate(numbers);
        double deviation = new Median()
                .evaluate(Arrays.stream(numbers)
                        .map(value -> Math.abs(value - median))
                        .toArray());
        return new Robust(median, deviation, leastScatter).withLeastScatter(leastScatter);
    }

    private static double some(double scatter) {
        if (!(scatter > 0)) {
            throw new IllegalArgumentException(
                    "the values do not scatter at all; expected a least scatter above 0, such as the ruler's");
        }
        return scatter;
    }

    private static void atLeastThree(int count) {
        if (count < 3) {
            throw new IllegalArgumentException(count + " values have no outlier; expected 3 or more");
        }
    }

    private static double[] numbers(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
