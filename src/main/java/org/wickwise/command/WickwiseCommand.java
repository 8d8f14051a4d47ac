package org.wickwise.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.wickwise.notebook.NotWritten;
import org.wickwise.text.ProblemsFound;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.ScopeType;

/** The command line as a whole; without a command it prints its help. */
@Command(
        name = "wickwise",
        mixinStandardHelpOptions = true,
        version = "Wickwise 0.1.0",
        description = "Turns chromatography strips into an explained column plan.",
        exitCodeListHeading = "%nExit codes%n",
        exitCodeList = {
            "0:a plan or an answer was printed",
            "1:the program itself is at fault",
            "2:the input or the command line cannot be used; the message says where and how to mend it",
            "3:no plan is sound; the refusal says why and what to try next"
        },
        footer = {"", "Begin with: wickwise plan docs/examples/ferry-ink.yaml"})
public final class WickwiseCommand implements Runnable {

    /** In the order of the help. */
    private static final List<Class<?>> COMMANDS = List.of(
            PlanCommand.class,
            WhyCommand.class,
            ShelfCommand.class,
            TableCommand.class,
            DrawCommand.class,
            FirmCommand.class,
            WhyNotCommand.class,
            SupposeCommand.class,
            NextCommand.class,
            NeededCommand.class,
            ClassCommand.class,
            SheetCommand.class,
            RulesCommand.class,
            RecordCommand.class,
            NotebookCommand.class,
            ForecastCommand.class,
            PrepareCommand.class,
            AirCommand.class,
            TimetableCommand.class,
            AfterwardsCommand.class);

    @Option(names = "--debug", scope = ScopeType.INHERIT, description = "show where in the program a fault happened")
    private boolean debug;

    private CommandLine line;

    private WickwiseCommand() {}

    /** The command line, ready to be executed with any arguments; what it prints is UTF-8. */
    public static CommandLine commandLine() {
        return commandLine(COMMANDS);
    }

    /**
     * The command line, ready to be executed with these arguments. Where they begin with the name of a command, only that
     * one is laid out: laying out all takes a noticeable part of a start.
     */
    public static CommandLine commandLineFor(String... arguments) {
        String first = arguments.length == 0 ? "" : arguments[0];
        List<Class<?>> named = COMMANDS.stream()
                .filter(type -> type.getAnnotation(Command.class).name().equals(first))
                .toList();
        return commandLine(named.isEmpty() ? COMMANDS : named);
    }

    private static CommandLine commandLine(List<Class<?>> commands) {
        WickwiseCommand command = new WickwiseCommand();
        command.line = new CommandLine(command);
        commands.forEach(command.line::addSubcommand);
        command.line.setCaseInsensitiveEnumValuesAllowed(true);
        command.line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
        command.line.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        command.line.setExecutionExceptionHandler(command::told);
        return command.line;
    }

    @Override
    public void run() {
        line.usage(line.getOut());
    }

    private int told(Exception exception, CommandLine where, ParseResult parsed) throws Exception {
        if (exception instanceof ProblemsFound problems) {
            where.getErr().println(problems.getMessage());
            int count = problems.problems().size();
            where.getErr()
                    .println(count == 1 ? "1 problem; nothing was done." : count + " problems; nothing was done.");
            return ExitCodes.BAD_INPUT;
        }
        if (exception instanceof NotWritten unwritten) {
            where.getErr().println(unwritten.problem());
            where.getErr().println(Unwritten.kept(unwritten));
            return ExitCodes.BAD_INPUT;
        }
        if (debug) {
            throw exception;
        }
        where.getErr()
                .println("Wickwise itself is at fault here, not your file: " + exception.getMessage()
                        + "\n    Please report it with the output of the same command and --debug.");
        return ExitCodes.FAULT;
    }
}
