package org.wickwise.text;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

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

        /** The same group with this value for a key, in the place of another value where there is one, or else at its end. */
        public Mapping with(String key, Node value) {
            Entry said = new Entry(new Scalar(key, value.place()), value);
            boolean known =
                    entries.stream().anyMatch(entry -> entry.key().text().equals(key));
            return new Mapping(
                    known
                            ? entries.stream()
                                    .map(entry -> entry.key().text().equals(key) ? said : entry)
                                    .toList()
                            : Stream.concat(entries.stream(), Stream.of(said)).toList(),
                    place);
        }

        /** The value of a key. */
        public Optional<Node> value(String key) {
            return entries.stream()
                    .filter(entry -> entry.key().text().equals(key))
                    .map(Entry::value)
                    .findFirst();
        }

        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    record Entry(Scalar key, Node value) {}
}
