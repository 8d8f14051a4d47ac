package org.wickwise.lesson;

import org.wickwise.reason.Reason;
import org.wickwise.substance.Eluent;

/**
 * What one eluent is needed for.
 *
 * @param purpose "jars", "packing and loading", "step 1", as a list calls it
 * @param millilitresOfAGroup before reserve and rounding, 0 or more
 */
record LiquidUse(String purpose, Eluent eluent, double millilitresOfAGroup, Reason reason) {}
