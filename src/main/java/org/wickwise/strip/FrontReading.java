package org.wickwise.strip;

import org.wickwise.text.Amounts;

/**
 * Where a front was at one look.
 *
 * @param minutes on the clock, 0 or more
 * @param millimetres height of the front, 0 or more
 */
public record FrontReading(double minutes, double millimetres) {

    public FrontReading {
        Amounts.atLeast0("time", minutes, "min");
        Amounts.atLeast0("height of the front", millimetres, "mm");
    }
}
