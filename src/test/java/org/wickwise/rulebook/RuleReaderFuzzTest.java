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
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.wickwise.Shipped;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * Whatever stands in a file of rules, reading and checking it ends with a book or with problems that have a place and a
 * way out. The profile {@code nightly} asks it of a million files.
 */
@PropertyDefaults(shrinking = ShrinkingMode.BOUNDED, edgeCases = EdgeCasesMode.NONE)
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
    private static final List<String> KEYS = List.of(
            "layer",
            "about",
            "rules",
            "rule",
            "when",
            "then",
            "because",
            "source",
            "in place of",
            "limits",
            "parting gap",
            "value",
            "unit",
            "lowest",
            "highest",
            "means",
            "switched off",
            "its caution may vanish",
            "choose by",
            "tails to wait for",
            "cost of a plan",
            "burden of a greenness ranking",
            "unranked",
            "step");
    private static final List<Changed> SEEDS = new ArrayList<>();
    private static final List<String> TOKENS = new ArrayList<>();

    @BeforeContainer
    static void readSeeds() {
        SEEDS.addAll(files(SOUND));
        ownRulesLikeShippedOnes().forEach(SEEDS::add);
        SEEDS.addAll(files(HOSTILE));
        SEEDS.stream()
                .flatMap(seed -> Arrays.stream(tokens(seed.text())))
                .filter(token -> !token.isBlank())
                .distinct()
                .forEach(TOKENS::add);
        Shipped.rulebook();
    }

    @Property(tries = 10_000)
    void a_changed_file_of_rules_is_read_or_refused(@ForAll("changed") Changed file) {
        isReadOrRefused(file.name(), file.text());
    }

    @Property(tries = 10_000)
    void any_yaml_is_read_or_refused(@ForAll("yaml") String text, @ForAll("names") String name) {
        isReadOrRefused(name, text);
    }

    @Tag("nightly")
    @Property(tries = 500_000)
    void many_changed_files_of_rules_are_read_or_refused(@ForAll("changed") Changed file) {
        isReadOrRefused(file.name(), file.text());
    }

    @Tag("nightly")
    @Property(tries = 500_000)
    void much_yaml_is_read_or_refused(@ForAll("yaml") String text, @ForAll("names") String name) {
        isReadOrRefused(name, text);
    }

    /** Or else the properties would speak of files that no reader looks into. */
    @Example
    void changed_files_come_as_far_as_every_kind_of_trouble_a_reader_tells() {
        Random random = new Random(7);
        Map<String, Integer> outcomes = new TreeMap<>();
        for (int i = 0; i < 1_000; i++) {
            Changed file = changed(random);
            outcomes(file.name(), file.text()).forEach(code -> outcomes.merge(code, 1, Integer::sum));
        }
        assertThat(outcomes.getOrDefault("taken", 0) + outcomes.getOrDefault("says-the-same", 0))
                .isGreaterThan(100);
        assertThat(outcomes.keySet()).hasSizeGreaterThan(12);
    }

    private static Set<String> outcomes(String name, String text) {
        try {
            List<Problem> found = RuleCheck.of(Shipped.rulebook().besideTexts(Map.of(name, text), Shipped.data()));
            return found.isEmpty() ? Set.of("taken") : codes(found);
        } catch (ProblemsFound refused) {
            return codes(refused.problems());
        }
    }

    private static Set<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).collect(Collectors.toSet());
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
    Arbitrary<Changed> changed() {
        return Arbitraries.randomValue(RuleReaderFuzzTest::changed);
    }

    private static Changed changed(Random random) {
        Changed seed = SEEDS.get(random.nextInt(SEEDS.size()));
        List<String> tokens = new ArrayList<>(List.of(tokens(seed.text())));
        int changes = random.nextInt(4);
        for (int i = 0; i < changes && !tokens.isEmpty(); i++) {
            int at = random.nextInt(tokens.size());
            switch (random.nextInt(8)) {
                case 0 -> tokens.remove(at);
                case 1 -> tokens.add(at, tokens.get(at));
                case 2 -> tokens.set(at, tokens.set(random.nextInt(tokens.size()), tokens.get(at)));
                case 3 -> tokens.add(at, SNIPPETS.get(random.nextInt(SNIPPETS.size())));
                case 4 -> tokens.add(at, letters(random));
                case 5 -> word(tokens, at, quoted(letters(random)));
                default -> word(tokens, at, TOKENS.get(random.nextInt(TOKENS.size())));
            }
        }
        String text = String.join("", tokens);
        String name = random.nextInt(20) == 0 ? FILES.get(random.nextInt(FILES.size())) : seed.name();
        return new Changed(name, text.substring(0, Math.min(text.length(), LONGEST)));
    }

    /** Another word in the place of the next word, so that the rest is read as before. */
    private static void word(List<String> tokens, int from, String word) {
        for (int i = from; i < tokens.size(); i++) {
            if (!tokens.get(i).isBlank()
                    && Character.isLetterOrDigit(tokens.get(i).charAt(0))) {
                tokens.set(i, word);
                return;
            }
        }
    }

    /** @param name of the file in the folder */
    record Changed(String name, String text) {}

    /** One small sound file for each shipped rule, so that a change reaches far. */
    private static Stream<Changed> ownRulesLikeShippedOnes() {
        return Shipped.rulebook().rules().stream()
                .map(rule -> new Changed(
                        "rules.yaml",
                        "layer: our room\nabout: Our room.\nrules:\n  - rule: our-" + rule.id() + "\n    when:\n"
                                + sentences(rule.when()) + "    then:\n" + sentences(rule.then())
                                + "    because: invented\n    source: invented\n"));
    }

    private static String sentences(List<Said> said) {
        return said.stream().map(one -> "      - \"" + one.written() + "\"\n").collect(Collectors.joining());
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
        return Arbitraries.randomValue(random -> random.nextInt(8) == 0 ? letters(random) : group(random, 0));
    }

    private static String group(Random random, int depth) {
        StringBuilder group = new StringBuilder("{");
        for (int i = random.nextInt(5); i > 0; i--) {
            group.append(word(random))
                    .append(": ")
                    .append(value(random, depth + 1))
                    .append(i == 1 ? "" : ", ");
        }
        return group.append("}").toString();
    }

    private static String value(Random random, int depth) {
        int kind = random.nextInt(depth > 4 ? 1 : 3);
        return kind == 0
                ? word(random)
                : kind == 1 ? group(random, depth) : "[" + group(random, depth) + ", " + word(random) + "]";
    }

    private static String word(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> quoted(SNIPPETS.get(random.nextInt(SNIPPETS.size())));
            case 1 -> String.valueOf(random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20));
            case 2 -> quoted(letters(random));
            default -> KEYS.get(random.nextInt(KEYS.size()));
        };
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }

    private static String[] tokens(String text) {
        return text.split("(?<=[\\s:,\\[\\]{}\"'])|(?=[\\s:,\\[\\]{}\"'])");
    }

    private static List<Changed> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .sorted()
                    .map(file -> new Changed(nameIn(file), text(file)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As the corpus says, or as the file is called. */
    private static String nameIn(Path file) {
        Matcher head = Pattern.compile(", as ([a-z-]+\\.yaml)").matcher(text(file));
        return head.find() ? head.group(1) : file.getFileName().toString();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
