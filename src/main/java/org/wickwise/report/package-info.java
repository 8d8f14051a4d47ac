/** A plan or a reason as text, Markdown or JSON. Prints what it is given and decides nothing. Uses the rooms up to {@code why}. */
package org.wickwise.report;
