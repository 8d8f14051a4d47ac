package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.wickwise.LimitsTable;
import org.wickwise.LimitsTable.Row;
import org.wickwise.Shipped;
import org.wickwise.command.Workbench;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.rulebook.RuleExample.Situation;
import org.wickwise.text.ProblemsFound;

/**
 * Tries every number that a shipped rule compares with: below, at and above. The readings stay as the rule's example has
 * them; the limit is set to the very number that it is compared with, and to the next number either side of it that a
 * computer can tell from it. In a rule that writes a number itself, its numbers are tried as limits of its own.
 */
class LimitsTriedTest {

    private static final Path EXAMPLES = Path.of("rules/examples");

    @TestFactory
    Stream<DynamicTest> everyComparisonOfARuleFallsOnTheSideThatItsWordsSay() {
        Map<String, Row> rows = LimitsTable.ofRules().stream().collect(Collectors.toMap(Row::toString, row -> row));
        return ComparedNumber.ofShippedRules().stream()
                .filter(number -> !number.isOnlyBehindAChance())
                .filter(number -> rows.containsKey(number.toString()))
                .map(number ->
                        DynamicTest.dynamicTest(number.toString(), () -> assertThat(sides(number, Tried.judge(number)))
                                .as(
                                        "below, at and above %s: `%s`",
                                        number.stands(), number.said().written())
                                .containsExactly(rows.get(number.toString()).sides())));
    }

    @Test
    void the_table_names_every_number_that_a_rule_compares_with() {
        assertThat(LimitsTable.ofRules().stream().map(Row::toString))
                .containsExactlyInAnyOrderElementsOf(ComparedNumber.ofShippedRules().stream()
                        .filter(number -> !number.isOnlyBehindAChance())
                        .map(ComparedNumber::toString)
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void the_words_of_a_sentence_decide_its_sides() {
        Map<String, ComparedNumber> numbers = ComparedNumber.ofShippedRules().stream()
                .filter(number -> !number.isOnlyBehindAChance())
                .collect(Collectors.toMap(ComparedNumber::toString, number -> number));
        assertThat(LimitsTable.ofRules()).isNotEmpty().allSatisfy(row -> {
            assertThat(numbers.get(row.toString()).words()).as("%s", row).isEqualTo(row.words());
            assertThat(row.sides()).as("%s", row).isEqualTo(LimitsTable.SIDES.get(row.words()));
        });
    }

    /** What becomes of the example's conclusion when the number lies just below the limit, at it, and just above it. */
    private static Set<String> sides(ComparedNumber number, Judge judge) {
        Set<String> sides = new TreeSet<>();
        for (RuleExample example : Tried.EXAMPLES_OF_RULES) {
            if (example.rule().equals(number.rule().id())) {
                Judgement written =
                        judged(example.fires(), judge, judge.rulebook().limits());
                for (double compared : number.comparedIn(written)) {
                    String here = holds(number, example, judge, Math.nextUp(compared))
                            + holds(number, example, judge, compared)
                            + holds(number, example, judge, Math.nextDown(compared));
                    sides.add(here);
                }
            }
        }
        sides.removeAll(Set.of("yes yes yes ", "no no no "));
        return sides.stream().map(String::strip).collect(Collectors.toSet());
    }

    private static String holds(ComparedNumber number, RuleExample example, Judge judge, double value) {
        Map<String, Limit> limits = new HashMap<>(judge.rulebook().limits());
        Limit limit = limits.get(number.limitName());
        limits.put(limit.name(), limit.supposed(value, limit.place()));
        return concludes(number.rule().id(), example, judge, limits) ? "yes " : "no ";
    }

    /** Strips that contradict each other, since a limit lets them count, conclude nothing. */
    private static boolean concludes(String rule, RuleExample example, Judge judge, Map<String, Limit> limits) {
        try {
            return judged(example.fires(), judge, limits).reasons().values().stream()
                    .filter(concluded -> concluded.statement().equals(example.concludes()))
                    .flatMap(concluded -> concluded.arguments().stream())
                    .anyMatch(argument -> argument.ruleId().equals(rule));
        } catch (ProblemsFound contradiction) {
            return false;
        }
    }

    private static Judgement judged(Situation situation, Judge judge, Map<String, Limit> limits) {
        return situation.run().isPresent()
                ? judge.judge(situation.written(), situation.run().get(), limits)
                : judge.judge(situation.written(), limits);
    }

    /** The shipped rules, and those that write a number themselves with limits of their own for all of their numbers. */
    private static final class Tried {

        private static final List<RuleExample> EXAMPLES_OF_RULES =
                RuleExamplesReader.read(EXAMPLES, "rules/examples", Shipped.data());
        private static final List<ComparedNumber> WITH_LIMITS_OF_THEIR_OWN = ComparedNumber.ofShippedRules().stream()
                .filter(ComparedNumber::hasALimitOfItsOwn)
                .toList();
        private static final Judge LIMITS_OF_THEIR_OWN = limitsOfTheirOwn();

        static Judge judge(ComparedNumber number) {
            return number.hasALimitOfItsOwn()
                    ? LIMITS_OF_THEIR_OWN
                    : Shipped.bench().judge();
        }

        /** No more rules than have a say in these examples, so that compiling them takes little time. */
        private static Judge limitsOfTheirOwn() {
            Rulebook book = Shipped.rulebook();
            Set<String> writing = WITH_LIMITS_OF_THEIR_OWN.stream()
                    .map(number -> number.rule().id())
                    .collect(Collectors.toSet());
            Set<String> saying = EXAMPLES_OF_RULES.stream()
                    .filter(example -> writing.contains(example.rule()))
                    .flatMap(example -> example.fires().judgedBy(Shipped.bench().judge()).reasons().values().stream())
                    .flatMap(concluded -> concluded.arguments().stream())
                    .map(Argument::ruleId)
                    .collect(Collectors.toSet());
            Map<String, Limit> limits = new TreeMap<>(book.limits());
            WITH_LIMITS_OF_THEIR_OWN.forEach(number -> limits.put(number.limitName(), number.asLimit()));
            List<Rule> rules = book.rules().stream()
                    .filter(rule -> saying.contains(rule.id()))
                    .map(ComparedNumber::withLimitsOfTheirOwn)
                    .toList();
            return Judge.of(
                    new Rulebook(
                            rules,
                            limits,
                            book.topics(),
                            book.wishes(),
                            book.blends(),
                            book.columnSizes(),
                            book.sentences(),
                            book.own()),
                    Shipped.data(),
                    Workbench.compiledRules());
        }
    }
}
