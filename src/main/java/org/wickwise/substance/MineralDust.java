package org.wickwise.substance;

import org.wickwise.text.Amounts;

/** Dust of a mineral in the air of a room. */
public final class MineralDust {

    private MineralDust() {}

    /**
     * The exposure limit of a dust that holds only part of a mineral, the figure of the regulation over the percentage (29 CFR
     * 1910.1000, Table Z-3).
     *
     * @param milligramsPerCubicMetreAtOnePercent the figure of the regulation, above 0
     * @param mineralPercent how much of the dust is the mineral, above 0 and at most 100
     * @return milligrams of dust in a cubic metre
     */
    public static double milligramsPerCubicMetre(double milligramsPerCubicMetreAtOnePercent, double mineralPercent) {
        Amounts.above0("figure of the regulation", milligramsPerCubicMetreAtOnePercent, "mg/m3");
        if (!(mineralPercent > 0 && mineralPercent <= 100)) {
            throw new IllegalArgumentException(
                    "the mineral is " + mineralPercent + " % of the dust; expected above 0 and at most 100 %");
        }
        return milligramsPerCubicMetreAtOnePercent / mineralPercent;
    }
}
