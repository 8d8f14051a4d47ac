package org.wickwise.strip;

/**
 * How retention on a strip becomes retention on a column of the same adsorbent: k_col = k_plate times the ratio of the
 * phase ratios, with the Rf first corrected for the front that runs ahead of the bulk of the eluent (Soczewinski,
 * Chromatographia, doi 10.1007/BF02262058, symbols read; Geiss, Fundamentals of Thin Layer Chromatography, 1987, from
 * memory).
 *
 * @param frontCorrection Rf of the bulk eluent over Rf observed, 1 or more: about 1.0 to 1.1 in a saturated jar, 1.1 to
 *     1.4 in an open one
 * @param phaseRatio adsorbent per volume of eluent, in the column over on the strip; above 0
 */
public record PlaneToColumn(double frontCorrection, double phaseRatio) {

    /** The strip taken for the column. */
    public static final PlaneToColumn ALIKE = new PlaneToColumn(1, 1);

    public PlaneToColumn {
        if (!(frontCorrection >= 1)) {
            throw new IllegalArgumentException(
                    "the front correction is " + frontCorrection + "; expected 1 or more, since no front runs behind");
        }
        if (!(phaseRatio > 0)) {
            throw new IllegalArgumentException("the phase ratio is " + phaseRatio + "; expected a number above 0");
        }
    }

    /**
     * Rf against the bulk of the eluent.
     *
     * @param observed Rf as read, above 0
     * @throws IllegalArgumentException if the corrected Rf is above 1
     */
    public double retardation(double observed) {
        double corrected = frontCorrection * observed;
        if (!(corrected > 0 && corrected <= 1)) {
            throw new IllegalArgumentException("an Rf of " + observed + " becomes " + corrected
                    + " with the front correction; expected above 0 and at most 1");
        }
        return corrected;
    }

    /** k on the strip against the bulk of the eluent. */
    public double retentionOnPlane(double observed) {
        double corrected = retardation(observed);
        return (1 - corrected) / corrected;
    }

    /** k to expect on the column, for a dilute dye and the same adsorbent in the same state of activity. */
    public double retentionOnColumn(double observed) {
        return phaseRatio * retentionOnPlane(observed);
    }
}
