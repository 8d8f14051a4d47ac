package org.wickwise.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as every reader of a report sees them, whatever the machine's locale. */
public final class Numbers {

    private static final double BILLION = 1e9;
    private static final double LARGEST_EXACT_WHOLE_NUMBER = 1L << 53;

    private Numbers() {}

    /** Rounded to a billionth, so that 0.35 - 0.25 is 0.1 and a limit is met where a person sees it met. */
    public static double steady(double value) {
        double billionths = Math.rint(value * BILLION);
        return Math.abs(billionths) < LARGEST_EXACT_WHOLE_NUMBER
                ? billionths / BILLION
                : BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_EVEN).doubleValue();
    }

    /** With exactly so many decimals, point as separator. */
    public static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** With at most so many decimals, without trailing zeros. */
    public static String plain(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * Rounded up to two significant digits: as much as is to be kept ready for one column, which may be a millilitre or two.
     * What a class lays out goes by the marks of larger bottles.
     */
    public static String ready(double value) {
        BigDecimal steady = BigDecimal.valueOf(steady(value));
        return steady.signum() == 0
                ? "0"
                : steady.round(new MathContext(2, RoundingMode.UP)).toPlainString();
    }

    /** Rounded to two significant digits, the way a volume is poured. */
    public static String poured(double value) {
        return value == 0
                ? "0"
                : BigDecimal.valueOf(value).round(new MathContext(2)).toPlainString();
    }
}
