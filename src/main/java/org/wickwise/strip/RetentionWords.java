package org.wickwise.strip;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.wickwise.text.Numbers;

/** How k is told to a reader: never more exactly than the strip shows it, and never as infinite. */
final class RetentionWords {

    private static final int DIGITS = 2;

    private RetentionWords() {}

    static String of(RetardationFactor factor) {
        boolean reachesOrigin = factor.lowest() <= 0;
        boolean reachesFront = factor.highest() >= 1;
        if (reachesOrigin && reachesFront) {
            return "k not known";
        }
        if (reachesOrigin) {
            return atLeast(retention(factor.highest()));
        }
        if (reachesFront) {
            return atMost(retention(factor.lowest()));
        }
        return factor.isFarFromBothEnds()
                ? withHalfWidth(factor.retentionFactor(), 2 * factor.retentionUncertainty())
                : "k " + rounded(retention(factor.highest()), RoundingMode.FLOOR) + " to "
                        + rounded(retention(factor.lowest()), RoundingMode.CEILING);
    }

    /** "k at least 79", rounded so that it stays true. */
    static String atLeast(double retention) {
        return "k at least " + rounded(retention, RoundingMode.FLOOR);
    }

    /** "k at most 0.017", rounded so that it stays true. */
    static String atMost(double retention) {
        return "k at most " + rounded(retention, RoundingMode.CEILING);
    }

    /** The half-width with one significant digit, and k no finer than that. */
    private static String withHalfWidth(double retention, double halfWidth) {
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(halfWidth)));
        return "k " + Numbers.fixed(retention, decimals) + " ± " + Numbers.fixed(halfWidth, decimals);
    }

    private static double retention(double retardation) {
        return (1 - retardation) / retardation;
    }

    private static String rounded(double retention, RoundingMode mode) {
        BigDecimal value = BigDecimal.valueOf(Numbers.steady(retention)).round(new MathContext(DIGITS, mode));
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
