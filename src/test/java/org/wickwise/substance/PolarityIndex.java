package org.wickwise.substance;

/**
 * Snyder's polarity index P' of blends, and what it says of retention (L. R. Snyder, J. Chromatogr. Sci. 1978, 16, 223,
 * from memory). It is linear in the shares by volume, so it misses how steeply the first shares of a strong solvent work:
 * good for ranking, no better than a factor of two in k.
 */
public final class PolarityIndex {

    private PolarityIndex() {}

    /**
     * The sum of share times index.
     *
     * @param volumeShares 0 to 1, adding up to 1
     * @param polarityIndices of the neat solvents, in the same order
     */
    public static double ofBlend(double[] volumeShares, double[] polarityIndices) {
        if (volumeShares.length != polarityIndices.length) {
            throw new IllegalArgumentException(
                    volumeShares.length + " shares for " + polarityIndices.length + " solvents; expected one for each");
        }
        double sum = 0;
        for (int i = 0; i < volumeShares.length; i++) {
            sum += volumeShares[i] * polarityIndices[i];
        }
        return sum;
    }

    /**
     * On a polar adsorbent, k in the second eluent over k in the first: log10 of it is half the loss of index.
     *
     * @param from index of the first eluent
     * @param to index of the second
     */
    public static double retentionRatioNormalPhase(double from, double to) {
        return Math.pow(10, (from - to) / 2);
    }

    /** On a reversed phase, k in the second eluent over k in the first: the opposite sign. */
    public static double retentionRatioReversedPhase(double from, double to) {
        return Math.pow(10, (to - from) / 2);
    }

    /**
     * The share by volume of the second solvent that gives a blend a wanted index.
     *
     * @param wanted between the two
     * @param weak index of the first solvent
     * @param strong index of the second, different from the first
     * @return 0 to 1
     */
    public static double shareForPolarityIndex(double wanted, double weak, double strong) {
        double share = (wanted - weak) / (strong - weak);
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("an index of " + wanted + " is wanted between " + weak + " and " + strong
                    + "; expected one between the two");
        }
        return share;
    }

    /**
     * The percentage of another solvent that elutes a reversed phase as far (isoeluotropic).
     *
     * @param percent of the one solvent, by volume
     * @param equivalent its reversed-phase equivalent in the solvent table, above 0
     * @param otherEquivalent that of the other, above 0
     * @return per cent by volume; above 100 where even the neat other solvent is too weak
     */
    public static double isoeluotropicPercent(double percent, double equivalent, double otherEquivalent) {
        return percent * otherEquivalent / equivalent;
    }
}
