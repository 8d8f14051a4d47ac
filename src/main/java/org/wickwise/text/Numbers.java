package org.wickwise.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as every reader of a report sees them, whatever the machine's locale. */
public final class Numbers {

    private Numbers() {}

    /** With exactly so many decimals, point as separator. */
    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** With at most so many decimals, without trailing zeros. */
    public static String plain(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Rounded to two significant digits, the way a volume is poured. */
    public static String poured(double value) {
        return value == 0
                ? "0"
                : BigDecimal.valueOf(value).round(new MathContext(2)).toPlainString();
    }
}
