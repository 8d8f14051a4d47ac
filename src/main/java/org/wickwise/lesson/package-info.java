/**
 * A lesson with many groups: what to have ready, what the air and the clock allow, each group's plan, and what the finished
 * columns teach. Uses the rooms up to {@code plan}.
 */
package org.wickwise.lesson;
