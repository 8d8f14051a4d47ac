package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.wickwise.Shipped;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * Whatever stands in a file of rules, reading and checking it ends with a book or with problems that have a place and a
 * way out. The profile {@code nightly} asks it of a million files.
 */
@PropertyDefaults(tries = 200, shrinking = ShrinkingMode.BOUNDED, edgeCases = EdgeCasesMode.NONE)
class RuleReaderFuzzTest {

    private static final Path HOSTILE = Path.of("src/test/resources/hostile-rules");
    private static final Path SOUND = Path.of("docs/examples/harbour-school-rules");
    private static final int LONGEST = 3_000;
    private static final List<String> FILES =
            List.of("rules.yaml", "rules.yaml", "rules.yaml", "limits.yaml", "switched-off.yaml", "preferences.yaml");
    private static final List<String> SNIPPETS = List.of(
            "\"",
            "'",
            "\\",
            "\n",
            "\n  ",
            "- ",
            ": ",
            "{",
            "}",
            "[",
            "]",
            ",",
            "#",
            "&a ",
            "*a ",
            "!!",
            "|\n",
            ">\n",
            "---\n",
            "%YAML 1.1\n",
            "<<: ",
            "? ",
            "\t",
            "\0",
            "\u001b[2J",
            "\u202e",
            "\u200b",
            "\ufeff",
            "\ud800",
            "\udc00",
            "\\u0000",
            "\\uD800",
            "NaN",
            "1e999",
            "-0",
            "9".repeat(400),
            "the ",
            "the parting gap",
            "E",
            "Z",
            "{E}",
            "{Z}",
            "eval(true)",
            "null",
            "~",
            "true",
            "who-decides",
            "in place of: who-decides",
            "its caution may vanish: yes",
            "E is unfit for this column",
            "E may enter this column",
            "E is not unfit for this column",
            "every dye stays in E",
            "E holds every dye",
            "caution on dust about E",
            "more than 10 % of E is of the family acid",
            "\u0085",
            "\u2028",
            "\ud83d\ude00",
            "\u0415",
            " ",
            "    ");
    private static final List<String> SEEDS = new ArrayList<>();
    private static final List<String> TOKENS = new ArrayList<>();

    @BeforeContainer
    static void readSeeds() {
        SEEDS.addAll(texts(SOUND));
        SEEDS.addAll(texts(Path.of("rules/layers")).stream()
                .map(text -> text.substring(0, Math.min(text.length(), LONGEST)))
                .toList());
        SEEDS.addAll(texts(HOSTILE));
        SEEDS.stream().flatMap(text -> Arrays.stream(tokens(text))).distinct().forEach(TOKENS::add);
        Shipped.rulebook();
    }

    @Property
    void a_changed_file_of_rules_is_read_or_refused(@ForAll("changed") String text, @ForAll("names") String name) {
        isReadOrRefused(name, text);
    }

    @Property
    void any_yaml_is_read_or_refused(@ForAll("yaml") String text, @ForAll("names") String name) {
        isReadOrRefused(name, text);
    }

    private static void isReadOrRefused(String name, String text) {
        try {
            RuleCheck.of(Shipped.rulebook().besideTexts(Map.of(name, text), Shipped.data()))
                    .forEach(RuleReaderFuzzTest::isTold);
        } catch (ProblemsFound refused) {
            assertThat(refused.problems()).isNotEmpty();
            refused.problems().forEach(RuleReaderFuzzTest::isTold);
        }
    }

    private static void isTold(Problem problem) {
        if (!problem.place().file().startsWith("own/")
                || problem.found().isBlank()
                || problem.expected().isBlank()
                || problem.wayOut().isBlank()) {
            throw new AssertionError("told without a place or a way out: " + problem);
        }
    }

    @Provide
    Arbitrary<String> names() {
        return Arbitraries.of(FILES);
    }

    /** A sound or hostile file with tokens taken out, doubled, exchanged, and others put in. */
    @Provide
    Arbitrary<String> changed() {
        return Arbitraries.randomValue(RuleReaderFuzzTest::changed);
    }

    private static String changed(Random random) {
        List<String> tokens = new ArrayList<>(List.of(tokens(SEEDS.get(random.nextInt(SEEDS.size())))));
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes && !tokens.isEmpty(); i++) {
            int at = random.nextInt(tokens.size());
            switch (random.nextInt(6)) {
                case 0 -> tokens.remove(at);
                case 1 -> tokens.add(at, tokens.get(at));
                case 2 -> tokens.set(at, tokens.set(random.nextInt(tokens.size()), tokens.get(at)));
                case 3 -> tokens.add(at, SNIPPETS.get(random.nextInt(SNIPPETS.size())));
                case 4 -> tokens.set(at, TOKENS.get(random.nextInt(TOKENS.size())));
                default -> tokens.add(at, letters(random));
            }
        }
        String text = String.join("", tokens);
        return text.substring(0, Math.min(text.length(), LONGEST));
    }

    private static String letters(Random random) {
        return random.ints(1 + random.nextInt(4), 0, Character.MAX_CODE_POINT + 1)
                .map(letter -> random.nextBoolean() ? letter % 0x3000 : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Keys that the readers know, or do not, over values of every kind, some levels deep. */
    @Provide
    Arbitrary<String> yaml() {
        Arbitrary<String> word = Arbitraries.oneOf(
                Arbitraries.of("layer", "about", "rules", "rule", "when", "then", "because", "source", "in place of"),
                Arbitraries.of("limits", "parting gap", "value", "unit", "lowest", "highest", "means", "switched off"),
                Arbitraries.of("choose by", "tails to wait for", "cost of a plan", "burden of a greenness ranking"),
                Arbitraries.of(SNIPPETS).map(RuleReaderFuzzTest::quoted),
                Arbitraries.doubles().map(String::valueOf),
                Arbitraries.strings().ofMaxLength(8).map(RuleReaderFuzzTest::quoted));
        Arbitrary<String> group = Arbitraries.lazy(
                        () -> Combinators.combine(word, value(word)).as((k, v) -> k + ": " + v))
                .list()
                .ofMaxSize(4)
                .map(entries -> "{" + String.join(", ", entries) + "}");
        return Arbitraries.frequencyOf(
                Tuple.of(5, group), Tuple.of(1, Arbitraries.strings().ofMaxLength(60)));
    }

    private static Arbitrary<String> value(Arbitrary<String> word) {
        return Arbitraries.recursive(
                () -> word,
                inner -> Arbitraries.oneOf(
                        inner.list().ofMaxSize(3).map(items -> "[" + String.join(", ", items) + "]"),
                        Combinators.combine(word, inner).as((k, v) -> "{" + k + ": " + v + "}"),
                        Combinators.combine(word, inner, word, inner)
                                .as((k, v, l, w) -> "{" + k + ": " + v + ", " + l + ": " + w + "}")),
                0,
                3);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }

    private static String[] tokens(String text) {
        return text.split("(?<=[\\s:,\\[\\]{}\"'])|(?=[\\s:,\\[\\]{}\"'])");
    }

    private static List<String> texts(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .sorted()
                    .map(RuleReaderFuzzTest::text)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
