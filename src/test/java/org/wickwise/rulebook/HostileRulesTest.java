package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.plan.Planner;
import org.wickwise.report.FindingText;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * Folders of rules from a stranger are refused with a place, a kind and a way out, and do nothing else. The first line
 * of each file of the corpus says how it is refused.
 */
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class HostileRulesTest {

    private static final Path CORPUS = Path.of("src/test/resources/hostile-rules");
    private static final Path HARMLESS = CORPUS.resolve("harmless");
    private static final Pattern HEAD = Pattern.compile("# refused: ([a-z-]+), line (\\d+), as ([a-z-]+\\.yaml)");
    private static final String SECRET = "the-word-that-nobody-may-see";

    @TempDir
    private Path folder;

    @Test
    void the_corpus_is_not_small() {
        assertThat(hostile()).hasSizeGreaterThan(150);
    }

    @TestFactory
    Stream<DynamicTest> every_hostile_file_is_refused_as_its_first_line_says() {
        return hostile().stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> isRefusedAsItSays(file)));
    }

    private void isRefusedAsItSays(Path file) {
        String text = read(file);
        Matcher head = HEAD.matcher(text.lines().findFirst().orElse(""));
        assertThat(head.matches()).as("the first line says how it is refused").isTrue();
        Path own = folderWith(head.group(3), text);
        List<Problem> refused = refusals(own);
        assertThat(refused).as("refused with its kind, at its line").anySatisfy(problem -> {
            assertThat(codeOf(problem)).isEqualTo(head.group(1));
            assertThat(problem.place().line()).isEqualTo(Integer.parseInt(head.group(2)));
        });
        assertThat(refused).allSatisfy(HostileRulesTest::isATold);
        assertThat(refused).allSatisfy(problem -> assertThat(problem.place().file())
                .isEqualTo(own.resolve(head.group(3)).toString()));
    }

    @TestFactory
    Stream<DynamicTest> what_looks_like_a_program_but_is_text_for_people_is_taken_and_judged_as_text() {
        return files(HARMLESS).stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.getFileName().toString(), () -> assertThat(refusals(folderWith("rules.yaml", read(file))))
                                .isEmpty()));
    }

    @Test
    void a_plan_refuses_rules_that_would_never_end_as_the_check_does() {
        Path own = folderWith("rules.yaml", read(CORPUS.resolve("a-rule-that-denies-itself.yaml")));
        List<Problem> refused = problemsOf(() -> Rulebook.read(Path.of("rules"), Optional.of(own), Shipped.data()));
        assertThat(refused).extracting(Problem::code).containsOnly(RuleTrouble.DENIES_ITSELF.code());
    }

    @Test
    void the_shipped_rules_do_not_deny_themselves() {
        assertThat(SelfDenial.in(Shipped.rulebook())).isEmpty();
    }

    @Test
    void a_link_to_a_file_elsewhere_is_refused_and_its_content_is_told_to_nobody() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), SECRET + ": [" + SECRET);
        for (String name : List.of("rules.yaml", "limits.yaml", "switched-off.yaml", "preferences.yaml")) {
            Path own = emptyFolder();
            Files.createSymbolicLink(own.resolve(name), secret);
            assertThat(refusals(own)).singleElement().satisfies(problem -> {
                assertThat(problem.found()).contains("link");
                assertThat(shown(problem)).doesNotContain(SECRET);
            });
        }
    }

    @Test
    void a_link_to_itself_and_a_link_to_nothing_are_refused() throws IOException {
        Path own = emptyFolder();
        Files.createSymbolicLink(own.resolve("round.yaml"), own.resolve("round.yaml"));
        assertThat(refusals(own)).isNotEmpty().allSatisfy(HostileRulesTest::isATold);
        Path other = emptyFolder();
        Files.createSymbolicLink(other.resolve("gone.yaml"), other.resolve("no-such-file"));
        assertThat(refusals(other)).isNotEmpty().allSatisfy(HostileRulesTest::isATold);
    }

    @Test
    void a_linked_example_is_refused_and_its_content_is_told_to_nobody() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), SECRET + ": [" + SECRET);
        Path examples = Files.createDirectories(emptyFolder().resolve("examples"));
        Files.createSymbolicLink(examples.resolve("a.yaml"), secret);
        Path link = Files.createSymbolicLink(emptyFolder().resolve("examples"), examples);
        for (Path place : List.of(examples, link)) {
            assertThat(problemsOf(() -> RuleExamplesReader.read(place, "examples", Shipped.data())))
                    .singleElement()
                    .satisfies(problem -> assertThat(shown(problem)).doesNotContain(SECRET));
        }
    }

    @Test
    void a_folder_in_the_place_of_a_file_is_refused() throws IOException {
        Path own = emptyFolder();
        Files.createDirectories(own.resolve("rules.yaml"));
        assertThat(refusals(own)).singleElement().satisfies(HostileRulesTest::isATold);
    }

    @TestFactory
    Stream<DynamicTest> file_names_that_could_be_taken_for_something_else_are_refused() {
        return Stream.of(
                        "..\\..\\rules.yaml",
                        "a\u001b[2J.yaml",
                        "a\nb.yaml",
                        "$(touch canary).yaml",
                        "a;b.yaml",
                        "a\"b.yaml",
                        "%2e%2e%2frules.yaml",
                        "~.yaml",
                        "a".repeat(120) + ".yaml")
                .map(name -> DynamicTest.dynamicTest(name.replace('\u001b', '?'), () -> {
                    Path own = folderWith(name, "layer: x\nabout: y\n");
                    assertThat(refusals(own)).singleElement().satisfies(problem -> {
                        isATold(problem);
                        assertThat(problem.toString().lines()).hasSize(2);
                    });
                }));
    }

    @Test
    void what_is_no_text_is_refused() throws IOException {
        Path own = emptyFolder();
        Files.write(own.resolve("rules.yaml"), new byte[] {(byte) 0xC3, (byte) 0x28, 0, 1, 2});
        assertThat(refusals(own)).singleElement().satisfies(HostileRulesTest::isATold);
    }

    @TestFactory
    Stream<DynamicTest> what_is_too_large_is_refused_without_being_told_at_length() {
        String head = "layer: x\nabout: y\nrules:\n";
        String sound = "  - {rule: r%d, when: [there is a mixture], then: [caution on dust], because: z, source: s}\n";
        StringBuilder many = new StringBuilder(head);
        for (int i = 0; i < 10_000; i++) {
            many.append(String.format(sound, i));
        }
        return Stream.of(
                tooLarge("a file of more than a megabyte", head + "#".repeat(1_100_000)),
                tooLarge("ten thousand rules", many.toString()),
                tooLarge(
                        "ten thousand rules of one name",
                        head + String.format(sound, 1).repeat(10_000)),
                tooLarge("ten thousand rules without a name", head + "  - {}\n".repeat(10_000)),
                tooLarge(
                        "thousands of unknown sentences",
                        head + "  - {when: [" + "E is what it is, ".repeat(40) + "]}\n"
                                + ("  - {when: [" + "E is what it is, ".repeat(39) + "x]}\n").repeat(400)),
                tooLarge("ten thousand unknown keys", numbered(10_000, i -> "key" + i + ": 1\n")),
                tooLarge("ten thousand unknown limits", "limits:\n" + numbered(10_000, i -> "  k" + i + ": 1\n")),
                tooLarge("lists in lists", "layer: " + "[".repeat(100_000)),
                tooLarge("groups in groups", "layer: " + "{a: ".repeat(100_000)),
                tooLarge("dashes in dashes", "- ".repeat(100_000)),
                tooLarge("keys in keys", numbered(1_000, i -> " ".repeat(i) + "a:\n")),
                tooLarge("a word of nearly a megabyte", "layer: " + "a".repeat(900_000)),
                tooLarge("a key of nearly a megabyte", "\"" + "a".repeat(900_000) + "\": 1\n"),
                tooLarge("a number of nearly a megabyte", "layer: " + "9".repeat(900_000)),
                tooLarge("a name of nearly a megabyte", head + "  - rule: " + "a-".repeat(450_000)),
                tooLarge("a quote of nearly a megabyte", "layer: \"" + "\\u202e".repeat(150_000)),
                tooLarge("many hidden letters", head + "  - \"\\e\"\n".repeat(50_000)),
                tooLarge("many anchors", "layer: x\nabout: [" + "&a 1, *a, ".repeat(50_000) + "1]\n"),
                tooLarge("many documents", "layer: x\n" + "---\nlayer: x\n".repeat(50_000)));
    }

    private DynamicTest tooLarge(String name, String text) {
        return DynamicTest.dynamicTest(name, () -> {
            String file = text.startsWith("limits:") ? "limits.yaml" : "rules.yaml";
            List<Problem> refused = refusals(folderWith(file, text));
            assertThat(refused).isNotEmpty().hasSizeLessThanOrEqualTo(1_000).allSatisfy(HostileRulesTest::isATold);
            assertThat(refused).allSatisfy(problem -> assertThat(shown(problem)).hasSizeLessThan(20_000));
        });
    }

    private static String numbered(int count, java.util.function.IntFunction<String> line) {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < count; i++) {
            lines.append(line.apply(i));
        }
        return lines.toString();
    }

    @Test
    void too_many_files_and_too_much_in_many_files_are_refused() throws IOException {
        Path many = emptyFolder();
        for (int i = 0; i < 201; i++) {
            Files.writeString(many.resolve(i + ".yaml"), "layer: x\nabout: y\n");
        }
        assertThat(refusals(many)).extracting(Problem::code).containsExactly(RuleTrouble.TOO_MANY.code());
        Path much = emptyFolder();
        for (int i = 0; i < 3; i++) {
            Files.writeString(much.resolve(i + ".yaml"), "#".repeat(900_000) + "\nlayer: x\nabout: y\n");
        }
        assertThat(refusals(much)).extracting(Problem::code).containsExactly(RuleTrouble.TOO_MANY.code());
    }

    @Test
    void nothing_of_the_corpus_touches_a_file_or_calls_anybody() throws IOException {
        Path canary = Files.writeString(folder.resolve("canary"), "untouched");
        List<String> before = everythingIn(folder);
        try (Canary port = Canary.listening()) {
            List<Path> all = new ArrayList<>(hostile());
            all.addAll(files(HARMLESS));
            for (Path file : all) {
                Matcher head = HEAD.matcher(read(file).lines().findFirst().orElse(""));
                String text = read(file)
                        .replace("http://localhost/", "http://localhost:" + port.number() + "/")
                        .replace("canary", canary.toString());
                Path own = folderWith(head.matches() ? head.group(3) : "rules.yaml", text);
                List<String> withOwn = everythingIn(folder);
                refusals(own);
                assertThat(everythingIn(folder)).as(file.toString()).isEqualTo(withOwn);
                delete(own);
            }
            assertThat(port.calls()).isZero();
        }
        assertThat(everythingIn(folder)).isEqualTo(before);
        assertThat(canary).hasContent("untouched");
    }

    /** Read, checked, and where nothing is wrong compiled and asked for a plan. */
    private static List<Problem> refusals(Path own) {
        try {
            Rulebook book = Shipped.rulebook().beside(own, Shipped.data());
            List<Problem> found = RuleCheck.of(book);
            if (found.isEmpty()) {
                Planner planner = new Planner(book);
                assertThat(planner).isNotNull();
                Path keep = Path.of(System.getProperty("wickwise.cache", "target/compiled-rules"));
                Judge.of(book, Shipped.data(), keep).judge(Shipped.caseIn(Shipped.DEMO));
            }
            return found;
        } catch (ProblemsFound refused) {
            return refused.problems();
        }
    }

    private static List<Problem> problemsOf(Runnable reading) {
        try {
            reading.run();
        } catch (ProblemsFound refused) {
            return refused.problems();
        }
        return fail("nothing was refused");
    }

    private static void isATold(Problem problem) {
        assertThat(problem.place().file()).isNotEmpty();
        assertThat(problem.found()).isNotBlank();
        assertThat(problem.expected()).isNotBlank();
        assertThat(problem.wayOut()).isNotBlank();
        assertThat(shown(problem)).doesNotContainPattern("[\\p{Cc}\\p{Cf}&&[^\\n]]");
    }

    private static String shown(Problem problem) {
        return problem + FindingText.of(List.of(problem), place -> "");
    }

    private static String codeOf(Problem problem) {
        return problem.code().isEmpty() ? RuleTrouble.FORM.code() : problem.code();
    }

    private static List<Path> hostile() {
        return files(CORPUS);
    }

    private static List<Path> files(Path place) {
        try (Stream<Path> files = Files.list(place)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path emptyFolder() {
        try {
            return Files.createTempDirectory(folder, "own");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path folderWith(String name, String text) {
        try {
            Path own = emptyFolder();
            Files.writeString(own.resolve(name), text);
            return own;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> everythingIn(Path place) throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            return files.map(file -> file + " " + file.toFile().length() + " "
                            + file.toFile().lastModified())
                    .filter(line -> !line.startsWith(place + " "))
                    .sorted()
                    .toList();
        }
    }

    private static void delete(Path own) throws IOException {
        try (Stream<Path> files = Files.walk(own)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
