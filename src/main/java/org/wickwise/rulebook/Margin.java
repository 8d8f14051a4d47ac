package org.wickwise.rulebook;

import org.wickwise.reason.Reason;

/**
 * How far a reading lies from the limit that a conclusion turns on.
 *
 * @param conclusion that would not be drawn beyond the limit
 * @param reading what was measured
 * @param distance of the reading from the limit in Rf, 0 or more
 * @param uncertainties the same in standard uncertainties of the reading
 */
public record Margin(Reason.Concluded conclusion, Reason reading, Limit limit, double distance, double uncertainties) {}
