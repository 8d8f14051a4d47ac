package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
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
        assertThat(asked(DEMO, "acetne")).contains("this case knows no `acetne`", "did you mean `acetone`");
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
