package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.wickwise.text.Place;

/**
 * A rule as it stands in the book.
 *
 * @param about what the rules of its subject are about
 * @param limits the names of the limits it compares with
 * @param isOwn whether it is an instructor's own
 * @param inPlaceOf the shipped rule it stands in the place of
 */
public record RulePage(
        String rule,
        String layer,
        String about,
        List<String> when,
        List<String> then,
        String because,
        String source,
        List<String> limits,
        boolean isOwn,
        Optional<String> inPlaceOf,
        Place place) {

    static RulePage of(Rule rule, OwnRules own) {
        Optional<String> instead = own.instead().entrySet().stream()
                .filter(entry -> entry.getValue().equals(rule.id()))
                .map(Map.Entry::getKey)
                .findFirst();
        return new RulePage(
                rule.id(),
                rule.layer(),
                rule.about(),
                rule.when().stream().map(Said::written).toList(),
                rule.then().stream().map(Said::written).toList(),
                rule.because(),
                rule.source(),
                limitsOf(rule),
                own.ruleNames().contains(rule.id()),
                instead,
                rule.place());
    }

    private static List<String> limitsOf(Rule rule) {
        return Stream.concat(rule.when().stream(), rule.then().stream())
                .flatMap(said -> Stream.iterate(0, i -> i < said.slots().size(), i -> i + 1)
                        .filter(i -> said.sentence().slots().get(i).kind().isNumber())
                        .map(i -> SlotKind.LIMIT.matcher(said.slots().get(i))))
                .filter(Matcher::matches)
                .map(limit -> limit.group(1))
                .distinct()
                .toList();
    }
}
