package org.wickwise.column;

/**
 * Plates of a column, counted from a peak, and what follows from them. Retention and width come in one unit, of time,
 * volume or chart distance; lengths in one unit too.
 *
 * <p>N = (t/sigma)^2 = 16 (t/w)^2 = 8 ln 2 (t/w_h)^2 for a Gaussian peak (IUPAC nomenclature; Ettre, Pure Appl. Chem.
 * 1993, 65, 819).
 */
public final class Plates {

    private static final double SIGMAS_AT_BASE = 4;
    private static final double SIGMAS_SQUARED_AT_HALF_HEIGHT = 8 * Math.log(2);

    private Plates() {}

    /**
     * N from the width between the tangents at the base line, 16 (t/w)^2.
     *
     * @param retention of the peak's top, above 0
     * @param baseWidth above 0
     */
    public static double fromBaseWidth(double retention, double baseWidth) {
        return fromSigma(retention, baseWidth / SIGMAS_AT_BASE);
    }

    /**
     * N from the width at half height, 5.545 (t/w)^2.
     *
     * @param retention of the peak's top, above 0
     * @param halfHeightWidth above 0
     */
    public static double fromHalfHeightWidth(double retention, double halfHeightWidth) {
        return fromSigma(retention, halfHeightWidth / Math.sqrt(SIGMAS_SQUARED_AT_HALF_HEIGHT));
    }

    /**
     * N from the standard deviation, (t/sigma)^2.
     *
     * @param retention of the peak's top, above 0
     * @param sigma above 0
     */
    public static double fromSigma(double retention, double sigma) {
        Expected.aboveZero("the retention", retention);
        Expected.aboveZero("the width", sigma);
        return Math.pow(retention / sigma, 2);
    }

    /** H = L/N, in the unit of the length; both above 0. */
    public static double plateHeight(double length, double plates) {
        return Expected.aboveZero("the length", length) / Expected.aboveZero("the number of plates", plates);
    }

    /**
     * Rs = 2 (t2 - t1)/(w1 + w2); below 0 when the first is the later one.
     *
     * @param earlierBaseWidth above 0, as {@code laterBaseWidth}
     */
    public static double resolution(double earlier, double later, double earlierBaseWidth, double laterBaseWidth) {
        Expected.aboveZero("the width of the earlier peak", earlierBaseWidth);
        Expected.aboveZero("the width of the later peak", laterBaseWidth);
        return 2 * (later - earlier) / (earlierBaseWidth + laterBaseWidth);
    }

    /**
     * How long a column of the same packing gives the wanted resolution: it grows with the square root of the length.
     *
     * @param length of the column that gave {@code resolution}, above 0
     * @param resolution above 0
     * @param wanted above 0
     */
    public static double lengthForResolution(double length, double resolution, double wanted) {
        Expected.aboveZero("the length", length);
        Expected.aboveZero("the resolution", resolution);
        return length * Math.pow(Expected.aboveZero("the wanted resolution", wanted) / resolution, 2);
    }

    /**
     * Apparent dispersion coefficient of the equilibrium-dispersive model, D_a = u L/(2 N) (Guiochon, Shirazi, Felinger
     * and Katti, Fundamentals of Preparative and Nonlinear Chromatography, 2006, from memory).
     *
     * @param velocity of the mobile phase, length per time, above 0
     * @param length of the bed in the same length, above 0
     * @param plates above 0
     * @return length squared per time
     */
    public static double apparentDispersion(double velocity, double length, double plates) {
        return Expected.aboveZero("the velocity", velocity) * plateHeight(length, plates) / 2;
    }
}
