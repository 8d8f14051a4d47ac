package org.wickwise.substance;

import org.wickwise.text.Amounts;

/**
 * How much of the air is vapour, by volume. Exposure limits and explosive limits are such shares too.
 *
 * @param partsPerMillion 0 to 1 000 000
 */
public record VapourShare(double partsPerMillion) {

    private static final double WHOLE = 1e6;
    private static final double PARTS_PER_MILLION_OF_ONE_PER_CENT = 1e4;
    private static final double ATMOSPHERE_KILOPASCAL = 101.325;

    public VapourShare {
        if (!(partsPerMillion >= 0 && partsPerMillion <= WHOLE)) {
            throw new IllegalArgumentException(
                    "a vapour share of " + partsPerMillion + " ppm; expected 0 to 1 000 000 ppm");
        }
    }

    /** @param percent by volume, 0 to 100, as explosive limits are printed */
    public static VapourShare ofVolumePercent(double percent) {
        return new VapourShare(percent * PARTS_PER_MILLION_OF_ONE_PER_CENT);
    }

    /**
     * Over standing liquid in closed air, 1e6 P/(1 atm) (Prudent Practices for Handling Hazardous Chemicals in Laboratories,
     * 1981, p. 196).
     *
     * @param vapourPressureKilopascal 0 to 101.325; above that the liquid boils
     */
    public static VapourShare saturated(double vapourPressureKilopascal) {
        return new VapourShare(WHOLE * vapourPressureKilopascal / ATMOSPHERE_KILOPASCAL);
    }

    public double volumePercent() {
        return partsPerMillion / PARTS_PER_MILLION_OF_ONE_PER_CENT;
    }

    /**
     * Milligrams in a cubic metre, ppm M/V_m.
     *
     * @param gramsPerMole molar mass of the vapour, above 0
     */
    public double milligramsPerCubicMetre(double gramsPerMole, MolarVolume molarVolume) {
        return partsPerMillion * Amounts.above0("molar mass", gramsPerMole, "g/mol") / molarVolume.litresPerMole();
    }

    /** This share in per cent of a limit above 0. */
    public double percentOf(VapourShare limit) {
        return 100 * partsPerMillion / Amounts.above0("limit", limit.partsPerMillion, "ppm");
    }

    /** So many per cent of this share, 0 to 100. */
    public VapourShare percent(double percent) {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException(percent + " % of a vapour share; expected 0 to 100 %");
        }
        return new VapourShare(partsPerMillion * percent / 100);
    }

    /** Whether there is more vapour than a limit allows; the limit itself is allowed. */
    public boolean exceeds(VapourShare limit) {
        return partsPerMillion > limit.partsPerMillion;
    }
}
