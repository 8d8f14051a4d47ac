package org.wickwise.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Everything about the rules themselves; without a further word it prints its help. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description = "Checks, tries and prints the rules, the shipped ones and those of your own.",
        subcommands = {
            RulesCheckCommand.class,
            RulesTryCommand.class,
            RulesImpactCommand.class,
            RulesBookCommand.class,
            RulesWordsCommand.class
        },
        footer = {
            "",
            "Rules of your own stand in a folder: rule files that end in .yaml, and where",
            "you want them limits.yaml, preferences.yaml and switched-off.yaml. Name the",
            "folder with --rules when you plan."
        })
final class RulesCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
