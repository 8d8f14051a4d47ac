package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Problems;
import org.wickwise.text.YamlFile;

/**
 * Runs the examples beside the rules ({@code rules/examples}): each names a rule, a small case in which it fires with
 * the conclusion it then draws, and a small case in which it stays silent. What an example does not say it takes from
 * {@code usual} at the top of its file.
 */
class RuleExamplesTest {

    private static final Path FOLDER = Path.of("rules/examples");

    record Example(String rule, Case fires, String concludes, Optional<Case> silent, Node place) {}

    @TestFactory
    Stream<DynamicTest> everyRuleFiresWhereItsExampleSaysSo() {
        return examples().stream()
                .map(example ->
                        DynamicTest.dynamicTest(example.rule() + " fires: " + example.concludes(), () -> assertThat(
                                        statementsBy(example.rule(), example.fires()))
                                .as(
                                        "what %s concludes (%s)",
                                        example.rule(), example.place().place())
                                .contains(example.concludes())));
    }

    @TestFactory
    Stream<DynamicTest> everyRuleStaysSilentWhereItsExampleSaysSo() {
        return examples().stream()
                .filter(example -> example.silent().isPresent())
                .map(example -> DynamicTest.dynamicTest(example.rule() + " stays silent", () -> assertThat(
                                statementsBy(example.rule(), example.silent().orElseThrow()))
                        .as(
                                "what %s concludes (%s)",
                                example.rule(), example.place().place())
                        .isEmpty()));
    }

    @Test
    void everyShippedRuleHasAnExample() {
        Set<String> rules = new TreeSet<>(Shipped.bench().judge().rulebook().rules().stream()
                .map(Rule::id)
                .toList());
        Set<String> shown = new TreeSet<>(examples().stream().map(Example::rule).toList());
        assertThat(shown).isEqualTo(rules);
    }

    private static Set<String> statementsBy(String rule, Case written) {
        Set<String> statements = new TreeSet<>();
        for (Concluded concluded :
                Shipped.bench().judge().judge(written).reasons().values()) {
            if (concluded.arguments().stream().map(Argument::ruleId).anyMatch(rule::equals)) {
                statements.add(concluded.statement());
            }
        }
        return statements;
    }

    private static List<Example> examples() {
        List<Example> examples = new ArrayList<>();
        Problems problems = new Problems();
        for (String name : YamlFile.namesIn(FOLDER)) {
            Fields root = Fields.of(
                    YamlFile.read(FOLDER.resolve(name)), "examples", Set.of("about", "usual", "examples"), problems);
            Mapping usual = (Mapping) root.node("usual").orElseThrow();
            for (Node node : root.list("examples")) {
                Fields example =
                        Fields.ofNode(node, "an example", Set.of("rule", "fires", "concludes", "silent"), problems);
                examples.add(new Example(
                        example.requiredText("rule"),
                        written(usual, example.node("fires")),
                        example.requiredText("concludes"),
                        silent(usual, example),
                        node));
            }
        }
        problems.throwIfAny();
        return examples;
    }

    /** A rule that holds in every case says `silent: never`. */
    private static Optional<Case> silent(Mapping usual, Fields example) {
        Optional<Node> node = example.node("silent");
        boolean never = node.filter(Mapping.class::isInstance).isEmpty()
                && example.requiredText("silent").equals("never");
        return never ? Optional.empty() : Optional.of(written(usual, node));
    }

    private static Case written(Mapping usual, Optional<Node> own) {
        Mapping changes = (Mapping) own.orElseThrow();
        List<Entry> entries = new ArrayList<>(changes.entries());
        usual.entries().stream()
                .filter(entry -> changes.entries().stream()
                        .noneMatch(
                                change -> change.key().text().equals(entry.key().text())))
                .forEach(entries::add);
        return CaseReader.of(new Mapping(entries, changes.place()), Shipped.data());
    }
}
