package org.wickwise.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;

/**
 * The keys of one group, read against a closed list. A missing, unknown or ill-typed field is reported to the
 * {@link Problems} it was opened with; the reading goes on, so that one run finds every problem.
 */
public final class Fields {

    private final Mapping mapping;
    private final String what;
    private final Problems problems;
    private final Map<String, Node> byKey = new TreeMap<>();

    private Fields(Mapping mapping, String what, Problems problems) {
        this.mapping = mapping;
        this.what = what;
        this.problems = problems;
    }

    /** @param what how a person calls this group, such as "a strip" */
    public static Fields of(Mapping mapping, String what, Set<String> allowed, Problems problems) {
        Fields fields = new Fields(mapping, what, problems);
        for (Entry entry : mapping.entries()) {
            String key = entry.key().text();
            if (!allowed.contains(key)) {
                problems.add(
                        entry.key().place(),
                        "`" + key + "` is not a key of " + what,
                        "one of " + String.join(", ", allowed.stream().sorted().toList()),
                        NearMiss.suggestion(key, allowed));
            }
            fields.byKey.putIfAbsent(key, entry.value());
        }
        return fields;
    }

    /** As {@link #of}, reporting a node that is no group of keys; then there are no fields. */
    public static Fields ofNode(Node node, String what, Set<String> allowed, Problems problems) {
        if (node instanceof Mapping mapping) {
            return of(mapping, what, allowed, problems);
        }
        problems.add(
                node.place(),
                what + " is " + node.kind(),
                "a group of keys ("
                        + String.join(", ", allowed.stream().sorted().toList()) + ")",
                "write `key: value` lines, indented");
        return of(new Mapping(List.of(), node.place()), what, allowed, problems);
    }

    public Place place() {
        return mapping.place();
    }

    public boolean has(String key) {
        return byKey.containsKey(key);
    }

    /** The place of a field, or of its group when it is not there. */
    public Place placeOf(String key) {
        return byKey.containsKey(key) ? byKey.get(key).place() : place();
    }

    public Optional<Node> node(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    public Optional<String> text(String key) {
        return node(key).flatMap(node -> scalar(node, "`" + key + "`")).map(Scalar::text);
    }

    /** The text of a field that has to be there; empty text, with a problem reported, when it is not. */
    public String requiredText(String key) {
        Optional<String> text = text(key).filter(found -> !found.isBlank());
        if (text.isEmpty() && !(node(key).isPresent() && !(byKey.get(key) instanceof Scalar))) {
            missing(key);
        }
        return text.orElse("");
    }

    public void missing(String key) {
        problems.add(placeOf(key), what + " has no `" + key + "`", "`" + key + ": ...`", "add the key");
    }

    public OptionalDouble number(String key) {
        return node(key)
                .flatMap(node -> scalar(node, "`" + key + "`"))
                .map(this::numberIn)
                .orElse(OptionalDouble.empty());
    }

    /** The number a scalar holds; a problem and nothing when it holds none. */
    public OptionalDouble numberIn(Scalar scalar) {
        try {
            double number = Double.parseDouble(scalar.text());
            if (Double.isFinite(number) && scalar.text().matches("[-+0-9.eE]+")) {
                return OptionalDouble.of(number);
            }
        } catch (NumberFormatException e) {
            // told below, in the words of the person who wrote it
        }
        String comma = scalar.text().matches("-?\\d+,\\d+")
                ? "write a point: " + scalar.text().replace(',', '.')
                : "";
        problems.add(
                scalar.place(),
                scalar.kind() + " is not a number",
                "a plain number such as 24 or 24.5",
                comma.isEmpty() ? "write the number alone, without unit or words" : comma);
        return OptionalDouble.empty();
    }

    /** The items of a list field; none, with a problem reported, when it is something else. */
    public List<Node> list(String key) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof Listing listing) {
            return listing.items();
        }
        problems.add(
                node.get().place(),
                "`" + key + "` is " + node.get().kind(),
                "a list",
                "write `[a, b]` or lines with `- `");
        return List.of();
    }

    /** The texts of a list field, each with its place. */
    public List<Scalar> texts(String key) {
        List<Scalar> texts = new ArrayList<>();
        list(key).forEach(item -> scalar(item, "an item of `" + key + "`").ifPresent(texts::add));
        return texts;
    }

    /** The entries of a field that is itself a group of keys of the writer's choosing. */
    public List<Entry> entries(String key) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof Mapping inner) {
            return inner.entries();
        }
        problems.add(
                node.get().place(),
                "`" + key + "` is " + node.get().kind(),
                "names with values, such as `{red: 24, blue: 3}`",
                "write one `name: value` a line, indented");
        return List.of();
    }

    public void ifText(String key, Consumer<Scalar> use) {
        node(key).flatMap(node -> scalar(node, "`" + key + "`")).ifPresent(use);
    }

    private Optional<Scalar> scalar(Node node, String name) {
        if (node instanceof Scalar scalar) {
            return Optional.of(scalar);
        }
        problems.add(node.place(), name + " is " + node.kind(), "one value", "write the value on the same line");
        return Optional.empty();
    }
}
