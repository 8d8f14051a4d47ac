package org.wickwise.text;

import java.math.BigDecimal;
import java.math.MathContext;

/** Reckoned figures as people read them: three significant digits, never in powers of ten. */
public final class Figures {

    private static final int DIGITS = 3;

    private Figures() {}

    /** "165", "0.661", "2330"; trailing zeros behind the point are left out. */
    public static String three(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(DIGITS));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
