package org.wickwise.column;

import org.wickwise.text.Amounts;

/**
 * What a liquid can dissolve of a bed at most: as if every drop left saturated.
 *
 * @param grams dissolved, 0 or more
 * @param bedGrams dry mass of the bed, above 0
 */
public record DissolvedBed(double grams, double bedGrams) {

    private static final double MILLIGRAMS_PER_GRAM = 1000;

    public DissolvedBed {
        Amounts.atLeast0("mass dissolved", grams, "g");
        Amounts.above0("mass of the bed", bedGrams, "g");
    }

    /**
     * Volume times solubility.
     *
     * @param litres poured through, 0 or more
     * @param milligramsPerLitre solubility of the adsorbent, 0 or more
     */
    public static DissolvedBed by(double litres, double milligramsPerLitre, double bedGrams) {
        return new DissolvedBed(litres * milligramsPerLitre / MILLIGRAMS_PER_GRAM, bedGrams);
    }

    /**
     * A solubility printed as moles in a kilogram of solvent, in milligrams a kilogram.
     *
     * @param molesPerKilogram 0 or more
     * @param gramsPerMole molar mass of the adsorbent, above 0
     */
    public static double milligramsPerKilogram(double molesPerKilogram, double gramsPerMole) {
        Amounts.atLeast0("solubility", molesPerKilogram, "mol/kg");
        Amounts.above0("molar mass", gramsPerMole, "g/mol");
        return molesPerKilogram * gramsPerMole * MILLIGRAMS_PER_GRAM;
    }

    /** In per cent of the bed; all of it where more could be dissolved than there is. */
    public double percentOfBed() {
        return Math.min(100, 100 * grams / bedGrams);
    }
}
