/** Solvents, eluents, dyes, stationary phases: values with their sources. Uses {@code text} and {@code reason}. */
package org.wickwise.substance;
