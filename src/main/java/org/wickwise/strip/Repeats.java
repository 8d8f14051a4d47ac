package org.wickwise.strip;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * Repeats of one reading whose scatter is all that is known of their uncertainty (JCGM 100:2008, 4.2 and G.3).
 *
 * @param count 2 or more
 * @param standardDeviation of a single repeat
 */
public record Repeats(int count, double mean, double standardDeviation) {

    /** @throws IllegalArgumentException for fewer than two values, which show no scatter */
    public static Repeats of(List<Double> values) {
        if (values.size() < 2) {
            throw new IllegalArgumentException(values.size() + " repeats show no scatter; expected 2 or more");
        }
        double[] numbers = values.stream().mapToDouble(Double::doubleValue).toArray();
        return new Repeats(numbers.length, StatUtils.mean(numbers), Math.sqrt(StatUtils.variance(numbers)));
    }

    /** Standard uncertainty of the mean. */
    public double uncertainty() {
        return standardDeviation / Math.sqrt(count);
    }

    /**
     * Half the interval around the mean that holds the true value with this confidence, by Student's t.
     *
     * @param confidence above 0 and below 1
     */
    public double halfWidth(double confidence) {
        return new TDistribution(count - 1).inverseCumulativeProbability((1 + confidence) / 2) * uncertainty();
    }
}
