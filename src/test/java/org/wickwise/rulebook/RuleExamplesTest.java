package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.rulebook.RuleExample.Situation;

/**
 * Runs the examples beside the rules ({@code rules/examples}): each names a rule, a small case in which it fires with
 * the conclusion it then draws, and a small case in which it stays silent. What an example does not say it takes from
 * {@code usual} at the top of its file.
 */
class RuleExamplesTest {

    private static final Path FOLDER = Path.of("rules/examples");

    @TestFactory
    Stream<DynamicTest> everyRuleFiresWhereItsExampleSaysSo() {
        return examples().stream()
                .map(example ->
                        DynamicTest.dynamicTest(example.rule() + " fires: " + example.concludes(), () -> assertThat(
                                        statementsBy(example.rule(), example.fires()))
                                .as("what %s concludes (%s)", example.rule(), example.place())
                                .contains(example.concludes())));
    }

    @TestFactory
    Stream<DynamicTest> everyRuleStaysSilentWhereItsExampleSaysSo() {
        return examples().stream()
                .filter(example -> example.silent().isPresent())
                .map(example -> DynamicTest.dynamicTest(example.rule() + " stays silent", () -> assertThat(
                                statementsBy(example.rule(), example.silent().orElseThrow()))
                        .as("what %s concludes (%s)", example.rule(), example.place())
                        .isEmpty()));
    }

    @Test
    void everyShippedRuleHasAnExample() {
        Set<String> rules = new TreeSet<>(Shipped.bench().judge().rulebook().rules().stream()
                .map(Rule::id)
                .toList());
        Set<String> shown =
                new TreeSet<>(examples().stream().map(RuleExample::rule).toList());
        assertThat(shown).isEqualTo(rules);
    }

    private static Set<String> statementsBy(String rule, Situation situation) {
        Set<String> statements = new TreeSet<>();
        for (Concluded concluded :
                situation.judgedBy(Shipped.bench().judge()).reasons().values()) {
            if (concluded.arguments().stream().map(Argument::ruleId).anyMatch(rule::equals)) {
                statements.add(concluded.statement());
            }
        }
        return statements;
    }

    private static List<RuleExample> examples() {
        return RuleExamplesReader.read(FOLDER, "rules/examples", Shipped.data());
    }
}
