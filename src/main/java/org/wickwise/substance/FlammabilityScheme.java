package org.wickwise.substance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a standard sorts liquids by their flash and boiling points.
 *
 * @param classes the most dangerous first; a liquid belongs to the first one it fits
 * @param source the standard
 */
public record FlammabilityScheme(String name, List<LiquidClass> classes, String source) {

    /** The scheme by which hazard codes are given. */
    public static final String OF_HAZARD_CODES = "UN GHS";

    /**
     * One class; a bound that is empty does not matter to it. All in degrees Celsius.
     *
     * @param hazardCode the code of this class; empty where the scheme has no codes
     */
    public record LiquidClass(
            String name,
            Optional<String> hazardCode,
            OptionalDouble flashBelow,
            OptionalDouble flashAtMost,
            OptionalDouble boilsBelow,
            OptionalDouble boilsAtMost) {

        private boolean takes(double flashCelsius, double boilingCelsius) {
            return isBelow(flashCelsius, flashBelow)
                    && isAtMost(flashCelsius, flashAtMost)
                    && isBelow(boilingCelsius, boilsBelow)
                    && isAtMost(boilingCelsius, boilsAtMost);
        }

        private static boolean isBelow(double value, OptionalDouble bound) {
            return bound.isEmpty() || value < bound.getAsDouble();
        }

        private static boolean isAtMost(double value, OptionalDouble bound) {
            return bound.isEmpty() || value <= bound.getAsDouble();
        }
    }

    public FlammabilityScheme {
        classes = List.copyOf(classes);
    }

    /**
     * The class of a liquid.
     *
     * @param flashCelsius closed-cup flash point
     * @param boilingCelsius (initial) boiling point
     * @return empty when the scheme does not count it among its classes
     * @throws IllegalArgumentException if one of them is no number
     */
    public Optional<LiquidClass> of(double flashCelsius, double boilingCelsius) {
        if (!Double.isFinite(flashCelsius) || !Double.isFinite(boilingCelsius)) {
            throw new IllegalArgumentException("a flash point of " + flashCelsius + " and a boiling point of "
                    + boilingCelsius + " degC; expected two numbers");
        }
        return classes.stream()
                .filter(one -> one.takes(flashCelsius, boilingCelsius))
                .findFirst();
    }

    /** The hazard codes that the classes have. */
    public List<String> hazardCodes() {
        return classes.stream()
                .map(LiquidClass::hazardCode)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }
}
