/**
 * A plan, a reason, an answer or a lesson as text, Markdown, HTML, SVG, CSV or JSON. Prints what it is given and decides
 * nothing. Uses the rooms up to {@code lesson}.
 */
package org.wickwise.report;
