package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
                .contains("[came-rust] Rust came with its middle at 99 ± 3 mL")
                .contains("It came 7 mL (0.4 column")
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
                .contains(
                        "Straw came with its middle no later than about",
                        "Harbour blue came with its middle no sooner than")
                .contains("[bed-ran-dry]", "[dye-ran-with-the-front]", "[stopped-before-the-end]")
                .contains("What was poured is something", "recovered is not known")
                .doesNotContain("NaN", "Infinity");
    }

    /** A bed of 10 mm by 150 mm, which holds about 9.1 mL; the load is 30 mg. */
    private static final String BARN_PAINT =
            """
            date: 2026-11-19
            title: Barn paint (invented)
            mixture: {name: barn paint, load mg: 30, dyes: [ochre, fir, dusk]}
            column: {stationary phase: silica, bore mm: 10, bed mm: 150, run by: gravity, head mm: 80}
            setting: secondary school
            strips:
              - {solvent: heptane, front mm: 75, travel mm: {ochre: 0, fir: 0, dusk: 0}}
              - {solvent: heptane + ethyl acetate 4:1, front mm: 70, travel mm: {ochre: 21, fir: 1, dusk: 0}}
              - {solvent: ethyl acetate, front mm: 72, travel mm: {ochre: 65, fir: 36, dusk: 2}}
              - {solvent: 2-propanol, front mm: 70, travel mm: {ochre: 68, fir: 62, dusk: 30}}
            run:
            """;

    private String afterwards(String run, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("barn-run.yaml"), BARN_PAINT + run);
        List<String> asked = new ArrayList<>(List.of("afterwards", file.toString()));
        asked.addAll(List.of(more));
        CommandLineRun done = CommandLineRun.of(asked.toArray(String[]::new));
        assertThat(done.err()).isEmpty();
        return done.out().replaceAll("\\s+", " ");
    }

    private static final String ONE_FRACTION =
            """
              poured: [{eluent: heptane + ethyl acetate 4:1, mL: 40}]
              fractions: [{mL: 60, dyes: [ochre], colour: yellow}]
              pools: [{fractions: [1], dry mg: 45}]
            """;

    @Test
    void more_than_can_have_come_is_told_and_makes_the_run_doubtful() throws IOException {
        String out = afterwards(ONE_FRACTION);
        assertThat(out)
                .contains("[too-much] 60 mL was collected, but only 40 mL poured, and the bed holds about 9.1 mL")
                .contains("[weighed-too-much] That is 15 mg more than was put on")
                .contains("[doubt] Something went wrong with this run (more was collected than can have come)");
        assertThat(afterwards(ONE_FRACTION.replace("mL: 60", "mL: 49").replace("dry mg: 45", "dry mg: 31")))
                .doesNotContain("[too-much]", "[weighed-too-much]", "[doubt]");
        assertThat(afterwards(ONE_FRACTION, "too-much")).contains("fraction 1 is 60 mL", "barn-run.yaml:12");
        assertThat(afterwards(ONE_FRACTION, "weighed-too-much")).contains("45 mg was weighed dry", "a dry mass is 2 %");
    }

    @Test
    void one_fraction_alone_tells_neither_haste_nor_k() throws IOException {
        assertThat(afterwards(ONE_FRACTION))
                .contains("[came-ochre] Ochre came in the one fraction there is, so when is not known")
                .doesNotContain("hardly held", "its end was never collected", "[k-ochre]", "late,", "early,");
    }

    @Test
    void a_dye_in_no_fraction_is_told_so_and_what_was_to_become_of_it() throws IOException {
        assertThat(afterwards(ONE_FRACTION))
                .contains("[balance-dusk] Dusk is in no fraction, so none of it was recovered")
                .contains("[came-dusk] Dusk is in no fraction; by the strips it was to stay on the bed")
                .contains("[came-fir] Fir is in no fraction; it was to come no sooner than about 180 mL in heptane"
                        + " + ethyl acetate 4:1, when is not known well, and not with what was poured");
        assertThat(afterwards(ONE_FRACTION, "came-fir"))
                .contains("fir is in no fraction", "too much is open for an even ±, so the earliest is told");
    }

    private static final String FIR_TOO_FAST =
            """
              poured:
                - {eluent: heptane + ethyl acetate 4:1, mL: 40}
                - {eluent: ethyl acetate, mL: 24}
                - {eluent: 2-propanol, mL: 27}
              fractions:
                - {mL: 25, colour: clear}
                - {mL: 5, dyes: [ochre]}
                - {mL: 5, dyes: [ochre]}
                - {mL: 5, dyes: [ochre, fir]}
                - {mL: 5, dyes: [fir]}
                - {mL: 5, dyes: [fir]}
                - {mL: 14, colour: clear}
                - {mL: 10, dyes: [dusk]}
                - {mL: 10, dyes: [dusk]}
            """;

    @Test
    void a_spot_that_hardly_moved_gives_the_least_k_and_the_column_is_set_beside_it() throws IOException {
        assertThat(afterwards(FIR_TOO_FAST))
                .contains(
                        "[k-fir] k of fir in heptane + ethyl acetate 4:1 on a column of silica: 3.7 ± 0.9; on the strip"
                                + " at least 23, so the column held it at least 5.1 times less: it came faster")
                .contains("[eluent-ran-past-the-grains] Fir ran far faster")
                .contains("[k-ochre] k of ochre in heptane + ethyl acetate 4:1 on a column of silica: 2.6 ± 0.7; on the"
                        + " strip 2.3 ± 0.3.")
                .doesNotContain("no strip tells k there");
        assertThat(afterwards(FIR_TOO_FAST, "k-fir"))
                .contains("fir was held at least 5.1 times less", "the nearer ends of both 95 % intervals");
    }

    @Test
    void what_was_to_come_says_what_leaves_it_open() throws IOException {
        assertThat(afterwards(FIR_TOO_FAST))
                .contains("Ochre came with its middle at 33 ± 2 mL", "it was to come at 30 ± 19 mL in heptane")
                .contains("[plus-and-minus] Each ± holds 95 of 100 cases.", "k may change by a factor of 2");
        assertThat(afterwards(FIR_TOO_FAST, "came-ochre"))
                .contains("by the way from strip to column ± ", "the scatter of the transfer to a column is 0.15");
    }

    @Test
    void the_picture_says_of_a_bound_that_it_is_one() throws IOException {
        Path file = Files.writeString(folder.resolve("barn-run.yaml"), BARN_PAINT + FIR_TOO_FAST);
        assertThat(CommandLineRun.of("draw", file.toString(), "run").out())
                .contains("Dusk came no sooner than about 74 mL")
                .doesNotContain("Dusk came at 74 mL");
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
