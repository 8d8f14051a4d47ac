package org.wickwise.strip;

import org.wickwise.text.Amounts;

/**
 * A dye that gives off a proton, held differently with and without it: k = (k_HA + k_A 10^(pH - pKa))/(1 + 10^(pH - pKa))
 * (Horvath 1977, from memory).
 *
 * @param acidRetentionFactor k_HA of the dye with its proton, 0 or more
 * @param ionRetentionFactor k_A of the dye without it, 0 or more
 * @param pKa of the dye in this eluent
 */
public record IonisableDye(double acidRetentionFactor, double ionRetentionFactor, double pKa) {

    public IonisableDye {
        Amounts.atLeast0("retention factor of the acid", acidRetentionFactor, "");
        Amounts.atLeast0("retention factor of the ion", ionRetentionFactor, "");
        finite("pKa", pKa);
    }

    /** The share of the dye that has given off its proton, 0 to 1. */
    public double ionisedShare(double pH) {
        return 1 / (1 + Math.pow(10, pKa - finite("pH", pH)));
    }

    /** k at this pH, between k of the acid and k of the ion. */
    public double retentionFactor(double pH) {
        double ionised = ionisedShare(pH);
        return acidRetentionFactor * (1 - ionised) + ionRetentionFactor * ionised;
    }

    private static double finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the " + what + " is " + value + "; expected a number");
        }
        return value;
    }
}
