package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.LimitsTable;
import org.wickwise.Shipped;

/**
 * A number in a condition of a shipped rule: a limit, or a number that the sentence writes itself.
 *
 * @param said the condition
 * @param slot which of its slots the number stands in
 */
record ComparedNumber(Rule rule, Said said, int slot) {

    private static final Pattern FACTS = Pattern.compile("([A-Z]\\w+)\\(");

    static List<ComparedNumber> ofShippedRules() {
        return Shipped.rulebook().rules().stream()
                .flatMap(rule -> in(rule).stream())
                .toList();
    }

    private static List<ComparedNumber> in(Rule rule) {
        List<ComparedNumber> numbers = new ArrayList<>();
        for (Said said : rule.when()) {
            for (int i = 0; i < said.slots().size(); i++) {
                if (said.sentence().slots().get(i).kind().isNumber()) {
                    numbers.add(new ComparedNumber(rule, said, i));
                }
            }
        }
        return numbers;
    }

    /** The rule, with a limit in the place of each of its numbers when it writes one itself. */
    static Rule withLimitsOfTheirOwn(Rule rule) {
        List<Said> when = rule.when().stream()
                .map(said -> {
                    List<String> slots = new ArrayList<>(said.slots());
                    in(rule).stream()
                            .filter(number -> number.said().equals(said) && number.hasALimitOfItsOwn())
                            .forEach(number -> slots.set(number.slot(), "the " + number.limitName()));
                    return new Said(said.written(), said.sentence(), slots, said.place());
                })
                .toList();
        return new Rule(
                rule.id(), rule.layer(), rule.about(), when, rule.then(), rule.because(), rule.source(), rule.place());
    }

    /** As it stands in the rule: "the staying limit", "50 %". */
    String stands() {
        return said.slots().get(slot);
    }

    /** Whether its rule writes a number itself, so that it is tried with a limit made for it. */
    boolean hasALimitOfItsOwn() {
        return in(rule).stream().anyMatch(number -> number.limit().isEmpty());
    }

    /** The name of the limit, or of one that is made for the number. */
    String limitName() {
        return hasALimitOfItsOwn() ? stands() + " of " + rule.id() + ": " + said.written() : limit().orElseThrow();
    }

    private Optional<String> limit() {
        Matcher limit = SlotKind.LIMIT.matcher(stands());
        return limit.matches() ? Optional.of(limit.group(1)) : Optional.empty();
    }

    Limit asLimit() {
        return new Limit(
                limitName(),
                value(),
                "none",
                -Double.MAX_VALUE,
                Double.MAX_VALUE,
                "as the rule writes it",
                "the rule",
                said.place());
    }

    /** As the shipped rules have it. */
    private double value() {
        Matcher number = SlotKind.NUMBER.matcher(stands());
        return limit().map(name -> Shipped.rulebook().limits().get(name).value())
                .orElseGet(() -> {
                    assertThat(number.matches()).as(stands()).isTrue();
                    return Double.valueOf(number.group(1));
                });
    }

    /** Whether nothing is compared with it but by way of a chance, which changes without a jump when it changes. */
    boolean isOnlyBehindAChance() {
        return comparisons().isEmpty();
    }

    /**
     * The words beside the number that say on which side of it the sentence holds, `at most ...` or `... or more`; the
     * longest that are known, none where none are.
     */
    String words() {
        String words = said.sentence().words();
        int from = words.indexOf("{" + said.sentence().slots().get(slot).name() + ":");
        String before = words.substring(0, from);
        String after = words.substring(words.indexOf('}', from) + 1);
        String around = before + "..." + after;
        return LimitsTable.SIDES.keySet().stream()
                .filter(around::contains)
                .max(Comparator.comparingInt(String::length))
                .orElse("");
    }

    private List<MatchResult> comparisons() {
        return Pattern.compile("([a-zA-Z]+)(?:\\(\\{(\\w+)}\\))? (?:<=|>=|<|>) \\{"
                        + said.sentence().slots().get(slot).name() + "}")
                .matcher(said.sentence().means().orElseThrow())
                .results()
                .toList();
    }

    /** Every number that the sentence may have compared with this one in a case. */
    Set<Double> comparedIn(Judgement judgement) {
        Set<Double> compared = new TreeSet<>();
        for (MatchResult comparison : comparisons()) {
            String before = said.sentence().means().orElseThrow().substring(0, comparison.start());
            String kind = FACTS.matcher(before)
                    .results()
                    .reduce((one, next) -> next)
                    .orElseThrow()
                    .group(1);
            List<Object> given = Optional.ofNullable(comparison.group(2))
                    .map(name -> List.<Object>of(inSlot(name).value()))
                    .orElse(List.of());
            new Facts(judgement.facts())
                    .ofType(kind)
                    .forEach(fact -> compared.add((Double) Accessors.value(fact, comparison.group(1), given)));
        }
        return compared;
    }

    /** The number in another slot of the sentence: what a chance is about. */
    private ComparedNumber inSlot(String name) {
        return in(rule).stream()
                .filter(number -> number.said().equals(said)
                        && said.sentence().slots().get(number.slot()).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Override
    public String toString() {
        return stands() + " in rule " + rule.id() + ", `" + said.written() + "`";
    }
}
