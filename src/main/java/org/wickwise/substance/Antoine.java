package org.wickwise.substance;

import java.util.Map;
import java.util.Optional;

/**
 * Vapour pressure by log10(P/Pa) = A - B/(T/K + C); constants after Poling, Prausnitz and O'Connell, The Properties of
 * Gases and Liquids, 5th ed., 2001, Appendix A.
 *
 * @param fromKelvin lowest temperature the constants were fitted to
 * @param toKelvin highest
 */
record Antoine(double a, double b, double c, double fromKelvin, double toKelvin) {

    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;
    private static final double ATMOSPHERE_PASCAL = 101_325;

    /** The constants of a solvent; empty when the table has none for it. */
    static Optional<Antoine> of(Solvent solvent) {
        return solvent.value("Antoine constants")
                .map(TableValue::constants)
                .filter(Antoine::complete)
                .map(Antoine::of);
    }

    private static boolean complete(Map<String, Double> constants) {
        return constants.keySet().containsAll(java.util.List.of("A", "B", "C", "from kelvin", "to kelvin"));
    }

    private static Antoine of(Map<String, Double> constants) {
        return new Antoine(
                constants.get("A"),
                constants.get("B"),
                constants.get("C"),
                constants.get("from kelvin"),
                constants.get("to kelvin"));
    }

    /** Vapour pressure in kilopascal. Outside the fitted range it is an extrapolation. */
    double kilopascalAt(double celsius) {
        return Math.pow(10, a - b / (celsius + KELVIN_AT_ZERO_CELSIUS + c)) / 1000;
    }

    /** Where the vapour pressure reaches 101.325 kPa, in degrees Celsius. */
    double boilingPointCelsius() {
        return b / (a - Math.log10(ATMOSPHERE_PASCAL)) - c - KELVIN_AT_ZERO_CELSIUS;
    }

    /** Share of the vapour in air over the liquid, in per cent by volume at 101.325 kPa. */
    double percentInAirAt(double celsius) {
        return 100 * kilopascalAt(celsius) * 1000 / ATMOSPHERE_PASCAL;
    }
}
