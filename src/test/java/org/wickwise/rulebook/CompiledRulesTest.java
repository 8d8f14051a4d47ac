package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kie.api.KieBase;

/** Compiled rules are kept by content, and a damaged keepsake harms nobody. */
class CompiledRulesTest {

    private static final String ONE_RULE = RuleTranslation.of(List.of()) + "rule \"one\" when Limit() then end\n";
    private static final String TWO_RULES = ONE_RULE + "rule \"two\" when Limit() then end\n";

    @Test
    void rulesAreKeptOnceForEachContent(@TempDir Path keep) {
        assertThat(ruleCount(new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
        Path first = onlyFile(keep);
        assertThat(ruleCount(new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
        assertThat(onlyFile(keep)).isEqualTo(first);
        assertThat(ruleCount(new CompiledRules(keep, ShippedRules.none()).of(TWO_RULES)))
                .isEqualTo(2);
        assertThat(kept(keep)).hasSize(2);
    }

    @Test
    void keptRulesAreUsedAndNotCompiledAgain(@TempDir Path keep) throws IOException {
        new CompiledRules(keep, ShippedRules.none()).of(TWO_RULES);
        byte[] two = Files.readAllBytes(onlyFile(keep));
        Path elsewhere = keep.resolve("elsewhere");
        new CompiledRules(elsewhere, ShippedRules.none()).of(TWO_RULES);
        byte[] again = Files.readAllBytes(onlyFile(elsewhere));
        assertThat(again)
                .as("compiling leaves its time in the jar, so a second one differs")
                .isNotEqualTo(two);
        new CompiledRules(elsewhere, ShippedRules.none()).of(TWO_RULES);
        assertThat(Files.readAllBytes(onlyFile(elsewhere))).isEqualTo(again);
    }

    @Test
    void aDamagedKeepsakeIsMadeAnew(@TempDir Path keep) throws IOException {
        new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE);
        Files.writeString(onlyFile(keep), "not a jar any more");
        assertThat(ruleCount(new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
        assertThat(Files.size(onlyFile(keep))).isGreaterThan(1_000);
    }

    @Test
    void aTruncatedKeepsakeIsMadeAnewWhereverItIsCut(@TempDir Path keep) throws IOException {
        new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE);
        Path file = onlyFile(keep);
        byte[] whole = Files.readAllBytes(file);
        String fingerprint = file.getFileName().toString().split("-")[1];
        for (int length : new int[] {0, 1, whole.length / 2, whole.length - 1}) {
            Files.write(file, Arrays.copyOf(whole, length));
            assertThat(new KeptRules(keep).find(fingerprint))
                    .as("%d bytes", length)
                    .isEmpty();
        }
        assertThat(ruleCount(new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
        assertThat(new KeptRules(keep).find(fingerprint)).isPresent();
    }

    @Test
    void aKeepsakeWithOneByteChangedIsNotUsed(@TempDir Path keep) throws IOException {
        new KeptRules(keep).keep("abc", new byte[] {1, 2, 3, 4});
        assertThat(new KeptRules(keep).find("abc")).contains(new byte[] {1, 2, 3, 4});
        Files.write(onlyFile(keep), new byte[] {1, 2, 9, 4});
        assertThat(new KeptRules(keep).find("abc")).isEmpty();
    }

    @Test
    void whatAnotherBuildKeptIsNotUsed(@TempDir Path keep) throws IOException {
        new CompiledRules(keep, ShippedRules.none()).of(TWO_RULES);
        byte[] ofAnotherBuild = Files.readAllBytes(onlyFile(keep));
        Path elsewhere = keep.resolve("elsewhere");
        new CompiledRules(elsewhere, ShippedRules.none()).of(ONE_RULE);
        String fingerprint = onlyFile(elsewhere).getFileName().toString().split("-")[1];
        Files.delete(onlyFile(elsewhere));
        new KeptRules(elsewhere).keep(fingerprint, ofAnotherBuild);
        assertThat(ruleCount(new CompiledRules(elsewhere, ShippedRules.none()).of(ONE_RULE)))
                .as("the names of its classes tell that it is of other rules or another build")
                .isEqualTo(1);
        assertThat(Files.readAllBytes(onlyFile(elsewhere))).isNotEqualTo(ofAnotherBuild);
    }

    @Test
    void twoProcessesMayCompileTheSameRulesAtOnce(@TempDir Path keep) throws Exception {
        List<Process> both = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            both.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            AtOnce.class.getName(),
                            keep.toString())
                    .inheritIO()
                    .start());
        }
        for (Process one : both) {
            assertThat(one.waitFor(2, TimeUnit.MINUTES)).isTrue();
            assertThat(one.exitValue()).isEqualTo(1);
        }
        assertThat(kept(keep)).isNotEmpty().allMatch(file -> file.toString().endsWith(".jar"));
        assertThat(ruleCount(new CompiledRules(keep, ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
    }

    /** Ends with the number of rules it got as exit code. */
    static final class AtOnce {
        public static void main(String[] keep) {
            System.exit((int) ruleCount(new CompiledRules(Path.of(keep[0]), ShippedRules.none()).of(ONE_RULE)));
        }
    }

    @Test
    void readersNeverSeeHalfAFileWhileOthersWrite(@TempDir Path keep) {
        byte[] content = new byte[300_000];
        List<Optional<byte[]>> found = IntStream.range(0, 200)
                .parallel()
                .mapToObj(i -> {
                    KeptRules rules = new KeptRules(keep);
                    if (i % 2 == 0) {
                        rules.keep("abc", content);
                    }
                    return rules.find("abc");
                })
                .toList();
        assertThat(found)
                .allSatisfy(one -> one.ifPresent(bytes -> assertThat(bytes).isEqualTo(content)));
        assertThat(onlyFile(keep)).hasSize(content.length);
    }

    @Test
    void aFolderThatCannotBeWrittenOnlyCostsTime(@TempDir Path folder) throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "a file where the folder should be");
        assertThat(ruleCount(new CompiledRules(blocked, ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
        assertThat(ruleCount(new CompiledRules(blocked.resolve("keep"), ShippedRules.none()).of(ONE_RULE)))
                .isEqualTo(1);
        assertThat(blocked).hasContent("a file where the folder should be");
    }

    @Test
    void rulesEditedAgainAndAgainDoNotFillTheDisk(@TempDir Path keep) {
        KeptRules rules = new KeptRules(keep);
        for (int i = 0; i < KeptRules.MOST_FILES + 5; i++) {
            rules.keep("edit" + i, new byte[] {(byte) i});
        }
        assertThat(kept(keep)).hasSize(KeptRules.MOST_FILES);
    }

    private static long ruleCount(KieBase rules) {
        return rules.getKiePackages().stream()
                .mapToLong(found -> found.getRules().size())
                .sum();
    }

    private static Path onlyFile(Path keep) {
        assertThat(kept(keep)).hasSize(1);
        return kept(keep).get(0);
    }

    private static List<Path> kept(Path keep) {
        try (Stream<Path> files = Files.list(keep)) {
            return files.filter(Files::isRegularFile).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
