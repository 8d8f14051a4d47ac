package org.wickwise.command;

/** What the program tells the shell. */
final class ExitCodes {

    /** A plan, or an answer. */
    static final int PLANNED = 0;

    /** The program itself is at fault. */
    static final int FAULT = 1;

    /** The input or the command line cannot be used. */
    static final int BAD_INPUT = 2;

    /** No plan is sound; the refusal says why. */
    static final int REFUSED = 3;

    private ExitCodes() {}
}
