package org.wickwise.strip;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** What the strips say of the space between two dyes in one eluent. */
public sealed interface Apart extends Ground {

    Eluent eluent();

    /** The dye further from the origin. */
    Dye ahead();

    Dye behind();

    /** Whether it was reckoned and not seen. */
    default boolean isReckoned() {
        return this instanceof EstimatedGap;
    }

    /**
     * @param gap difference of the two Rf, 0 or more
     * @param uncertainty standard uncertainty of the gap
     */
    record MeasuredGap(Eluent eluent, Dye ahead, Dye behind, double gap, double uncertainty, Reason reason)
            implements Apart {

        /** The chance in per cent that the true gap is above this. */
        public double percentAbove(double limit) {
            return Numbers.steady(100 * chanceAbove(limit));
        }

        /**
         * The chance that the true gap is above this, the reading taken as Gaussian; one half where the limit is the
         * reading itself (JCGM 100:2008, 4.3.6 and G.1).
         *
         * @return 0 to 1
         */
        public double chanceAbove(double limit) {
            return 1 - new NormalDistribution(gap, uncertainty).cumulativeProbability(limit);
        }
    }

    /**
     * Between two dyes whose Rf were reckoned.
     *
     * @param gap difference of the two Rf, 0 or more
     * @param uncertainty standard uncertainty of the gap
     */
    record EstimatedGap(Eluent eluent, Dye ahead, Dye behind, double gap, double uncertainty, Reason reason)
            implements Apart {

        /** The chance in per cent that the gap on a strip would be above this. */
        public double percentAbove(double limit) {
            return Numbers.steady(100 * (1 - new NormalDistribution(gap, uncertainty).cumulativeProbability(limit)));
        }
    }

    record WatchedGap(Eluent eluent, Dye ahead, Dye behind, GapLook look, Reason reason) implements Apart {}

    /** One spot held both; there is one of these for either order of the two. */
    record SharedSpot(Eluent eluent, Dye ahead, Dye behind, Reason reason) implements Apart {}
}
