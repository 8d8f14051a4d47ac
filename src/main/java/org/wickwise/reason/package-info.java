/** Reasons as data: a tree from a statement down to readings, table values and the case file. Uses {@code text}. */
package org.wickwise.reason;
