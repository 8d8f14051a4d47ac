package org.wickwise.strip;

import java.util.OptionalDouble;
import org.wickwise.text.Amounts;

/**
 * A front in an open jar, where the strip loses liquid while it climbs: d(z^2)/dt = kappa - 2 e z^2, so z^2 = (kappa/2e)(1 -
 * exp(-2 e t)). Derived from the law of Lucas and Washburn with a loss in proportion to the liquid held.
 *
 * @param constant kappa without loss
 * @param lossPerMinute e, the share of the held liquid that evaporates in a minute, above 0
 */
public record EvaporatingFront(FrontConstant constant, double lossPerMinute) {

    public EvaporatingFront {
        Amounts.above0("loss", lossPerMinute, "per minute");
    }

    /** How high the front is after a time, 0 or more. */
    public double millimetresAfter(double minutes) {
        Amounts.atLeast0("time", minutes, "min");
        return stallsAtMillimetres() * Math.sqrt(-Math.expm1(-2 * lossPerMinute * minutes));
    }

    /** Where the front comes to a halt, sqrt(kappa/2e): as much evaporates as climbs. */
    public double stallsAtMillimetres() {
        return Math.sqrt(constant.squareMillimetresPerMinute() / (2 * lossPerMinute));
    }

    /**
     * How long the front takes to a height, 0 or more.
     *
     * @return empty when it never gets there
     */
    public OptionalDouble minutesTo(double millimetres) {
        double share = Amounts.atLeast0("height", millimetres, "mm") / stallsAtMillimetres();
        return share < 1
                ? OptionalDouble.of(-Math.log1p(-share * share) / (2 * lossPerMinute))
                : OptionalDouble.empty();
    }
}
