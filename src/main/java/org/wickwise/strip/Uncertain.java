package org.wickwise.strip;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.wickwise.text.Numbers;

/**
 * A number with its standard uncertainty, both in one unit: an Rf, or the gap between two.
 *
 * @param value any finite number
 * @param uncertainty standard uncertainty, above 0
 */
public record Uncertain(double value, double uncertainty) {

    /**
     * The chance that the true value is at most this, the reading taken as Gaussian; one half where the limit is the
     * reading itself (JCGM 100:2008, 4.3.6 and G.1).
     *
     * @return 0 to 1
     */
    public double chanceAtMost(double limit) {
        return new NormalDistribution(Numbers.steady(value), uncertainty).cumulativeProbability(limit);
    }
}
