package org.wickwise.notebook;

/**
 * How far strips usually scatter, before any were run.
 *
 * @param withinAClass standard deviation of the Rf of strips that one class runs on one day
 * @param betweenClasses standard deviation of the RM that classes find on different days
 */
public record Scatter(double withinAClass, double betweenClasses) {}
