/** Strips and spots; Rf with its uncertainty, k and RM; replicates and outliers. Uses {@code text}, {@code reason}, {@code substance}. */
package org.wickwise.strip;
