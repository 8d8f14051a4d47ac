package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.plan.Keeping.Flask;

/** What is worth keeping of two invented dyes that a bed of few plates hardly parts. */
class KeepingTest {

    @TempDir
    private Path folder;

    private Plan plan;
    private Route route;

    @BeforeEach
    void planTwoDyesThatHardlyPart() throws IOException {
        Path file = folder.resolve("fast.yaml");
        Files.writeString(
                file,
                """
                title: fast pair (invented)
                mixture: {name: invented, dyes: [{name: plum, class: neutral}, {name: teal, class: neutral}]}
                column: {stationary phase: C18, bore mm: 10, bed mm: 50, plates: 30}
                setting: college
                shelf: [water, methanol]
                strips:
                  - {solvent: water, Rf: {plum: 0.01, teal: 0}}
                  - {solvent: water + methanol 3:7, Rf: {plum: 0.6, teal: 0.5}}
                """);
        plan = Shipped.planOf(file);
        route = plan.route().orElseThrow();
    }

    private static Flask ofTeal(Keeping keeping) {
        return keeping.flasks().get(1);
    }

    /** The same bands, with less poured. */
    private Route endingAt(double columnVolumes) {
        return new Route(
                route.packing(),
                route.steps(),
                new Elution(List.of(columnVolumes), route.elution().bands()),
                route.counted(),
                route.cost());
    }

    private String told(Route told, Keeping keeping) {
        return new KeepLines(plan.judgement(), told, keeping, Shipped.rulebook().columnSizes())
                .lines(0)
                .get(0)
                .text();
    }

    @Test
    void what_a_step_pours_far_enough_for_is_worth_a_flask() {
        Keeping keeping = Keeping.of(route, 0.98);
        assertThat(ofTeal(keeping).tooThin()).isFalse();
        assertThat(ofTeal(keeping).isEmpty()).isFalse();
        assertThat(ofTeal(keeping).recovery())
                .get(InstanceOfAssertFactories.DOUBLE)
                .isBetween(0.01, 0.2);
        assertThat(told(route, keeping)).contains("plum nowhere as pure as wanted", "teal from");
    }

    @Test
    void of_what_comes_only_after_its_step_nothing_is_caught() {
        Route brief = endingAt(2.3);
        Keeping keeping = Keeping.of(brief, 0.98);
        assertThat(ofTeal(keeping).recovery()).contains(0.0);
        assertThat(ofTeal(keeping).tooThin()).isTrue();
        assertThat(told(brief, keeping))
                .contains("teal as pure as wanted only in a thin end of its band")
                .doesNotContain("teal nowhere");
    }

    @Test
    void of_what_is_pure_only_where_next_to_nothing_leaves_nothing_is_caught() {
        Keeping keeping = Keeping.of(route, 0.999);
        assertThat(ofTeal(keeping).recovery()).contains(0.0);
        assertThat(told(route, keeping))
                .contains("teal as pure as wanted only in a thin end of its band")
                .doesNotContain("teal nowhere");
    }
}
