package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Apart;

/** Whether the reason of a gap tells how that gap was reckoned. */
class GapsTest {

    private static final String READ = "front mm: 80, travel mm: {plum: 48, sand: 20}";
    private static final String REPORTED = "Rf: {plum: 0.6, sand: 0.25}";

    @TempDir
    private Path folder;

    /** Of two invented dyes on strips with these readings. */
    private Reason.Calculated gap(String... readings) throws IOException {
        Path file = folder.resolve("gap.yaml");
        StringBuilder text = new StringBuilder(
                """
                title: Invented
                mixture: {dyes: [{name: plum, class: neutral}, {name: sand, class: neutral}]}
                column: {stationary phase: silica}
                setting: college
                shelf: [heptane, ethyl acetate]
                strips:
                """);
        for (String reading : readings) {
            text.append("  - {solvent: ethyl acetate, ").append(reading).append("}\n");
        }
        Files.writeString(file, text);
        return Shipped.bench().judge().judge(Shipped.caseIn(file)).gaps().stream()
                .filter(Apart.MeasuredGap.class::isInstance)
                .map(gap -> (Reason.Calculated) ((Apart.MeasuredGap) gap).reason())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void two_travels_on_one_strip_share_their_origin() throws IOException {
        assertThat(gap(READ).formula())
                .isEqualTo("difference of the two travels over the front; u = sqrt(2 u_spot^2 + 2 gap^2 u_reading^2)"
                        + " / front");
        assertThat(gap(READ).reference()).doesNotContain("Birge");
    }

    @Test
    void two_reported_rf_share_nothing() throws IOException {
        assertThat(gap(REPORTED).formula()).isEqualTo("difference of the two Rf; u = sqrt(u_1^2 + u_2^2)");
        assertThat(gap(REPORTED).statement()).contains("by 0.35 ± 0.06 of Rf");
    }

    @Test
    void of_several_strips_the_mean_is_told() throws IOException {
        Reason.Calculated gap = gap(REPORTED, REPORTED);
        assertThat(gap.statement()).contains("by 0.35 ± 0.04 of Rf");
        assertThat(gap.formula())
                .isEqualTo("difference of the two Rf; u = sqrt(u_1^2 + u_2^2); of 2 strips the mean weighted by 1/u^2,"
                        + " widened by the Birge ratio where they scatter");
        assertThat(gap.reference()).contains("Birge");
    }

    @Test
    void strips_reckoned_otherwise_are_told_both() throws IOException {
        assertThat(gap(READ, REPORTED).formula())
                .contains("two travels over the front", "or difference of the two Rf", "of 2 strips");
    }
}
