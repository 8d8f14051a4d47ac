package org.wickwise.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Everything about earlier strips; without a further word it prints its help. */
@Command(
        name = "notebook",
        mixinStandardHelpOptions = true,
        description = "Lists, finds, shows and exports the strips kept in a notebook.",
        subcommands = {
            NotebookListCommand.class,
            NotebookFindCommand.class,
            NotebookShowCommand.class,
            NotebookExportCommand.class
        },
        footer = {
            "",
            "A notebook is a folder with one YAML file an entry; `record` adds to it. A file",
            "that cannot be read is set aside and told about; it stays where it is, and the",
            "rest is used."
        })
final class NotebookCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
