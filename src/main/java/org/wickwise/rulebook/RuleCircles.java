package org.wickwise.rulebook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which rules feed which, to find those that take away what they rest on. */
final class RuleCircles {

    private final Map<String, List<String>> fedBy = new HashMap<>();
    private final List<Rule> rules;

    RuleCircles(List<Rule> rules) {
        this.rules = rules;
        for (Rule rule : rules) {
            fedBy.put(
                    rule.id(),
                    rules.stream()
                            .filter(feeder -> rule.when().stream()
                                    .flatMap(said -> Spoken.askedBy(said).stream())
                                    .anyMatch(asked -> draws(feeder, asked)))
                            .map(Rule::id)
                            .toList());
        }
    }

    private static boolean draws(Rule rule, Spoken asked) {
        return rule.then().stream()
                .flatMap(then -> Spoken.drawnBy(then).stream())
                .anyMatch(asked::mayBe);
    }

    /** The condition by which a rule denies what follows from it; empty when there is none. */
    Optional<Said> deniedBy(Rule rule) {
        return rule.when().stream()
                .filter(said -> Spoken.askedBy(said).stream()
                        .filter(Spoken::denied)
                        .anyMatch(asked -> rules.stream()
                                .filter(feeder -> draws(feeder, asked))
                                .anyMatch(feeder -> restsOn(feeder.id(), rule.id()))))
                .findFirst();
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
