package org.wickwise.command;

import java.util.concurrent.Callable;
import org.wickwise.report.RuleBookText;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventDataReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the sentences that rules are made of. */
@Command(
        name = "words",
        mixinStandardHelpOptions = true,
        description = "Prints every sentence that rules are made of, with an example of each.")
final class RulesWordsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Rulebook book = Rulebook.read(
                Workbench.home().resolve("rules"),
                SolventDataReader.read(Workbench.home().resolve("solvent-data")));
        return Printed.ending(RuleBookText.words(book), spec);
    }
}
