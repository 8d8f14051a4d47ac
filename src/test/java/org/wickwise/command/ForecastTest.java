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
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "[forecast] This is a forecast from earlier strips, not yet a plan",
                        "[memory-ethyl-acetate] In ethyl acetate: harbour blue 0.01",
                        "[run-ethyl-acetate] Run a strip in ethyl acetate",
                        "Observed on strips: nothing. Remembered from earlier strips: ")
                .contains("What earlier strips showed", "Estimated from earlier strips, not seen on a column")
                .contains("The order of the steps follows what earlier strips showed")
                .doesNotContain("Run a longer strip", "What the strips show", "Estimated from the strips");
    }

    /** On one strip ochre and dusk were exchanged. */
    @Test
    void a_strip_that_the_median_leaves_aside_is_named_with_its_place() throws IOException {
        String run = barnPaint("");
        for (int group = 1; group <= 6; group++) {
            String travel =
                    group == 3 ? "{ochre: 3, fir: 36, dusk: 63}" : "{ochre: 65, fir: 36, dusk: " + group % 3 + "}";
            Files.writeString(
                    folder.resolve("2025-11-04-group-" + group + ".yaml"),
                    """
                    date: 2025-11-04
                    group: %d
                    mixture: {name: barn paint, dyes: [ochre, fir, dusk]}
                    strips on: silica
                    strips:
                      - {solvent: heptane, front mm: 72, travel mm: {ochre: 0, fir: 0, dusk: 0}}
                      - {solvent: ethyl acetate, front mm: 72, travel mm: %s}
                    """
                            .formatted(group, travel));
        }
        String out = CommandLineRun.of("forecast", run, "--notebook", folder.toString())
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("0.00 to 0.03; far from its day, so left aside by the median: 0.88 in ", "group-3.yaml:7)")
                .contains("left aside by the median: 0.04 in ")
                .doesNotContain("0.00 to 0.88");
    }

    private String barnPaint(String more) throws IOException {
        Path lesson = Files.createDirectories(folder.resolve("lesson")).resolve("barn.yaml");
        return Files.writeString(
                        lesson,
                        "title: Barn paint (invented)\nmixture: {name: barn paint, dyes: [ochre, fir, dusk" + more
                                + "]}\ncolumn: {stationary phase: silica, bore mm: 10, bed mm: 150}\n"
                                + "setting: secondary school\n")
                .toString();
    }

    /** Dusk lies on the limit between staying and creeping, and nothing lets the others come off: no plan, one strip decides. */
    @Test
    void what_decides_stands_in_the_list_of_strips_also_without_a_plan() throws IOException {
        for (int group = 1; group <= 4; group++) {
            Files.writeString(
                    folder.resolve("2025-11-04-group-" + group + ".yaml"),
                    """
                    date: 2025-11-04
                    group: %d
                    mixture: {name: barn paint, dyes: [ochre, fir, dusk]}
                    strips on: silica
                    strips:
                      - {solvent: ethyl acetate, Rf: {ochre: 0.01, fir: 0.01, dusk: 0.0%d}}
                    """
                            .formatted(group, 3 + group));
        }
        CommandLineRun run = CommandLineRun.of("forecast", barnPaint(""), "--notebook", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        String out = run.out().replaceAll("\\s+", " ");
        assertThat(out)
                .contains("Which strips to have run, and what to expect")
                .contains("[run-ethyl-acetate] Run a strip in ethyl acetate: no plan is sound yet.")
                .contains("What is remembered of dusk there scatters round a limit, so this strip decides.")
                .doesNotContain("Which strip to run next", "so near a limit that the ruler decides");
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
                .contains("[run-ethyl-acetate]", "[run-then] These are the strips of a plan for the dyes")
                .doesNotContain("the plan packs and loads", "the plan pours");
        String list = run.out()
                .substring(run.out().indexOf("Which strips to have run"))
                .replaceAll("\\s+", " ");
        assertThat(list.substring(0, list.indexOf("Safety")))
                .contains("holds the cationic dye teal. Run a strip in an alcohol with a little water");
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
