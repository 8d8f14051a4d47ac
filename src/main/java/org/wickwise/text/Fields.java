package org.wickwise.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;

/**
 * The keys of one group, read against a closed list. A missing, unknown or ill-typed field is reported to the
 * {@link Problems} it was opened with; the reading goes on, so that one run finds every problem.
 */
public final class Fields {

    private static final Set<String> YES = Set.of("yes", "true");
    private static final Set<String> NO = Set.of("no", "false");
    private static final Pattern NUMBER = Pattern.compile("[-+0-9.eE]+");

    private final Mapping mapping;
    private final String what;
    private final Problems problems;
    private final boolean reported;
    private final Map<String, Node> byKey = new TreeMap<>();

    private Fields(Mapping mapping, String what, Problems problems, boolean reported) {
        this.mapping = mapping;
        this.what = what;
        this.problems = problems;
        this.reported = reported;
    }

    /**
     * A key that is one slip away from an allowed one is reported and then read as the one that was meant, so that one
     * mistake gives one message.
     *
     * @param what how a person calls this group, such as "a strip"
     */
    public static Fields of(Mapping mapping, String what, Set<String> allowed, Problems problems) {
        Fields fields = new Fields(mapping, what, problems, true);
        Set<String> written =
                mapping.entries().stream().map(entry -> entry.key().text()).collect(Collectors.toSet());
        for (Entry entry : mapping.entries()) {
            String key = entry.key().text();
            if (allowed.contains(key)) {
                fields.byKey.putIfAbsent(key, entry.value());
                continue;
            }
            problems.add(
                    entry.key().place(),
                    "`" + key + "` is not a key of " + what,
                    "one of " + String.join(", ", allowed.stream().sorted().toList()),
                    NearMiss.suggestion(key, allowed, List.of()));
            NearMiss.of(key, allowed).stream()
                    .filter(meant -> !written.contains(meant))
                    .findFirst()
                    .ifPresent(meant -> fields.byKey.putIfAbsent(meant, entry.value()));
        }
        return fields;
    }

    /** As {@link #of}; a node that is no group of keys is reported once and has no fields. */
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
        return none(node.place(), what);
    }

    /** Fields of a group that is not there; whatever is missing in it goes unreported. */
    public static Fields none(Place place, String what) {
        return new Fields(new Mapping(List.of(), place), what, new Problems(), false);
    }

    /** Whether problems found here reach the reader; not so for a group that is not there. */
    public boolean isReported() {
        return reported;
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
        return scalar(key).map(Scalar::text);
    }

    /** The text of a field with its place. */
    public Optional<Scalar> scalar(String key) {
        return node(key).flatMap(node -> scalar(node, "`" + key + "`"));
    }

    /** The text of a field that has to be there; empty text, with a problem reported, when it is not. */
    public String requiredText(String key) {
        Optional<String> text = text(key).filter(found -> !found.isBlank());
        if (text.isEmpty() && !(node(key).isPresent() && !(byKey.get(key) instanceof Scalar))) {
            missing(key);
        }
        return text.orElse("");
    }

    /**
     * Whether a field says yes; editors write true and false for the same.
     *
     * @param wayOut what to do where it says something else
     * @return empty when the field is not there, or says something else, which is reported
     */
    public Optional<Boolean> yesOrNo(String key, String wayOut) {
        return text(key).flatMap(text -> {
            String word = text.toLowerCase(Locale.ROOT);
            if (YES.contains(word) || NO.contains(word)) {
                return Optional.of(YES.contains(word));
            }
            problems.add(placeOf(key), "`" + key + "` is `" + text + "`", "yes or no", wayOut);
            return Optional.empty();
        });
    }

    /** Reports a field that is not there. */
    public void require(String key) {
        if (!has(key)) {
            missing(key);
        }
    }

    public void missing(String key) {
        String found = what + (has(key) ? " has an empty `" + key + "`" : " has no `" + key + "`");
        problems.add(
                placeOf(key), found, "`" + key + ": ...`", has(key) ? "write a value behind the colon" : "add the key");
    }

    public OptionalDouble number(String key) {
        return scalar(key).map(this::numberIn).orElse(OptionalDouble.empty());
    }

    /** The number of a field that has to be there; nothing, with a problem reported, when it is not. */
    public OptionalDouble requiredNumber(String key) {
        require(key);
        return number(key);
    }

    /** As {@link #numberWithin(String, String, Bounds, String)}, called by its key. */
    public OptionalDouble numberWithin(String key, Bounds bounds, String wayOut) {
        return numberWithin(key, "`" + key + "`", bounds, wayOut);
    }

    /**
     * The number of a field, where it lies within bounds.
     *
     * @param called how a person calls the number, such as "the dilution"
     * @param wayOut what to do where it does not
     * @return empty when the field is not there, or says something else, which is reported
     */
    public OptionalDouble numberWithin(String key, String called, Bounds bounds, String wayOut) {
        OptionalDouble number = number(key);
        if (number.isPresent() && !bounds.takes().test(number.getAsDouble())) {
            problems.add(placeOf(key), called + " is " + bounds.shown(number.getAsDouble()), bounds.expected(), wayOut);
            return OptionalDouble.empty();
        }
        return number;
    }

    /** As {@link #numberWithin(String, Bounds, String)}, of a field that has to be there. */
    public OptionalDouble requiredNumberWithin(String key, Bounds bounds, String wayOut) {
        require(key);
        return numberWithin(key, bounds, wayOut);
    }

    /** The number a scalar holds; a problem and nothing when it holds none. */
    public OptionalDouble numberIn(Scalar scalar) {
        try {
            double number = Double.parseDouble(scalar.text());
            if (Double.isFinite(number) && NUMBER.matcher(scalar.text()).matches()) {
                return OptionalDouble.of(number);
            }
        } catch (NumberFormatException e) {
            // told below, in the words of the person who wrote it
        }
        problems.add(
                scalar.place(),
                scalar.kind() + " is not a number",
                "a plain number such as 24 or 24.5",
                wayToANumber(scalar.text()));
        return OptionalDouble.empty();
    }

    private static String wayToANumber(String text) {
        if (text.isEmpty()) {
            return "write the number; inside { } a comma ends the value, so write a point: 24.5";
        }
        if (text.matches("-?\\d+,\\d+")) {
            return "write a point: " + text.replace(',', '.');
        }
        Matcher leading = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*[A-Za-z%].*").matcher(text);
        return leading.matches()
                ? "write the number alone: " + leading.group(1)
                : "write a number, without unit or words";
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
        scalar(key).ifPresent(use);
    }

    private Optional<Scalar> scalar(Node node, String name) {
        if (node instanceof Scalar scalar) {
            return Optional.of(scalar);
        }
        problems.add(node.place(), name + " is " + node.kind(), "one value", "write the value on the same line");
        return Optional.empty();
    }
}
