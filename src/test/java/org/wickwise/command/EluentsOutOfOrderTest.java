package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan says of two eluents that may not follow one another, by whatever rule. */
class EluentsOutOfOrderTest {

    private static final String CASE =
            """
            title: two that may not meet (invented)
            mixture: {name: invented, dyes: [{name: red, class: neutral}, {name: blue, class: neutral}]}
            column: {stationary phase: %s}
            setting: college
            shelf: [%s]
            strips:
              - {solvent: %s, front mm: 80, travel mm: {red: 30, blue: 0}}
              - {solvent: %s, front mm: 80, travel mm: {red: 75, blue: 40}}
            """;

    @TempDir
    private Path folder;

    private String plan(String phase, String shelf, String first, String second, String... options) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, CASE.formatted(phase, shelf, first, second));
        String[] words = new String[options.length + 2];
        words[0] = "plan";
        words[1] = file.toString();
        System.arraycopy(options, 0, words, 2, options.length);
        return CommandLineRun.of(words).out().replaceAll("\\s+", " ");
    }

    @Test
    void two_that_do_not_mix_are_told_in_one_line_with_what_goes_between() throws IOException {
        assertThat(plan("cellulose", "heptane, methanol, ethyl acetate", "heptane", "methanol"))
                .contains("[unmixed-heptane-methanol] Heptane and methanol do not mix: neither may directly follow the"
                        + " other. Between them goes about one column volume of ethyl acetate")
                .doesNotContain("[unmixed-methanol-heptane]");
    }

    @Test
    void two_that_mix_and_may_not_meet_get_the_cause_of_their_rule() throws IOException {
        assertThat(plan("basic alumina", "dichloromethane, acetone, ethyl acetate", "dichloromethane", "acetone"))
                .contains("[unmixed-acetone-dichloromethane] Of acetone and dichloromethane neither may directly follow"
                        + " the other. Of acetone and dichloromethane one is or holds a ketone")
                .doesNotContain("do not mix: neither", "[unmixed-dichloromethane-acetone]", "volume of acetone");
    }

    @Test
    void a_rule_of_ones_own_that_bars_one_order_leaves_the_other_free() throws IOException {
        Path rules = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(
                rules.resolve("order.yaml"),
                """
                layer: order
                about: What we do not pour after what.
                rules:
                  - rule: no-ester-after-an-alcohol
                    when: [E contains a solvent of the family alcohol, F contains a solvent of the family ester]
                    then: [F may not directly follow E]
                    because: "{F} smells so faintly that nobody notices it behind {E}."
                    source: house rule, invented
                """);
        assertThat(plan("silica", "ethanol, ethyl acetate", "ethyl acetate", "ethanol", "--rules", rules.toString()))
                .contains("[unmixed-ethanol-ethyl-acetate] Ethyl acetate may not directly follow ethanol. Ethyl acetate"
                        + " smells so faintly that nobody notices it behind ethanol.")
                .doesNotContain("[unmixed-ethyl-acetate-ethanol]", "neither may directly follow");
        assertThat(plan("silica", "ethanol, ethyl acetate", "ethanol", "ethyl acetate", "--rules", rules.toString()))
                .contains("[unmixed-ethanol-ethyl-acetate] Ethyl acetate may not directly follow ethanol.");
    }

    @Test
    void a_bar_against_the_order_of_the_names_is_told_too() throws IOException {
        Path rules = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(
                rules.resolve("order.yaml"),
                """
                layer: order
                about: What we do not pour after what.
                rules:
                  - rule: no-alcohol-after-an-ester
                    when: [E contains a solvent of the family ester, F contains a solvent of the family alcohol]
                    then: [F may not directly follow E]
                    because: "{F} after {E} is not what we do here."
                    source: house rule, invented
                """);
        assertThat(plan("silica", "ethanol, ethyl acetate", "ethyl acetate", "ethanol", "--rules", rules.toString()))
                .contains("[unmixed-ethyl-acetate-ethanol] Ethanol may not directly follow ethyl acetate. Ethanol after"
                        + " ethyl acetate is not what we do here.");
    }
}
