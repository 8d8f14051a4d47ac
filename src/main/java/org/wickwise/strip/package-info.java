/** Strips and spots, Rf with its uncertainty, replicates. Uses {@code text}, {@code reason}, {@code substance}. */
package org.wickwise.strip;
