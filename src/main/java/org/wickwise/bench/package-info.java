/** What lies on the bench: the case a person wrote down. Uses the rooms up to {@code column}. */
package org.wickwise.bench;
