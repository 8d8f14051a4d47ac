/**
 * Rules as sentences: vocabulary, checking, compiling, firing; facts in, conclusions with reasons out. The only room
 * that knows the rule engine. Uses the rooms up to {@code notebook}.
 */
package org.wickwise.rulebook;
