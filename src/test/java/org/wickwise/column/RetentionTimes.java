package org.wickwise.column;

/**
 * What follows from when a band leaves a column, against a band that is not held (IUPAC nomenclature; Ettre, Pure Appl.
 * Chem. 1993, 65, 819). Times, volumes or chart distances serve alike, as long as both are in one unit.
 */
public final class RetentionTimes {

    private RetentionTimes() {}

    /**
     * Time spent on the adsorbent: retention less what a band needs that is not held.
     *
     * @param retention at least {@code unretained}
     * @param unretained above 0
     */
    public static double adjusted(double retention, double unretained) {
        if (!(unretained > 0 && retention >= unretained)) {
            throw new IllegalArgumentException("a band leaves at " + retention + " and what is not held at "
                    + unretained + "; expected the second above 0 and not after the first");
        }
        return retention - unretained;
    }

    /** Retention factor k, adjusted over unretained. */
    public static double retentionFactor(double retention, double unretained) {
        return adjusted(retention, unretained) / unretained;
    }

    /**
     * Selectivity of two bands, the larger k over the smaller, 1 or more.
     *
     * @param k above 0
     * @param otherK above 0
     */
    public static double selectivity(double k, double otherK) {
        if (!(k > 0 && otherK > 0)) {
            throw new IllegalArgumentException("k is " + k + " and " + otherK + "; expected both above 0");
        }
        return Math.max(k, otherK) / Math.min(k, otherK);
    }

    /**
     * Distribution constant K, concentration in the stationary over the mobile phase: k V_M/V_S.
     *
     * @param mobileMillilitres volume of the mobile phase in the column, above 0
     * @param stationaryMillilitres volume of the stationary phase, above 0
     */
    public static double distributionConstant(double k, double mobileMillilitres, double stationaryMillilitres) {
        if (!(mobileMillilitres > 0 && stationaryMillilitres > 0)) {
            throw new IllegalArgumentException("the phases have " + mobileMillilitres + " and " + stationaryMillilitres
                    + " mL; expected both above 0");
        }
        return k * mobileMillilitres / stationaryMillilitres;
    }

    /**
     * When the band leaves a column of the same bore and flow with another length.
     *
     * @param length above 0, in the unit of {@code otherLength}
     */
    public static double onAnotherLength(double retention, double length, double otherLength) {
        if (!(length > 0 && otherLength > 0)) {
            throw new IllegalArgumentException(
                    "the lengths are " + length + " and " + otherLength + "; expected both above 0");
        }
        return retention * otherLength / length;
    }
}
