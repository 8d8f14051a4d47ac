/** Questions put to a finished plan. Uses the rooms up to {@code plan}. */
package org.wickwise.why;
