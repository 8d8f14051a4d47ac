package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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
 * lines below it have to be all of its output, blank lines left out; {@code ...} skips. The exit code is 0, or what
 * {@code $ echo $?} shows.
 */
class DocumentedExamplesTest {

    private static final Pattern QUOTED_OR_WORD = Pattern.compile("\"([^\"]*)\"|\\S+");

    private static final String PROMPT = "$ wickwise ";
    private static final String GAP = "...";

    private static final String EXIT_CODE = "$ echo $?";

    /** @param shown the lines below the command, blank ones left out */
    record Shown(Path document, String command, List<String> shown) {

        private List<String> lines() {
            int asked = shown.indexOf(EXIT_CODE);
            return asked < 0 ? shown : shown.subList(0, asked);
        }

        int exitCode() {
            int asked = shown.indexOf(EXIT_CODE);
            return asked < 0 ? 0 : Integer.parseInt(shown.get(asked + 1));
        }

        /** Lines that follow one another without a gap; the first and the last piece are empty where a gap stands there. */
        List<List<String>> pieces() {
            List<List<String>> pieces = new ArrayList<>(List.of(new ArrayList<>()));
            for (String line : lines()) {
                if (line.equals(GAP)) {
                    pieces.add(new ArrayList<>());
                } else {
                    pieces.get(pieces.size() - 1).add(line);
                }
            }
            return pieces;
        }
    }

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
        CommandLineRun run = CommandLineRun.of(words(example.command()));
        List<String> printed = Stream.concat(run.out().lines(), run.err().lines())
                .filter(line -> !line.isBlank())
                .toList();
        List<List<String>> pieces = example.pieces();
        int from = 0;
        for (List<String> piece : pieces) {
            int at = Collections.indexOfSubList(printed.subList(from, printed.size()), piece);
            assertThat(at)
                    .as("%s is printed in one piece after line %d of the output", piece, from)
                    .isNotNegative();
            from += at + piece.size();
        }
        List<String> first = pieces.get(0);
        List<String> last = pieces.get(pieces.size() - 1);
        assertThat(printed.subList(0, first.size())).as("the beginning").isEqualTo(first);
        assertThat(printed.subList(printed.size() - last.size(), printed.size()))
                .as("the end")
                .isEqualTo(last);
        assertThat(pieces.size() > 1 || printed.equals(first))
                .as("nothing is left out where no gap is shown")
                .isTrue();
        assertThat(run.code()).as("exit code").isEqualTo(example.exitCode());
    }

    /** The words of a command line; what stands in double quotes is one word. */
    private static String[] words(String command) {
        return QUOTED_OR_WORD
                .matcher(command)
                .results()
                .map(word -> word.group(1) != null ? word.group(1) : word.group())
                .toArray(String[]::new);
    }

    static List<Path> documents() throws IOException {
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
                    shown.get(shown.size() - 1).shown().add(line);
                }
            }
        }
        return shown;
    }
}
