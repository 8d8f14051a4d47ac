package org.wickwise;

import org.wickwise.command.WickwiseCommand;

/** Starts Wickwise. */
public final class Wickwise {

    private Wickwise() {}

    public static void main(String[] arguments) {
        int code = WickwiseCommand.commandLineFor(arguments).execute(arguments);
        if (code != 0) {
            System.exit(code);
        }
    }
}
