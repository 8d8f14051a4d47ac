package org.wickwise.substance;

import org.wickwise.text.Amounts;

/**
 * The room a mole of vapour takes at one atmosphere, taken as an ideal gas: 24.45 L at 25 degC, 24.06 L at 20 degC.
 *
 * @param litresPerMole above 0
 */
public record MolarVolume(double litresPerMole) {

    private static final double GAS_CONSTANT_LITRE_ATMOSPHERES = 0.082057;
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

    public MolarVolume {
        Amounts.above0("molar volume", litresPerMole, "L/mol");
    }

    /** V = 0.082057 (273.15 + T), the ideal gas at 1 atm; T in degrees Celsius, above absolute zero. */
    public static MolarVolume at(double celsius) {
        return new MolarVolume(GAS_CONSTANT_LITRE_ATMOSPHERES * (KELVIN_AT_ZERO_CELSIUS + celsius));
    }
}
