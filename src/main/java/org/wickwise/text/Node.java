package org.wickwise.text;

import java.util.List;
import java.util.function.Predicate;

/** A piece of a YAML file that remembers its place. Every scalar is kept as the text that was written. */
public sealed interface Node {

    Place place();

    /** What a person would call this piece. */
    String kind();

    record Scalar(String text, Place place) implements Node {

        private static final int MOST_SHOWN = 80;

        @Override
        public String kind() {
            if (text.isEmpty()) {
                return "nothing";
            }
            return "`" + (text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "..." : text) + "`";
        }
    }

    record Listing(List<Node> items, Place place) implements Node {
        @Override
        public String kind() {
            return "a list";
        }
    }

    record Mapping(List<Entry> entries, Place place) implements Node {

        /** The entries whose key passes. */
        public Mapping where(Predicate<String> key) {
            return new Mapping(
                    entries.stream()
                            .filter(entry -> key.test(entry.key().text()))
                            .toList(),
                    place);
        }

        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    record Entry(Scalar key, Node value) {}
}
