package org.wickwise.rulebook;

import java.util.AbstractMap;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Concluded;

/**
 * Every conclusion that stands with its reason, which reaches down to readings, table values and the case file. A reason is put
 * together from what was noted of the firings when somebody asks for it: most conclusions of a case are never asked about.
 */
final class Reasons extends AbstractMap<Conclusion, Concluded> {

    private final Map<String, Rule> rules = new HashMap<>();
    private final Map<String, Limit> limits;
    private final Firings firings;
    private final Set<Conclusion> standing;
    private final Set<Conclusion> inOrder;
    private final Map<Conclusion, Concluded> made = new HashMap<>();

    private Reasons(Collection<Rule> rules, Map<String, Limit> limits, Firings firings, Set<Conclusion> standing) {
        rules.forEach(rule -> this.rules.put(rule.id(), rule));
        this.limits = limits;
        this.firings = firings;
        this.standing = standing;
        Map<String, Conclusion> byName = new TreeMap<>();
        standing.forEach(conclusion -> byName.put(conclusion.toString(), conclusion));
        this.inOrder = Collections.unmodifiableSet(new LinkedHashSet<>(byName.values()));
    }

    /**
     * @param firings of which nothing more is noted
     * @param standing the conclusions that hold in the end
     */
    static Map<Conclusion, Concluded> of(
            Collection<Rule> rules, Map<String, Limit> limits, Firings firings, Set<Conclusion> standing) {
        return new Reasons(rules, limits, firings, Set.copyOf(standing));
    }

    @Override
    public Concluded get(Object conclusion) {
        return conclusion instanceof Conclusion asked && standing.contains(asked) ? told(asked) : null;
    }

    @Override
    public boolean containsKey(Object conclusion) {
        return standing.contains(conclusion);
    }

    @Override
    public Set<Conclusion> keySet() {
        return inOrder;
    }

    @Override
    public Set<Entry<Conclusion, Concluded>> entrySet() {
        return inOrder.stream()
                .map(conclusion -> Map.entry(conclusion, told(conclusion)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A judgement may be asked from several threads. */
    private synchronized Concluded told(Conclusion conclusion) {
        return reason(conclusion);
    }

    private Concluded reason(Conclusion conclusion) {
        Concluded known = made.get(conclusion);
        if (known != null) {
            return known;
        }
        Map<String, Argument> arguments = new TreeMap<>();
        Set<String> statements = new HashSet<>();
        for (Firings.Firing firing : firings.of(conclusion)) {
            Rule rule = rules.get(firing.ruleId());
            grounds(firing).ifPresent(grounds -> {
                Map<String, String> names = namesIn(firing);
                Argument argument = argument(rule, names, grounds);
                arguments.merge(
                        argument.ruleId() + argument.sentences() + argument.because(), argument, Reasons::together);
                statements.add(rule.then().get(firing.thenIndex()).filled(names, limits));
            });
        }
        String statement = statements.stream().sorted().findFirst().orElse(conclusion.toString());
        Concluded concluded = new Concluded(statement, List.copyOf(arguments.values()));
        made.put(conclusion, concluded);
        return concluded;
    }

    private Argument argument(Rule rule, Map<String, String> names, List<Reason> grounds) {
        return new Argument(
                rule.id(),
                rule.place(),
                rule.becauseFilled(names),
                rule.when().stream().map(said -> said.filled(names, limits)).toList(),
                rule.source(),
                grounds);
    }

    /** The same sentences met by several facts, such as two parts of one blend: one argument with all the grounds. */
    private static Argument together(Argument one, Argument other) {
        return new Argument(
                one.ruleId(),
                one.place(),
                one.because(),
                one.sentences(),
                one.source(),
                inOrder(Stream.concat(one.grounds().stream(), other.grounds().stream())));
    }

    private static List<Reason> inOrder(Stream<Reason> grounds) {
        return grounds.distinct()
                .sorted(Comparator.comparing(Reason::statement))
                .toList();
    }

    /** What the firing rests on; empty when a conclusion it used was withdrawn later. */
    private Optional<List<Reason>> grounds(Firings.Firing firing) {
        List<Reason> grounds = new ArrayList<>();
        for (Object matched : firing.matched()) {
            if (matched instanceof Conclusion conclusion) {
                if (!standing.contains(conclusion)) {
                    return Optional.empty();
                }
                grounds.add(reason(conclusion));
            } else if (matched instanceof Ground ground) {
                grounds.add(ground.reason());
            }
        }
        return Optional.of(inOrder(grounds.stream()));
    }

    private static Map<String, String> namesIn(Firings.Firing firing) {
        Map<String, String> names = new HashMap<>();
        firing.bindings().forEach((variable, value) -> {
            String letter = variable.startsWith("$") ? variable.substring(1) : variable;
            if (letter.length() == 1) {
                names.put(letter, value.toString());
            }
        });
        return names;
    }
}
