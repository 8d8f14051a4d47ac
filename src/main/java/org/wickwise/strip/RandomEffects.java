package org.wickwise.strip;

import java.util.List;
import org.hipparchus.stat.StatUtils;

/**
 * Values of one quantity from several groups, each with its own uncertainty, taken as scattering about a common mean by more
 * than their uncertainties: the method of moments of R. DerSimonian and N. Laird, Control. Clin. Trials 1986, 7, 177 (formula
 * read in published code that cites it).
 *
 * @param mean weighted by 1/(u^2 + between^2)
 * @param uncertainty standard uncertainty of the mean, 1/sqrt(sum of these weights)
 * @param between standard deviation between groups beyond their own uncertainties, 0 where they account for all of it
 * @param heterogeneity Q, the sum of squared distances from the mean weighted by 1/u^2
 * @param groups 1 or more
 */
public record RandomEffects(double mean, double uncertainty, double between, double heterogeneity, int groups) {

    /**
     * Between groups: the excess of Q over its degrees of freedom, over (S1 - S2/S1) with S1 and S2 the sums of the weights and
     * of their squares; not below 0.
     *
     * @param values at least one
     */
    public static RandomEffects of(List<RetardationFactor> values) {
        return of(
                values.stream().mapToDouble(RetardationFactor::value).toArray(),
                values.stream().mapToDouble(RetardationFactor::uncertainty).toArray());
    }

    /**
     * @param uncertainties as many as values, each above 0
     * @throws IllegalArgumentException without values, or where an uncertainty is no number above 0
     */
    public static RandomEffects of(double[] values, double[] uncertainties) {
        if (values.length == 0 || values.length != uncertainties.length) {
            throw new IllegalArgumentException(values.length + " values and " + uncertainties.length
                    + " uncertainties; expected as many of both, at least one");
        }
        double[] weights = new double[values.length];
        double[] squares = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            if (!(uncertainties[i] > 0) || !Double.isFinite(values[i])) {
                throw new IllegalArgumentException("the value " + values[i] + " has the uncertainty " + uncertainties[i]
                        + "; expected a number with an uncertainty above 0");
            }
            weights[i] = 1 / (uncertainties[i] * uncertainties[i]);
            squares[i] = weights[i] * weights[i];
        }
        double sum = StatUtils.sum(weights);
        double fixedMean = weightedMean(values, weights);
        double heterogeneity = 0;
        for (int i = 0; i < values.length; i++) {
            heterogeneity += weights[i] * (values[i] - fixedMean) * (values[i] - fixedMean);
        }
        double betweenSquared = values.length == 1
                ? 0
                : Math.max(0, (heterogeneity - (values.length - 1)) / (sum - StatUtils.sum(squares) / sum));
        double[] widened = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            widened[i] = 1 / (1 / weights[i] + betweenSquared);
        }
        return new RandomEffects(
                weightedMean(values, widened),
                1 / Math.sqrt(StatUtils.sum(widened)),
                Math.sqrt(betweenSquared),
                heterogeneity,
                values.length);
    }

    private static double weightedMean(double[] values, double[] weights) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * values[i];
        }
        return sum / StatUtils.sum(weights);
    }
}
