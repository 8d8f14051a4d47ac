package org.wickwise.text;

/** Amounts that have to lie in a range before anything is reckoned with them. */
public final class Amounts {

    private Amounts() {}

    /**
     * The value itself.
     *
     * @param what how a person calls it, such as "front constant"
     * @param unit empty for a plain number
     * @throws IllegalArgumentException unless it is finite and above 0
     */
    public static double above0(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(found(what, value, unit) + "; expected a number above 0");
        }
        return value;
    }

    /**
     * The value itself.
     *
     * @param what how a person calls it, such as "height of the front"
     * @param unit empty for a plain number
     * @throws IllegalArgumentException unless it is finite and 0 or more
     */
    public static double atLeast0(String what, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(found(what, value, unit) + "; expected a number of 0 or more");
        }
        return value;
    }

    private static String found(String what, double value, String unit) {
        return "the " + what + " is " + value + (unit.isEmpty() ? "" : " " + unit);
    }
}
