/** The command line: thin, one class a command. Uses every room. */
package org.wickwise.command;
