package org.wickwise.column;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Counter-current distribution: in each transfer the upper phase of every tube moves to the next and is brought to
 * equilibrium there (Craig 1944; Harvey, Analytical Chemistry 2.1, appendix 16).
 *
 * @param moved p, the share of a dye in the phase that moves, 0 to 1
 */
public record Craig(double moved) {

    private static final double LEFT_AT_THE_END = 1e-9;

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

    /** A column seen as tubes: the share in the liquid is 1/(1 + k), k 0 or more or infinite. */
    public static Craig ofRetentionFactor(double retentionFactor) {
        if (!(retentionFactor >= 0)) {
            throw new IllegalArgumentException("k is " + retentionFactor + "; expected 0 or more");
        }
        return new Craig(1 / (1 + retentionFactor));
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

    /**
     * A column of tubes, each portion of liquid as large as one tube's and brought to equilibrium in every tube it comes
     * through, with a sharp front of the eluent. Bands are narrower than those of {@link MixingCells} by k/(1 + k) in
     * the variance of each step.
     *
     * @param pours in the order of pouring; the last one goes on until nearly all has left
     * @param columnVolumeMillilitres V0, above 0
     * @param tubes 1 or more
     */
    public static Outflow throughTubes(List<Pour> pours, double columnVolumeMillilitres, int tubes) {
        Expected.aboveZero("the number of tubes", tubes);
        if (pours.get(pours.size() - 1).retentionFactor() == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("the dye does not move in the last pour; expected a finite k");
        }
        double tubeMillilitres = Expected.aboveZero("the column volume", columnVolumeMillilitres) / tubes;
        Outflow.Collector collector = new Outflow.Collector();
        double[] bed = new double[tubes];
        bed[0] = 1;
        double poured = 0;
        double pourEnds = pours.get(0).millilitres();
        int pour = 0;
        while (1 - collector.total() > LEFT_AT_THE_END) {
            while (pour < pours.size() - 1 && poured + tubeMillilitres / 2 > pourEnds) {
                pour++;
                pourEnds += pours.get(pour).millilitres();
            }
            double leaving =
                    portionThrough(bed, ofRetentionFactor(pours.get(pour).retentionFactor()));
            // The middle of what leaves is one column volume after the portion went in.
            collector.collect(poured + columnVolumeMillilitres - tubeMillilitres / 2, tubeMillilitres, leaving);
            poured += tubeMillilitres;
        }
        return collector.outflow(DoubleStream.of(bed).sum());
    }

    private static double portionThrough(double[] bed, Craig sharing) {
        double carried = 0;
        for (int tube = 0; tube < bed.length; tube++) {
            double both = bed[tube] + carried;
            carried = both * sharing.moved;
            bed[tube] = both - carried;
        }
        return carried;
    }

    private double movedAtAll() {
        return Expected.aboveZero("the share that moves", moved);
    }
}
