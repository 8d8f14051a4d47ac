package org.wickwise.column;

/**
 * Counter-current distribution: in each transfer the upper phase of every tube moves to the next and is brought to
 * equilibrium there (Craig, J. Biol. Chem. 1944, 155, 519, from memory; Harvey, Analytical Chemistry 2.1, appendix 16).
 *
 * @param moved p, the share of a dye in the phase that moves, 0 to 1
 */
public record Craig(double moved) {

    public Craig {
        if (!(moved >= 0 && moved <= 1)) {
            throw new IllegalArgumentException("the share that moves is " + moved + "; expected 0 to 1");
        }
    }

    /**
     * p = D V_upper/(D V_upper + V_lower).
     *
     * @param distributionRatio D, concentration in the upper phase over that in the lower, 0 or more
     * @param upperOverLower volume of the upper phase over that of the lower, above 0
     */
    public static Craig of(double distributionRatio, double upperOverLower) {
        double amounts = Expected.notBelowZero("the distribution ratio", distributionRatio)
                * Expected.aboveZero("the ratio of the volumes", upperOverLower);
        return new Craig(amounts / (1 + amounts));
    }

    /** A column seen as tubes: the share in the liquid is 1/(1 + k), k 0 or more. */
    public static Craig ofRetentionFactor(double retentionFactor) {
        return new Craig(1 / (1 + Expected.notBelowZero("k", retentionFactor)));
    }

    /**
     * Share of the dye in each tube, 0 to n, after n transfers: the binomial n!/(r! (n - r)!) p^r (1 - p)^(n - r). Worked
     * out transfer by transfer, so that nothing overflows.
     *
     * @param transfers n, 0 or more
     */
    public double[] after(int transfers) {
        if (transfers < 0) {
            throw new IllegalArgumentException("there are " + transfers + " transfers; expected 0 or more");
        }
        double[] share = new double[transfers + 1];
        share[0] = 1;
        for (int n = 1; n <= transfers; n++) {
            for (int tube = n; tube > 0; tube--) {
                share[tube] = share[tube] * (1 - moved) + share[tube - 1] * moved;
            }
            share[0] *= 1 - moved;
        }
        return share;
    }

    /** Tube of the middle, n p. */
    public double meanTube(int transfers) {
        return transfers * moved;
    }

    /** Standard deviation in tubes, sqrt(n p (1 - p)). */
    public double sigmaTubes(int transfers) {
        return Math.sqrt(transfers * moved * (1 - moved));
    }

    /** Transfers until the dye has left a row of tubes, on average: N/p (negative binomial). */
    public double meanTransfersToLeave(int tubes) {
        return tubes / movedAtAll();
    }

    /** Standard deviation of these transfers, sqrt(N (1 - p))/p. */
    public double sigmaTransfersToLeave(int tubes) {
        return Math.sqrt(tubes * (1 - moved)) / movedAtAll();
    }

    /** Plates that a row of tubes shows at its end, N/(1 - p) = N (1 + k)/k: more than tubes, since each transfer is whole. */
    public double apparentPlates(int tubes) {
        return Plates.fromSigma(meanTransfersToLeave(tubes), sigmaTransfersToLeave(tubes));
    }

    private double movedAtAll() {
        return Expected.aboveZero("the share that moves", moved);
    }
}
