package org.wickwise.strip;

import java.util.List;

/**
 * The mean of values that differ in how well they are known, weighted by 1/u^2.
 *
 * @param internalUncertainty 1/sqrt(sum of the weights): what the uncertainties of the values allow
 * @param chiSquare sum of weight times squared distance from the mean
 * @param degreesOfFreedom values less one
 */
public record WeightedMean(double value, double internalUncertainty, double chiSquare, int degreesOfFreedom) {

    /** @param several at least one */
    public static WeightedMean of(List<Uncertain> several) {
        double weights = several.stream().mapToDouble(WeightedMean::weight).sum();
        double mean =
                several.stream().mapToDouble(one -> weight(one) * one.value()).sum() / weights;
        double chiSquare = several.stream()
                .mapToDouble(one -> weight(one) * Math.pow(one.value() - mean, 2))
                .sum();
        return new WeightedMean(mean, 1 / Math.sqrt(weights), chiSquare, several.size() - 1);
    }

    /** How much more the values scatter than their uncertainties allow, 1 or more (Birge, Phys. Rev. 1932, 40, 207). */
    public double birgeRatio() {
        return degreesOfFreedom == 0 ? 1 : Math.max(1, Math.sqrt(chiSquare / degreesOfFreedom));
    }

    /** Standard uncertainty of the mean, widened by the Birge ratio. */
    public double uncertainty() {
        return birgeRatio() * internalUncertainty;
    }

    private static double weight(Uncertain one) {
        return 1 / (one.uncertainty() * one.uncertainty());
    }
}
