package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finished column beside its plan, from the example. */
class AfterwardsTest {

    private static final String RUN = "docs/examples/ferry-ink-run.yaml";

    @TempDir
    private Path folder;

    @Test
    void the_example_says_what_came_early_what_stuck_and_what_it_teaches() {
        CommandLineRun run = CommandLineRun.of("afterwards", RUN);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out())
                .contains("[came-rust] Rust came at 99 ± 3 mL")
                .contains("It came 7 mL (0.4 column volumes)")
                .contains("[pool-straw] Put fractions 2 to 6 together for straw: purity over 99 %")
                .contains("[balance-harbour-blue] Harbour blue: 79 ± 5 % of what was loaded is in the fractions")
                .contains("[dye-stuck-on-the-bed] Some harbour blue stayed on the bed")
                .contains("[eluent-stronger-than-on-the-strip] Rust seems to have been held less")
                .contains("[k-straw] k of straw in heptane + ethyl acetate 9:1 on a column of silica: 1.9")
                .contains("[plates] The bed reached about 57 plates")
                .contains("[transfer] From strip to column k changed by a factor of 0.97")
                .doesNotContain("NaN", "Infinity");
    }

    @Test
    void every_line_has_a_reason_that_reaches_the_entry() throws IOException {
        List<String> labels = labels(CommandLineRun.of("afterwards", RUN, "--as", "json"));
        assertThat(labels).contains("run", "came-rust", "pool-rust", "balance-rust", "k-rust", "plates", "transfer");
        for (String label : labels) {
            CommandLineRun run = CommandLineRun.of("afterwards", RUN, label);
            assertThat(run.code()).as(label).isEqualTo(ExitCodes.PLANNED);
            assertThat(run.out()).as(label).contains("ferry-ink-run.yaml:");
        }
        assertThat(CommandLineRun.of("afterwards", RUN, "came-rusty").err()).contains("did you mean `came-rust`?");
    }

    private static List<String> labels(CommandLineRun run) throws IOException {
        return new ObjectMapper().readTree(run.out()).findValue("lines").findValuesAsText("label");
    }

    @Test
    void an_entry_without_a_run_is_refused_with_the_way_out() {
        CommandLineRun run =
                CommandLineRun.of("afterwards", "docs/examples/notebook/2025-11-04-cancelling-ink-group-1.yaml");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("tells of no finished column", "add it as in docs/examples/ferry-ink-run.yaml");
    }

    @Test
    void a_bed_of_unknown_size_still_gets_its_pools_and_its_balance() throws IOException {
        String entry = Files.readString(Path.of(RUN)).replace("  bed mm: 120\n", "");
        Path file = Files.writeString(folder.resolve("run.yaml"), entry);
        CommandLineRun run = CommandLineRun.of("afterwards", file.toString());
        assertThat(run.out())
                .contains("[size] How large the bed is was not written down", "[balance-rust] Rust: 97")
                .doesNotContain("[k-rust]", "NaN", "Infinity");
        CommandLineRun drawn = CommandLineRun.of("draw", file.toString(), "run");
        assertThat(drawn.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(drawn.err()).contains("the size of the bed is not known");
    }

    @Test
    void a_run_by_eye_that_went_wrong_is_told_with_doubt_and_bounds() throws IOException {
        String entry = Files.readString(Path.of(RUN));
        Path file = Files.writeString(
                folder.resolve("run.yaml"),
                entry.substring(0, entry.indexOf("run:"))
                        + """
                        run:
                          poured:
                            - {eluent: heptane + ethyl acetate 9:1, mL: 45}
                            - {eluent: acetone, mL: 60}
                          fractions:
                            - {mL: 8, dyes: [straw]}
                            - {mL: 28, dyes: [straw]}
                            - {mL: 8, dyes: [straw, rust]}
                            - {mL: 16, dyes: [rust]}
                            - {mL: 20, dyes: [harbour blue]}
                            - {mL: 20, dyes: [harbour blue]}
                          went wrong: [ran dry]
                        """);
        CommandLineRun run = CommandLineRun.of("afterwards", file.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("[doubt] Something went wrong with this run (ran dry)")
                .contains("Straw came at no later than about", "Harbour blue came at no sooner than about")
                .contains("[bed-ran-dry]", "[dye-ran-with-the-front]", "[stopped-before-the-end]")
                .contains("What was poured is something", "recovered is not known")
                .doesNotContain("NaN", "Infinity");
    }

    @Test
    void the_picture_holds_a_curve_and_the_bars_of_every_dye() {
        CommandLineRun run = CommandLineRun.of("draw", RUN, "run");
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out().split("class=\"curve\"", -1)).hasSize(1 + 3);
        assertThat(run.out().split("class=\"bar\"", -1)).hasSize(1 + 15);
        assertThat(run.out()).contains("Rust came at 99 mL, expected at 106 mL");
    }

    @Test
    void a_plan_of_the_same_case_says_nothing_of_runs() {
        assertThat(CommandLineRun.of("plan", "docs/examples/ferry-ink.yaml").out())
                .doesNotContain("likely reason", "Why it may have differed");
    }
}
