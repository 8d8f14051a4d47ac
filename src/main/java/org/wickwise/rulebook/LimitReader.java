package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;

/** Reads limits with everything that belongs to one: value, unit, range, meaning and source. */
final class LimitReader {

    private static final Set<String> LIMIT_KEYS = Set.of("value", "unit", "lowest", "highest", "means", "source");

    private LimitReader() {}

    static Map<String, Limit> limits(Mapping file, Problems problems) {
        Map<String, Limit> limits = new TreeMap<>();
        Fields root = Fields.of(file, "the limits", Set.of("limits"), problems);
        for (Entry entry : root.entries("limits")) {
            limit(entry.key().text(), entry.value(), problems).ifPresent(limit -> limits.put(limit.name(), limit));
        }
        return limits;
    }

    static Optional<Limit> limit(String name, Node node, Problems problems) {
        Fields fields = Fields.ofNode(node, "a limit", LIMIT_KEYS, problems);
        OptionalDouble value = fields.number("value");
        OptionalDouble lowest = fields.number("lowest");
        OptionalDouble highest = fields.number("highest");
        if (value.isEmpty() || lowest.isEmpty() || highest.isEmpty()) {
            List.of("value", "lowest", "highest").forEach(fields::require);
            return Optional.empty();
        }
        if (value.getAsDouble() < lowest.getAsDouble() || value.getAsDouble() > highest.getAsDouble()) {
            problems.add(new Problem(
                    fields.placeOf("value"),
                    "the " + name + " is " + value.getAsDouble(),
                    "a value from " + lowest.getAsDouble() + " to " + highest.getAsDouble(),
                    "choose a value in that range; outside it the rules lose their meaning",
                    RuleTrouble.OUT_OF_RANGE.code(),
                    ""));
        }
        return Optional.of(new Limit(
                name,
                value.getAsDouble(),
                fields.requiredText("unit"),
                lowest.getAsDouble(),
                highest.getAsDouble(),
                fields.requiredText("means"),
                fields.requiredText("source"),
                fields.place()));
    }
}
