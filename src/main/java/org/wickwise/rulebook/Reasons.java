package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Concluded;

/** Turns noted firings into reasons that reach down to readings, table values and the case file. */
final class Reasons {

    private final Map<String, Rule> rules = new HashMap<>();
    private final Map<String, Limit> limits;
    private final Firings firings;
    private final Set<Conclusion> standing;
    private final Map<Conclusion, Concluded> made = new HashMap<>();

    private Reasons(Collection<Rule> rules, Map<String, Limit> limits, Firings firings, Set<Conclusion> standing) {
        rules.forEach(rule -> this.rules.put(rule.id(), rule));
        this.limits = limits;
        this.firings = firings;
        this.standing = standing;
    }

    /** @param standing the conclusions that hold in the end */
    static Map<Conclusion, Concluded> of(
            Collection<Rule> rules, Map<String, Limit> limits, Firings firings, Set<Conclusion> standing) {
        Reasons reasons = new Reasons(rules, limits, firings, standing);
        Map<Conclusion, Concluded> all = new LinkedHashMap<>();
        standing.stream()
                .sorted(Comparator.comparing(Conclusion::toString))
                .forEach(conclusion -> all.put(conclusion, reasons.reason(conclusion)));
        return all;
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
