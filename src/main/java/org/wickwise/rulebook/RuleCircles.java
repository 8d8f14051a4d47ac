package org.wickwise.rulebook;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which rules feed which, to find those that take away what they rest on. */
final class RuleCircles {

    private final Map<String, Set<Spoken>> asked = new HashMap<>();
    private final Map<String, Set<Spoken>> drawn = new HashMap<>();
    private final Map<String, List<Rule>> fed = new HashMap<>();
    private final List<Rule> rules;

    RuleCircles(List<Rule> rules) {
        this.rules = rules;
        for (Rule rule : rules) {
            asked.put(rule.id(), askedBy(rule));
            drawn.put(rule.id(), drawnBy(rule));
        }
    }

    private static Set<Spoken> askedBy(Rule rule) {
        return rule.when().stream()
                .flatMap(said -> Spoken.askedBy(said).stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Set<Spoken> drawnBy(Rule rule) {
        return rule.then().stream()
                .flatMap(then -> Spoken.drawnBy(then).stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The condition by which a rule denies what follows from it; empty when there is none. */
    Optional<Said> deniedBy(Rule rule) {
        return rule.when().stream()
                .filter(said -> Spoken.askedBy(said).stream().anyMatch(Spoken::denied))
                .filter(said -> leadsToTheOpposite(rule, said))
                .findFirst();
    }

    /** Whether a rule stands on the way from what a rule concludes to the opposite of what it asks. */
    boolean isOnTheWay(Rule between, Rule rule, Said denied) {
        return restingOn(rule).stream().anyMatch(other -> other.id().equals(between.id()))
                && leadsToTheOpposite(between, denied);
    }

    private boolean leadsToTheOpposite(Rule rule, Said said) {
        List<Spoken> denied =
                Spoken.askedBy(said).stream().filter(Spoken::denied).toList();
        return restingOn(rule).stream().anyMatch(other -> denied.stream().anyMatch(one -> draws(other, one)));
    }

    /** The rules that rest on a rule, directly or through others; every rule rests on itself. */
    Collection<Rule> restingOn(Rule rule) {
        Map<String, Rule> seen = new LinkedHashMap<>(Map.of(rule.id(), rule));
        Deque<Rule> open = new ArrayDeque<>(List.of(rule));
        while (!open.isEmpty()) {
            Rule next = open.pop();
            fed.computeIfAbsent(next.id(), any -> fedBy(next)).stream()
                    .filter(fed -> seen.putIfAbsent(fed.id(), fed) == null)
                    .forEach(open::push);
        }
        return seen.values();
    }

    private List<Rule> fedBy(Rule feeder) {
        return rules.stream()
                .filter(rule -> asked.get(rule.id()).stream().anyMatch(one -> draws(feeder, one)))
                .toList();
    }

    private boolean draws(Rule rule, Spoken asked) {
        return drawn.get(rule.id()).stream().anyMatch(asked::mayBe);
    }
}
