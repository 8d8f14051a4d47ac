package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kie.api.KieBase;

/** Compiled rules are kept by content, and a damaged keepsake harms nobody. */
class CompiledRulesTest {

    private static final String ONE_RULE = RuleTranslation.of(List.of()) + "rule \"one\" when Limit() then end\n";

    @Test
    void rulesAreKeptOnceForEachContent(@TempDir Path keep) throws IOException {
        assertThat(ruleCount(new CompiledRules(keep).of(ONE_RULE))).isEqualTo(1);
        assertThat(ruleCount(new CompiledRules(keep).of(ONE_RULE))).isEqualTo(1);
        assertThat(kept(keep)).hasSize(1);
    }

    @Test
    void aDamagedKeepsakeIsMadeAnew(@TempDir Path keep) throws IOException {
        new CompiledRules(keep).of(ONE_RULE);
        Path jar = kept(keep).get(0);
        Files.writeString(jar, "not a jar any more");
        assertThat(ruleCount(new CompiledRules(keep).of(ONE_RULE))).isEqualTo(1);
        assertThat(Files.size(jar)).isGreaterThan(1_000);
    }

    @Test
    void aFolderThatCannotBeWrittenOnlyCostsTime(@TempDir Path folder) throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "a file where the folder should be");
        assertThat(ruleCount(new CompiledRules(blocked.resolve("keep")).of(ONE_RULE)))
                .isEqualTo(1);
    }

    private static long ruleCount(KieBase rules) {
        return rules.getKiePackages().stream()
                .mapToLong(found -> found.getRules().size())
                .sum();
    }

    private static List<Path> kept(Path keep) throws IOException {
        try (Stream<Path> files = Files.list(keep)) {
            return files.toList();
        }
    }
}
