package org.wickwise.column;

/** How well N plates part two dyes, and how many bands they hold, for one eluent and dilute dyes. */
public final class Resolution {

    private static final double PLATES_PER_RESOLUTION_SQUARED = 16;

    private Resolution() {}

    /**
     * Purnell's equation, Rs = (sqrt N/4) ((alpha - 1)/alpha) (k2/(1 + k2)) (Purnell 1960, from memory). Takes both bands as equally wide, so for alpha well above 1 {@link #ofRetardationFactors} is nearer.
     *
     * @param plates N, above 0
     * @param selectivity alpha, k of the later dye over k of the earlier, 1 or more
     * @param laterRetentionFactor k2 of the later dye, 0 or more
     */
    public static double purnell(double plates, double selectivity, double laterRetentionFactor) {
        Expected.aboveZero("the number of plates", plates);
        return Math.sqrt(plates / PLATES_PER_RESOLUTION_SQUARED)
                * resolutionOfSixteenPlates(selectivity, laterRetentionFactor);
    }

    /**
     * The same equation solved for N = 16 Rs^2 (alpha/(alpha - 1))^2 ((1 + k2)/k2)^2.
     *
     * @param wanted Rs, above 0
     * @param selectivity alpha, above 1
     * @param laterRetentionFactor k2, above 0
     */
    public static double platesNeeded(double wanted, double selectivity, double laterRetentionFactor) {
        Expected.above("the selectivity", selectivity, 1);
        Expected.aboveZero("k of the later dye", laterRetentionFactor);
        double each = resolutionOfSixteenPlates(selectivity, laterRetentionFactor);
        return PLATES_PER_RESOLUTION_SQUARED * Math.pow(Expected.aboveZero("the wanted resolution", wanted) / each, 2);
    }

    private static double resolutionOfSixteenPlates(double selectivity, double laterRetentionFactor) {
        if (!(selectivity >= 1)) {
            throw new IllegalArgumentException("the selectivity is " + selectivity + "; expected 1 or more");
        }
        Expected.notBelowZero("k of the later dye", laterRetentionFactor);
        return (selectivity - 1) / selectivity * laterRetentionFactor / (1 + laterRetentionFactor);
    }

    /**
     * Two dyes on a column from their Rf, each band as wide as its own plates make it: Rs = (sqrt N/2) (Rf1 - Rf2)/(Rf1 +
     * Rf2), which follows from V_R = V0/Rf, sigma = V_R/sqrt N and Rs = 2 (V2 - V1)/(w1 + w2).
     *
     * @param plates N, above 0
     * @param fastRf above 0, up to 1
     * @param slowRf above 0, up to 1; where it is the larger one, the resolution is below 0
     */
    public static double ofRetardationFactors(double plates, double fastRf, double slowRf) {
        return isocratic(fastRf, plates).resolutionTo(isocratic(slowRf, plates));
    }

    private static Band isocratic(double rf, double plates) {
        if (!(rf > 0 && rf <= 1)) {
            throw new IllegalArgumentException("Rf is " + rf + "; expected above 0, up to 1");
        }
        Expected.aboveZero("the number of plates", plates);
        return BandOnBed.loaded().leavingIn(1 / rf - 1, 1, plates).orElseThrow();
    }

    /**
     * How many bands fit side by side at a resolution of 1 between a first and a last volume, n = 1 + (sqrt N/4) ln(last/
     * first) (Harvey, Analytical Chemistry 2.1, chapter 12.2, from memory).
     *
     * @param plates N, above 0
     * @param first elution volume or time, above 0
     * @param last the same unit, at least {@code first}
     */
    public static double peakCapacity(double plates, double first, double last) {
        Expected.aboveZero("the number of plates", plates);
        Expected.aboveZero("the first volume", first);
        if (!(last >= first && last < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the last volume is " + last + "; expected not less than the first, " + first);
        }
        return 1 + Math.sqrt(plates) / 4 * Math.log(last / first);
    }

    /** Peak capacity from the front to a dye of {@code largestRetentionFactor}, 1 + (sqrt N/4) ln(1 + k). */
    public static double isocraticPeakCapacity(double plates, double largestRetentionFactor) {
        return peakCapacity(plates, 1, 1 + Expected.notBelowZero("the largest k", largestRetentionFactor));
    }
}
