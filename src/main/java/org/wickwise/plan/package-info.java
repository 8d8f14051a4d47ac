/** What can be poured in which order: candidates, exact search, the finished plan. Uses the rooms up to {@code rulebook}. */
package org.wickwise.plan;
