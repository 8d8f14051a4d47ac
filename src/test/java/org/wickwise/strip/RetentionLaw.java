package org.wickwise.strip;

/**
 * How retention changes with the eluent: laws that are straight lines of RM = log10 k, or nearly so, over some measure
 * of the eluent. Shares are by volume, 0 to 1; k is the retention factor, RM its logarithm.
 */
public final class RetentionLaw {

    private RetentionLaw() {}

    /**
     * Snyder's displacement on polar adsorbents: RM falls by activity times area for each unit of eluent strength
     * (L. R. Snyder, Principles of Adsorption Chromatography, 1968, from memory). For neutral dyes and thin loads.
     *
     * @param rm in an eluent of the strength {@code from}
     * @param activityTimesArea of adsorbent and dye; see {@link #activityTimesArea}
     * @return RM at the strength {@code to}
     */
    public static double displacement(double rm, double from, double to, double activityTimesArea) {
        return rm - activityTimesArea * (to - from);
    }

    /** What two strips of different strength say of the product of adsorbent activity and the area the dye needs. */
    public static double activityTimesArea(double rm, double strength, double otherRm, double otherStrength) {
        return (rm - otherRm) / (otherStrength - strength);
    }

    /**
     * A strong solvent in a weak one on a polar adsorbent: k falls with a power of its share (E. Soczewinski, Anal. Chem.
     * 1969, 41, 179, from memory). Good for about 5 to 60 %.
     *
     * @param k at the share {@code from}
     * @param displaced molecules displaced by one of the dye, usually 1 to 3
     * @return k at the share {@code to}
     */
    public static double soczewinski(double k, double from, double to, double displaced) {
        return k * Math.pow(to / from, -displaced);
    }

    /**
     * Linear solvent strength on a reversed phase: log10 k = log10 k_w - S share (L. R. Snyder, J. W. Dolan, J. R. Gant,
     * J. Chromatogr. 1979, 165, 3, from memory).
     *
     * @param kWithoutOrganicPart k_w
     * @param slope S, about 0.25 times the root of the molar mass
     */
    public static double linearSolventStrength(double kWithoutOrganicPart, double slope, double share) {
        return kWithoutOrganicPart * Math.pow(10, -slope * share);
    }

    /**
     * The same with a curve: log10 k = log10 k_w - S share + D share^2 (from memory, as Snyder, Dolan and Gant).
     *
     * @param curvature D; 0 gives the straight line
     */
    public static double quadraticSolventStrength(
            double kWithoutOrganicPart, double slope, double curvature, double share) {
        return kWithoutOrganicPart * Math.pow(10, (-slope + curvature * share) * share);
    }

    /**
     * A weak and a strong solvent where k stays finite without the strong one: k = (a + b share)^-m (P. Jandera, J.
     * Churacek, 1974, from memory).
     */
    public static double jandera(double a, double b, double m, double share) {
        return Math.pow(a + b * share, -m);
    }
}
