package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan before anyone has run a strip, from the example notebook. */
class ForecastTest {

    private static final String NOTEBOOK = "docs/examples/notebook";
    private static final String DEMO = "docs/examples/ferry-ink.yaml";

    @TempDir
    private Path folder;

    @Test
    void a_case_without_strips_is_planned_from_earlier_strips() throws IOException {
        CommandLineRun run = CommandLineRun.of("forecast", withoutStrips(""), "--notebook", NOTEBOOK);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out())
                .contains(
                        "[forecast] This is a forecast from earlier strips, not yet a plan",
                        "[memory-ethyl-acetate] In ethyl acetate: harbour blue 0.01",
                        "[run-ethyl-acetate] Run a strip in ethyl acetate",
                        "Observed on strips: nothing. Remembered from earlier strips: ")
                .doesNotContain("Run a longer strip");
    }

    @Test
    void strips_of_the_case_count_before_what_is_remembered() {
        CommandLineRun run = CommandLineRun.of("forecast", DEMO, "--notebook", NOTEBOOK);
        assertThat(run.out())
                .contains("and 7 strips of this case", "[strip-ethyl-acetate] In ethyl acetate: harbour blue stays")
                .doesNotContain("[run-ethyl-acetate]");
    }

    @Test
    void the_reason_of_a_remembered_value_goes_down_to_the_lines_of_the_notebook() throws IOException {
        CommandLineRun run =
                CommandLineRun.of("forecast", withoutStrips(""), "memory-ethyl-acetate", "--notebook", NOTEBOOK);
        assertThat(run.out())
                .contains("median of the days' medians", "2025-11-04-cancelling-ink-group-1.yaml:")
                .contains("rust at Rf 0.39 in ethyl acetate on 2025-11-04")
                .contains("the scatter between classes is 0.1 RM");
    }

    @Test
    void a_dye_that_nobody_ran_gets_a_hint_from_its_class_and_strips_to_run() throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "forecast", withoutStrips("    - {name: teal, class: cationic}\n"), "--notebook", NOTEBOOK);
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(run.out())
                .contains("[unknown-teal] Nothing is remembered of teal on silica. A dye that is cationic")
                .contains("[run-ethyl-acetate]", "[run-then] These are the strips of a plan for the dyes");
    }

    @Test
    void a_case_with_a_date_remembers_only_what_was_run_before() throws IOException {
        CommandLineRun run = CommandLineRun.of("forecast", withoutStrips("date: 2025-01-01\n"), "--notebook", NOTEBOOK);
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(run.out()).contains("The notebook remembers none of these dyes on silica.");
    }

    @Test
    void a_plan_says_how_its_strips_compare_with_what_was_remembered() throws IOException {
        CommandLineRun alike = CommandLineRun.of("plan", DEMO, "--notebook", NOTEBOOK);
        assertThat(alike.out()).contains("[against-memory]").doesNotContain("Surprise:");
        Path changed = folder.resolve("changed.yaml");
        Files.writeString(
                changed,
                Files.readString(Path.of(DEMO))
                        .replace("{straw: 66, rust: 27, harbour blue: 1}", "{straw: 66, rust: 50, harbour blue: 1}"));
        CommandLineRun otherwise = CommandLineRun.of("plan", changed.toString(), "--notebook", NOTEBOOK);
        assertThat(otherwise.out()).contains("[surprise-1] Surprise: rust lies at Rf 0.71");
    }

    /** @param more a dye in the manner of the case, or a key at its top */
    private String withoutStrips(String more) throws IOException {
        String demo = Files.readString(Path.of(DEMO));
        String head = demo.substring(0, demo.indexOf("strips:"));
        String text = more.startsWith(" ")
                ? head.replace("    - {name: rust", more + "    - {name: rust")
                : head.replace("setting:", more + "setting:");
        return Files.writeString(folder.resolve("no-strips.yaml"), text).toString();
    }
}
