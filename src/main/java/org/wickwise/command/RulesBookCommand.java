package org.wickwise.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.report.HtmlPage;
import org.wickwise.report.RuleBookText;
import org.wickwise.rulebook.RuleExample;
import org.wickwise.rulebook.RuleExamplesReader;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the rule book as a document to read. */
@Command(
        name = "book",
        mixinStandardHelpOptions = true,
        description =
                "Prints the whole rule book to read: every rule, its reason, source and examples, and the limits.",
        footer = {"", "Send it into a file: wickwise rules book --as html > rules.html"})
final class RulesBookCommand implements Callable<Integer> {

    /** What the document is made as. */
    enum Kind {
        MARKDOWN,
        HTML;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "a folder with rules of your own")
    private Optional<Path> folder;

    @Option(
            names = "--as",
            paramLabel = "KIND",
            defaultValue = "markdown",
            description = "the kind of document: ${COMPLETION-CANDIDATES} (default: markdown)")
    private Kind kind;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Path home = Workbench.home();
        SolventData data = SolventDataReader.read(home.resolve("solvent-data"));
        Rulebook book = Rulebook.read(home.resolve("rules"), folder.map(Workbench::named), data);
        List<RuleExample> examples =
                new ArrayList<>(RuleExamplesReader.read(home.resolve("rules/examples"), "rules/examples", data));
        folder.map(Workbench::named)
                .map(own -> own.resolve("examples"))
                .filter(Files::isDirectory)
                .ifPresent(own -> examples.addAll(RuleExamplesReader.read(own, own.toString(), data)));
        String markdown = RuleBookText.of(book, examples);
        return Printed.ending(kind == Kind.HTML ? HtmlPage.of("The rule book", markdown) : markdown, spec);
    }
}
