package org.wickwise.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/**
 * One run of the command line as a user would start it.
 *
 * @param code the exit code
 */
public record CommandLineRun(int code, String out, String err) {

    public static CommandLineRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = WickwiseCommand.commandLine();
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        int code = line.execute(arguments);
        return new CommandLineRun(code, out.toString(), err.toString());
    }
}
