package org.wickwise.substance;

/**
 * A hazard code in short words.
 *
 * @param group the kind of harm, for marks in pictures
 */
public record HazardStatement(String code, String words, String group) {}
