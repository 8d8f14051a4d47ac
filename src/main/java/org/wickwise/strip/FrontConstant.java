package org.wickwise.strip;

import org.wickwise.text.Amounts;

/**
 * How fast a front climbs: z^2 = kappa t, with z from the surface of the liquid and t from the moment the strip touches it
 * (Lucas 1918; Washburn, Phys. Rev. 1921, 17, 273). A front slows down as it climbs; twice as far takes four times as long.
 *
 * @param squareMillimetresPerMinute kappa, above 0
 */
public record FrontConstant(double squareMillimetresPerMinute) {

    private static final double SQUARE_MILLIMETRES_PER_SQUARE_METRE = 1e6;
    private static final double SQUARE_MILLIMETRES_PER_SQUARE_CENTIMETRE = 100;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double METRES_PER_MICROMETRE = 1e-6;

    public FrontConstant {
        Amounts.above0("front constant", squareMillimetresPerMinute, "mm2/min");
    }

    /** @param squareCentimetresPerSecond kappa in the unit of the literature, above 0 */
    public static FrontConstant ofSquareCentimetresPerSecond(double squareCentimetresPerSecond) {
        return new FrontConstant(
                squareCentimetresPerSecond * SQUARE_MILLIMETRES_PER_SQUARE_CENTIMETRE * SECONDS_PER_MINUTE);
    }

    /** From one reading that counts from the surface of the liquid and from first contact. */
    public static FrontConstant of(FrontReading reading) {
        Amounts.above0("time", reading.minutes(), "min");
        return new FrontConstant(reading.millimetres() * reading.millimetres() / reading.minutes());
    }

    /**
     * Of a layer: kappa = 2 P0 dp (gamma/eta) cos(theta) (Guiochon and Siouffi 1978; Siouffi, Encyclopedia of Separation
     * Science).
     *
     * @param flowConstant P0, without unit, above 0; printed values lie between 0.0067 and 0.0082
     * @param particleMicrometres dp, diameter of the particles, above 0
     */
    public static FrontConstant ofLayer(double flowConstant, double particleMicrometres, FrontLiquid liquid) {
        Amounts.above0("flow constant", flowConstant, "");
        Amounts.above0("particle diameter", particleMicrometres, "micrometres");
        double squareMetresPerSecond =
                2 * flowConstant * particleMicrometres * METRES_PER_MICROMETRE * liquid.drawMetresPerSecond();
        return new FrontConstant(squareMetresPerSecond * SQUARE_MILLIMETRES_PER_SQUARE_METRE * SECONDS_PER_MINUTE);
    }

    /**
     * On the same strip in another liquid: kappa goes with (gamma/eta) cos(theta) (Lucas 1918; Washburn 1921). Where a
     * liquid swells the strip the true speed may differ by a factor of two.
     */
    public FrontConstant inAnother(FrontLiquid here, FrontLiquid other) {
        return new FrontConstant(squareMillimetresPerMinute * other.drawMetresPerSecond() / here.drawMetresPerSecond());
    }

    public double squareCentimetresPerSecond() {
        return squareMillimetresPerMinute / SQUARE_MILLIMETRES_PER_SQUARE_CENTIMETRE / SECONDS_PER_MINUTE;
    }

    /** How long the front takes to a height, 0 or more. */
    public double minutesTo(double millimetres) {
        Amounts.atLeast0("height", millimetres, "mm");
        return millimetres * millimetres / squareMillimetresPerMinute;
    }

    /** How high the front is after a time, 0 or more. */
    public double millimetresAfter(double minutes) {
        return Math.sqrt(squareMillimetresPerMinute * Amounts.atLeast0("time", minutes, "min"));
    }
}
