package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.wickwise.command.CommandLineRun;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Problems;
import org.wickwise.text.YamlFile;

/**
 * Runs what README and docs show. In a block marked {@code console} a line {@code $ wickwise ...} is executed, and the
 * lines below it have to appear in the output in that order; {@code ...} skips.
 */
class DocumentedExamplesTest {

    private static final Pattern QUOTED_OR_WORD = Pattern.compile("\"([^\"]*)\"|\\S+");

    private static final String PROMPT = "$ wickwise ";

    record Shown(Path document, String command, List<String> lines) {}

    @TestFactory
    Stream<DynamicTest> whatADocumentShowsIsWhatTheProgramPrints() throws IOException {
        return shown().stream()
                .map(example -> DynamicTest.dynamicTest(
                        example.document() + ": " + example.command(), () -> printsWhatIsShown(example)));
    }

    @Test
    void theReadmeAndTheGuideShowSomething() throws IOException {
        assertThat(shown())
                .extracting(example -> example.document().getFileName().toString())
                .contains("README.md", "guide.md");
    }

    @Test
    void theFilesThatDocumentsPointAtAreThere() throws IOException {
        List<String> missing = new ArrayList<>();
        for (Path document : documents()) {
            java.util.regex.Matcher link =
                    java.util.regex.Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(Files.readString(document));
            while (link.find()) {
                Path parent = document.getParent() == null ? Path.of("") : document.getParent();
                if (!Files.exists(parent.resolve(link.group(1)))) {
                    missing.add(document + " points at " + link.group(1));
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void thePageOnRuleWritingListsEverySentenceOfTheVocabulary() throws IOException {
        String page = Files.readString(Path.of("docs/rule-writing.md"));
        List<String> missing = new ArrayList<>();
        for (String name : YamlFile.namesIn(Path.of("rules/words"))) {
            Fields words = Fields.of(
                    YamlFile.read(Path.of("rules/words", name)), "words", Set.of("about", "sentences"), new Problems());
            for (Node sentence : words.list("sentences")) {
                Fields.ofNode(sentence, "a sentence", Set.of("say", "means", "concludes", "example"), new Problems())
                        .text("example")
                        .filter(example -> !page.contains(example))
                        .ifPresent(missing::add);
            }
        }
        assertThat(missing).isEmpty();
    }

    private static void printsWhatIsShown(Shown example) {
        List<String> printed =
                CommandLineRun.of(words(example.command())).out().lines().toList();
        int from = 0;
        for (String line : example.lines()) {
            if (line.strip().equals("...")) {
                continue;
            }
            int at = printed.subList(from, printed.size()).indexOf(line);
            assertThat(at)
                    .as("`%s` is printed after line %d of the output", line, from)
                    .isNotNegative();
            from += at + 1;
        }
    }

    /** The words of a command line; what stands in double quotes is one word. */
    private static String[] words(String command) {
        return QUOTED_OR_WORD
                .matcher(command)
                .results()
                .map(word -> word.group(1) != null ? word.group(1) : word.group())
                .toArray(String[]::new);
    }

    private static List<Path> documents() throws IOException {
        List<Path> documents = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> files = Files.walk(Path.of("docs"))) {
            files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(documents::add);
        }
        return documents;
    }

    private static List<Shown> shown() throws IOException {
        List<Shown> shown = new ArrayList<>();
        for (Path document : documents()) {
            boolean inBlock = false;
            for (String line : Files.readAllLines(document)) {
                if (line.startsWith("```")) {
                    inBlock = line.equals("```console");
                } else if (inBlock && line.startsWith(PROMPT)) {
                    shown.add(new Shown(document, line.substring(PROMPT.length()), new ArrayList<>()));
                } else if (inBlock && !line.isBlank()) {
                    shown.get(shown.size() - 1).lines().add(line);
                }
            }
        }
        return shown;
    }
}
