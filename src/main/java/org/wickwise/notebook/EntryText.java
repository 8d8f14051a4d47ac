package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.text.Letters;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;

/**
 * An entry written out as a file: who, when and where first, one strip below the other, the spots of a strip on one line.
 * Remarks behind `#` are not part of what was read and are left out.
 */
public final class EntryText {

    private static final List<String> FIRST = List.of("date", "group", "where", "who", "title");
    private static final Pattern PLAIN =
            Pattern.compile("[\\p{L}\\p{N}]([\\p{L}\\p{N} ._/()%+;'-]|:(?=[\\p{L}\\p{N}]))*(?<! )");
    private static final Set<String> NOTHING = Set.of("null", "~");

    private EntryText() {}

    /** What a reader of YAML reads as the same keys with the same values. */
    public static String of(Mapping root) {
        List<Entry> ordered = new ArrayList<>(root.entries());
        ordered.sort(Comparator.comparingInt(entry -> {
            int at = FIRST.indexOf(entry.key().text());
            return at < 0 ? FIRST.size() : at;
        }));
        return ordered.stream().map(entry -> line(entry, "")).collect(Collectors.joining());
    }

    private static String line(Entry entry, String indent) {
        String key = indent + scalar(entry.key().text()) + ":";
        Node value = entry.value();
        if (value instanceof Mapping inner
                && indent.isEmpty()
                && !inner.entries().isEmpty()) {
            return key + "\n"
                    + inner.entries().stream().map(one -> line(one, "  ")).collect(Collectors.joining());
        }
        if (value instanceof Listing listing && listing.items().stream().anyMatch(Mapping.class::isInstance)) {
            return key + "\n"
                    + listing.items().stream()
                            .map(item -> item(item, indent + "  "))
                            .collect(Collectors.joining());
        }
        return key + " " + inLine(value) + "\n";
    }

    private static String item(Node item, String indent) {
        if (item instanceof Mapping group
                && group.entries().stream().anyMatch(entry -> !(entry.value() instanceof Scalar))) {
            String lines = group.entries().stream()
                    .map(entry -> indent + "  " + scalar(entry.key().text()) + ": " + inLine(entry.value()) + "\n")
                    .collect(Collectors.joining());
            return indent + "- " + lines.substring(indent.length() + 2);
        }
        return indent + "- " + inLine(item) + "\n";
    }

    private static String inLine(Node node) {
        if (node instanceof Mapping group) {
            return group.entries().stream()
                    .map(entry -> scalar(entry.key().text()) + ": " + inLine(entry.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof Listing listing) {
            return listing.items().stream().map(EntryText::inLine).collect(Collectors.joining(", ", "[", "]"));
        }
        return scalar(((Scalar) node).text());
    }

    private static String scalar(String text) {
        boolean plain = PLAIN.matcher(text).matches() && !NOTHING.contains(text.toLowerCase(Locale.ROOT));
        return plain ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> {
            if (letter == '"' || letter == '\\') {
                quoted.append('\\').appendCodePoint(letter);
            } else if (letter <= Character.MAX_VALUE
                    && Letters.hidden(Character.toString(letter)).isPresent()) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", letter));
            } else {
                quoted.appendCodePoint(letter);
            }
        });
        return quoted.append('"').toString();
    }
}
