package org.wickwise.text;

import java.util.function.DoublePredicate;

/**
 * Which numbers a field takes.
 *
 * @param expected how a person is told of them, such as "above 0 and at most 500 mm"
 * @param unit behind the number in messages; empty where the key names it
 */
public record Bounds(DoublePredicate takes, String expected, String unit) {

    private static final int DECIMALS = 3;

    /** From the least to the most, both included. */
    public static Bounds within(double least, double most, String unit) {
        return new Bounds(
                number -> number >= least && number <= most,
                plain(least) + " to " + plain(most) + (unit.isEmpty() ? "" : " " + unit),
                unit);
    }

    public static Bounds aboveZero() {
        return new Bounds(number -> number > 0, "a number above 0", "");
    }

    public static Bounds zeroOrMore() {
        return new Bounds(number -> number >= 0, "a number of 0 or more", "");
    }

    /** Above 0 and at most so much. */
    public static Bounds aboveZeroTo(double most, String unit) {
        return new Bounds(
                number -> number > 0 && number <= most,
                "above 0 and at most " + plain(most) + (unit.isEmpty() ? "" : " " + unit),
                unit);
    }

    /** The same numbers, told otherwise. */
    public Bounds told(String otherwise) {
        return new Bounds(takes, otherwise, unit);
    }

    /** The number with its unit. */
    String shown(double number) {
        return plain(number) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String plain(double number) {
        return Numbers.plain(number, DECIMALS);
    }
}
