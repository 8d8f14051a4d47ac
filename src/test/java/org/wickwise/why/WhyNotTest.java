package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.command.CommandLineRun;

/** Why-not as a student asks it. */
class WhyNotTest {

    private static final String DEMO = Shipped.DEMO.toString();

    private static String asked(String file, String... about) {
        String[] arguments = new String[about.length + 2];
        arguments[0] = "why-not";
        arguments[1] = file;
        System.arraycopy(about, 0, arguments, 2, about.length);
        CommandLineRun run = CommandLineRun.of(arguments);
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    @Test
    void the_strips_say_otherwise_and_the_readings_are_named() {
        assertThat(asked(DEMO, "acetone"))
                .contains("[poured] With acetone the best plan would be")
                .contains("which counts more steps resting on a doubtful reading (1 against 0)")
                .contains(
                        "it would take that every dye stays in acetone, but harbour blue travels in acetone (Rf 0.41 ± 0.03)");
    }

    @Test
    void something_rules_it_out() {
        assertThat(asked(DEMO, "water"))
                .contains("[enter] water may not enter this column, whatever else speaks for it")
                .contains("it would take that water may enter this column, but water is unfit for this column");
    }

    @Test
    void nobody_knows() {
        assertThat(asked(DEMO, "hexane"))
                .contains("it would take that every dye stays in hexane, and nobody ran a strip in hexane");
    }

    @Test
    void what_the_plan_pours_or_packs_with_is_said_to_be_so() {
        assertThat(asked(DEMO, "ethanol")).contains("The plan does pour ethanol.");
        assertThat(asked(DEMO, "heptane")).contains("The plan packs and loads with heptane.");
    }

    @Test
    void a_label_opens_the_tree_down_to_the_ruler() {
        assertThat(asked(DEMO, "acetone", "hold"))
                .contains("rule holds (rules/layers/5-roles.yaml:5) asks that every dye stays in acetone: not so")
                .contains("rust travelled 61 mm on the strip in acetone", "ferry-ink.yaml:40");
        assertThat(asked(DEMO, "acetone", "hode")).contains("did you mean `hold`");
    }

    @Test
    void an_unknown_solvent_gets_the_nearest() {
        assertThat(asked(DEMO, "acetne")).contains("nothing here is called `acetne`", "did you mean `acetone`");
    }

    @Test
    void two_dyes_that_are_not_parted_are_short_of_the_gap() {
        assertThat(asked(DEMO, "rust and straw", "parted-ethanol"))
                .contains("straw is ahead of rust in ethanol by 0.06 ± 0.04 of Rf")
                .contains("rule parted-by-rf (rules/layers/3-separation.yaml:5) asks that");
        assertThat(asked(DEMO, "straw/rust"))
                .contains(
                        "Rust and straw are not parted in ethanol: it would take that straw is ahead of rust in ethanol"
                                + " by at least 0.1 (the parting gap), but")
                .contains("(short by 0.04)", "They are parted in ethyl acetate");
    }

    @Test
    void another_order_loses_or_goes_wrong_at_a_step() {
        assertThat(asked(DEMO, "ethyl acetate, then ethanol"))
                .contains("It would bring every dye off, but the plan is")
                .contains("which counts more bands too fast to be held (1 against 0)");
        assertThat(asked(DEMO, "ethyl acetate then water"))
                .contains("It goes wrong at step 2, water: it may not enter this column.");
        assertThat(asked(DEMO, "heptane, then ethanol")).contains("step 1, heptane: it moves nothing");
        assertThat(asked(DEMO, "ethyl acetate then heptane + ethyl acetate 9:1"))
                .contains(
                        "step 2, heptane + ethyl acetate 9:1: it moves nothing that is still on the column (harbour blue)");
        assertThat(asked(DEMO, "heptane + ethyl acetate 9:1 then ethyl acetate"))
                .contains("After the last step harbour blue would still be on the column.");
        assertThat(asked(DEMO, "heptane + ethyl acetate 9:1, then ethyl acetate, then ethanol"))
                .contains("The plan does pour");
    }

    @Test
    void a_dye_is_told_what_does_not_release_it() {
        assertThat(asked(DEMO, "rust"))
                .contains("By the plan rust does leave in a fraction of its own, with ethyl acetate.")
                .contains("Heptane does not release rust, that is, bring it off before another dye: it would take that"
                        + " rust comes off in heptane, but rust stays");
    }

    /** Two dyes that are level in heptane, and a dye that leaves last in the eluent that does not release it. */
    @Test
    void dyes_that_lie_together_are_not_called_ahead_of_one_another(@TempDir Path folder) throws IOException {
        String file = written(folder);
        assertThat(asked(file, "plum"))
                .contains("it would take that in ethyl acetate plum is ahead of slate, parted, but plum and slate lie"
                        + " together in ethyl acetate")
                .contains("on a column plum leaves before ochre in heptane, and no strip says so; more under"
                        + " `release-heptane`.")
                .doesNotContain("for which", "together, ", "by 0.00");
        assertThat(asked(file, "plum and slate"))
                .contains("but plum is level with slate in heptane, 0.00 ± 0.04 of Rf");
    }

    @Test
    void a_dye_that_leaves_last_is_told_to_come_off_alone_in_what_does_not_release_it(@TempDir Path folder)
            throws IOException {
        assertThat(asked(written(folder), "acetone"))
                .contains("Acetone does not release ochre, that is, bring it off before another dye (in the plan it"
                        + " comes off alone here, for the others have left before it)");
    }

    private static String written(Path folder) throws IOException {
        return Files.writeString(
                        folder.resolve("level.yaml"),
                        """
                        title: Two dyes level and one behind (invented)
                        mixture:
                          dyes:
                            - {name: plum, class: neutral}
                            - {name: slate, class: neutral}
                            - {name: ochre, class: neutral}
                        column: {stationary phase: silica}
                        setting: college
                        strips:
                          - {solvent: heptane, front mm: 60, travel mm: {plum: 0, slate: 0, ochre: 0}}
                          - {solvent: ethyl acetate, front mm: 60, travel mm: {plum: 30, slate: 30, ochre: 1}}
                          - {solvent: acetone, front mm: 60, travel mm: {plum: 50, slate: 50, ochre: 24}}
                        """)
                .toString();
    }

    @Test
    void what_nobody_saw_is_counted_with_the_label_that_names_it() {
        assertThat(asked(DEMO, "strip in ethyl acetate"))
                .contains("more rules ask for what nobody saw or wrote down; more under `doubtful`.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    rust                        | Why does rust not leave alone?
                    rust and straw              | Why are rust and straw not parted?
                    acetone                     | Why is acetone not poured, and what does it not do?
                    ethanol                     | What does ethanol not do?
                    heptane                     | What does heptane not do?
                    ethyl acetate, then ethanol | Why does the plan not pour ethyl acetate, then ethanol?
                    strip in water              | Why is strip in water not read otherwise?
                    low-boiling-eluent          | Why does the plan not give the caution low-boiling-eluent?
                    """)
    void the_heading_says_what_was_asked(String question, String heading) {
        assertThat(asked(DEMO, question)).startsWith(heading);
    }

    @Test
    void a_caution_that_is_not_given_says_what_is_missing() {
        assertThat(asked(DEMO, "low-boiling-eluent"))
                .contains("No such caution is due about ethyl acetate", "boiling point of ethyl acetate: 77.1 degC");
        assertThat(asked(DEMO, "hood")).contains("The plan does give it");
        assertThat(asked(DEMO, "low-boilin-eluent")).contains("did you mean `low-boiling-eluent`");
    }

    @Test
    void a_strip_says_why_it_is_not_usable_or_not_void() {
        assertThat(asked(DEMO, "strip in ethyl acetate + heptane 1:1"))
                .contains("[void]", "stood in the liquid", "is not usable: it would take that", "is not void");
        assertThat(asked(DEMO, "strip in water")).contains("The strip in water is not void", "nobody noted it");
    }

    /** What the sources rejected, and the cause they give. */
    @ParameterizedTest
    @CsvSource({
        "d07-four-dyes-silica.yaml, ethyl acetate, Fast Green stays in ethyl acetate",
        "d13-rhodamine-amaranth-silica.yaml, water, Rhodamine B stays in water",
        "d14-ink-ethanol-water-paper.yaml, ethanol 80 % + water 20 %, runs ahead",
        "d02-methylene-blue-fluorescein.yaml, ethanol 95 % + water 5 %, fluorescein stays in ethanol + water 19:1"
    })
    void the_cause_is_the_one_that_the_source_gives(String file, String solvent, String cause) {
        assertThat(asked(Shipped.PUBLISHED.resolve(file).toString(), solvent)).contains(cause);
    }
}
