/**
 * What happens in a column: sizes, volumes and loads, bands on the bed and at the outlet, fractions put together, flow.
 * Uses the rooms up to {@code strip}.
 */
package org.wickwise.column;
