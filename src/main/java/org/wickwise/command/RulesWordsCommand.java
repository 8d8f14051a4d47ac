package org.wickwise.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.wickwise.report.WordsText;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventDataReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the sentences that rules are made of. */
@Command(
        name = "words",
        mixinStandardHelpOptions = true,
        description = "Prints every sentence that rules are made of, or those that have to do with a word.",
        footer = {
            "",
            "  wickwise rules words             every sentence",
            "  wickwise rules words boiling     those that can speak of boiling points",
            "  wickwise rules words strip void  those that hold both words"
        })
final class RulesWordsCommand implements Callable<Integer> {

    @Parameters(arity = "0..*", paramLabel = "WORD", description = "words that a sentence has to hold")
    private List<String> words = List.of();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Rulebook book = Rulebook.read(
                Workbench.home().resolve("rules"),
                SolventDataReader.read(Workbench.home().resolve("solvent-data")));
        return Printed.ending(WordsText.of(book.words(), words, Terminal.heading()), spec);
    }
}
