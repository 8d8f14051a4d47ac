/** Earlier strips and finished columns, kept in a folder from year to year. Uses the rooms up to {@code bench}. */
package org.wickwise.notebook;
