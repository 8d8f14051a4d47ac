package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.YamlFile;

/** Preferences of one's own: what is not said of a ranking or a cost is asked for, never taken as nothing. */
class WishesReaderTest {

    private final Problems problems = new Problems();

    @Test
    void the_shipped_preferences_weigh_every_ranking_of_the_table() throws IOException {
        Wishes wishes = read(shipped());
        assertThat(problems.isEmpty()).isTrue();
        assertThat(wishes.burdenOfRanking())
                .containsOnlyKeys(
                        "recommended", "problematic", "hazardous", "highly hazardous", "not listed", "unranked");
    }

    @Test
    void preferences_that_do_not_choose_by_cost_may_leave_it_out() throws IOException {
        String kept = shipped().replaceAll("(?m)^cost of a plan:\\n(?:  .*\\n)+", "");
        read(kept.replace("  - cost\n", ""));
        assertThat(problems.isEmpty()).isTrue();
        read(kept);
        assertThat(found()).containsExactly("the preferences has no `cost of a plan`");
    }

    @Test
    void preferences_without_burdens_are_told_once() throws IOException {
        read(shipped().replaceAll("(?m)^burden of a greenness ranking:\\n(?:  .*\\n?)+", ""));
        assertThat(found()).containsExactly("the preferences has no `burden of a greenness ranking`");
    }

    @Test
    void a_slip_in_a_ranking_is_one_problem() throws IOException {
        read(shipped().replace("highly hazardous: 6", "highly hazardus: 6"));
        assertThat(found()).containsExactly("`highly hazardus` is not a greenness ranking");
    }

    @Test
    void several_rankings_without_a_burden_are_told_together() throws IOException {
        read(shipped().replace("  not listed: 1\n", "").replace("  unranked: 1\n", ""));
        assertThat(found()).containsExactly("no burden of a solvent that is not listed and unranked");
    }

    private List<String> found() {
        return problems.found().problems().stream().map(Problem::found).toList();
    }

    private static String shipped() throws IOException {
        return Files.readString(Path.of("rules/preferences.yaml"));
    }

    private Wishes read(String content) {
        return new WishesReader(Shipped.data(), problems).wishes(YamlFile.parse("preferences.yaml", content));
    }
}
