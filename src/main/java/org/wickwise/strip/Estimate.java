package org.wickwise.strip;

import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;

/** What the strips let one reckon of a dye in an eluent that nobody ran. */
public sealed interface Estimate {

    /** @param retardationFactor with the uncertainty of a prediction */
    record Reckoned(RetardationFactor retardationFactor, Reason reason) implements Estimate, Ground {}

    /**
     * Only one side is known.
     *
     * @param retardation the dye runs no further than this Rf, at about 95 %
     */
    record AtMost(double retardation, Reason reason) implements Estimate, Ground {}

    /**
     * Only one side is known.
     *
     * @param retardation the dye runs at least to this Rf, at about 95 %
     */
    record AtLeast(double retardation, Reason reason) implements Estimate, Ground {}

    /** @param why in words, for a person */
    record NotReckoned(String why) implements Estimate {}
}
