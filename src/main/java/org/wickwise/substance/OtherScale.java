package org.wickwise.substance;

/**
 * A property that people also rank solvents by, beside the ladder of a stationary phase.
 *
 * @param margin how far two values have to lie apart to count as different, in the unit of the property; above 0
 */
public record OtherScale(String property, double margin) {}
