package org.wickwise.rulebook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which rules feed which, to find those that take away what they rest on. */
final class RuleCircles {

    private final Map<String, List<String>> fedBy = new HashMap<>();
    private final Map<String, Set<Spoken>> drawn = new HashMap<>();
    private final List<Rule> rules;

    RuleCircles(List<Rule> rules) {
        this.rules = rules;
        for (Rule rule : rules) {
            drawn.put(
                    rule.id(),
                    rule.then().stream()
                            .flatMap(then -> Spoken.drawnBy(then).stream())
                            .collect(Collectors.toUnmodifiableSet()));
        }
        for (Rule rule : rules) {
            Set<Spoken> asked = rule.when().stream()
                    .flatMap(said -> Spoken.askedBy(said).stream())
                    .collect(Collectors.toUnmodifiableSet());
            fedBy.put(
                    rule.id(),
                    rules.stream()
                            .filter(feeder -> asked.stream().anyMatch(one -> draws(feeder, one)))
                            .map(Rule::id)
                            .toList());
        }
    }

    private boolean draws(Rule rule, Spoken asked) {
        return drawn.get(rule.id()).stream().anyMatch(asked::mayBe);
    }

    /** The condition by which a rule denies what follows from it; empty when there is none. */
    Optional<Said> deniedBy(Rule rule) {
        return rule.when().stream()
                .filter(said -> opposing(said).anyMatch(feeder -> restsOn(feeder.id(), rule.id())))
                .findFirst();
    }

    /** Whether a rule stands on the way from what a rule concludes to the opposite of what it asks. */
    boolean isOnTheWay(Rule between, Rule rule, Said denied) {
        return restsOn(between.id(), rule.id())
                && opposing(denied).anyMatch(feeder -> restsOn(feeder.id(), between.id()));
    }

    /** The rules that conclude what a condition asks not to be so. */
    private Stream<Rule> opposing(Said said) {
        List<Spoken> denied =
                Spoken.askedBy(said).stream().filter(Spoken::denied).toList();
        return rules.stream().filter(feeder -> denied.stream().anyMatch(asked -> draws(feeder, asked)));
    }

    /** Whether a rule rests on another, directly or through others; every rule rests on itself. */
    private boolean restsOn(String rule, String other) {
        Set<String> seen = new HashSet<>(Set.of(rule));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String next = open.pop();
            if (next.equals(other)) {
                return true;
            }
            fedBy.get(next).stream().filter(seen::add).forEach(open::push);
        }
        return false;
    }
}
