package org.wickwise.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.wickwise.column.ColumnSizes;
import org.wickwise.strip.BlendWishes;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * The rules, limits and preferences of a folder, read and checked, not yet compiled.
 *
 * @param rules in the order of the layers, then of their names
 * @param topics what cautions are about, in the order of printing
 * @param wishes how one plan is chosen among several
 * @param blends what a blend worth proposing looks like
 * @param columnSizes how large a column for how much mixture
 */
public record Rulebook(
        List<Rule> rules,
        Map<String, Limit> limits,
        List<String> topics,
        Wishes wishes,
        BlendWishes blends,
        ColumnSizes columnSizes) {

    private static final Set<String> LIMIT_KEYS = Set.of("value", "unit", "lowest", "highest", "means", "source");

    /** @throws ProblemsFound with every problem of the folder */
    public static Rulebook read(Path folder, SolventData data) {
        Problems problems = new Problems();
        Map<String, Limit> limits = limits(read(folder, "limits.yaml"), problems);
        List<String> topics = new ArrayList<>();
        Fields topicsFile = Fields.of(read(folder, "topics.yaml"), "the topics", Set.of("topics"), problems);
        topicsFile.texts("topics").stream().map(Scalar::text).forEach(topics::add);
        Vocabulary vocabulary = Vocabulary.read(yamlIn(folder, "words"), Vocabulary.Kinds.from(data, topics), problems);
        RuleReader reader = new RuleReader(vocabulary, limits.keySet(), problems);
        List<Rule> rules = new ArrayList<>();
        for (Mapping file : yamlIn(folder, "layers")) {
            rules.addAll(reader.rules(file).stream()
                    .sorted(Comparator.comparing(Rule::id))
                    .toList());
        }
        Wishes wishes = new WishesReader(data, problems).wishes(read(folder, "preferences.yaml"));
        BlendWishes blends = new BlendWishesReader(problems).wishes(read(folder, "blends.yaml"));
        ColumnSizes columnSizes = new ColumnSizesReader(problems).sizes(read(folder, "column-sizes.yaml"));
        problems.throwIfAny();
        return new Rulebook(List.copyOf(rules), limits, List.copyOf(topics), wishes, blends, columnSizes);
    }

    /** The names of the rules that may give a caution. */
    public List<String> cautionRules() {
        return rules.stream()
                .filter(rule -> rule.then().stream()
                        .anyMatch(then -> then.sentence().concludes().orElse("").contains("Caution(")))
                .map(Rule::id)
                .toList();
    }

    /** The same book with other limits. */
    Rulebook with(Map<String, Limit> others) {
        return new Rulebook(rules, Map.copyOf(others), topics, wishes, blends, columnSizes);
    }

    private static Map<String, Limit> limits(Mapping file, Problems problems) {
        Map<String, Limit> limits = new TreeMap<>();
        Fields root = Fields.of(file, "the limits", Set.of("limits"), problems);
        for (Entry entry : root.entries("limits")) {
            limit(entry.key().text(), entry.value(), problems).ifPresent(limit -> limits.put(limit.name(), limit));
        }
        return limits;
    }

    private static Optional<Limit> limit(String name, Node node, Problems problems) {
        Fields fields = Fields.ofNode(node, "a limit", LIMIT_KEYS, problems);
        OptionalDouble value = fields.number("value");
        OptionalDouble lowest = fields.number("lowest");
        OptionalDouble highest = fields.number("highest");
        if (value.isEmpty() || lowest.isEmpty() || highest.isEmpty()) {
            Stream.of("value", "lowest", "highest")
                    .filter(key -> !fields.has(key))
                    .forEach(fields::missing);
            return Optional.empty();
        }
        if (value.getAsDouble() < lowest.getAsDouble() || value.getAsDouble() > highest.getAsDouble()) {
            problems.add(
                    fields.placeOf("value"),
                    "the " + name + " is " + value.getAsDouble(),
                    "a value from " + lowest.getAsDouble() + " to " + highest.getAsDouble(),
                    "choose a value in that range; outside it the rules lose their meaning");
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

    private static Mapping read(Path folder, String name) {
        return YamlFile.read(folder.resolve(name), "rules/" + name);
    }

    private static List<Mapping> yamlIn(Path folder, String inner) {
        return YamlFile.namesIn(folder.resolve(inner)).stream()
                .map(name -> read(folder, inner + "/" + name))
                .toList();
    }
}
