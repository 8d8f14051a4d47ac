package org.wickwise.text;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;

/**
 * Nodes as bytes, which are read many times faster than YAML: the texts, each once, then every piece as its kind, its line and
 * the numbers of its texts.
 */
final class NodeBytes {

    private static final byte SCALAR = 0;
    private static final byte LISTING = 1;
    private static final byte MAPPING = 2;

    private NodeBytes() {}

    static byte[] written(Mapping root) {
        Map<String, Integer> numberOfText = new LinkedHashMap<>();
        ByteArrayOutputStream pieces = new ByteArrayOutputStream();
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        try (DataOutputStream toPieces = new DataOutputStream(pieces);
                DataOutputStream toWhole = new DataOutputStream(whole)) {
            write(root, numberOfText, toPieces);
            toWhole.writeInt(numberOfText.size());
            for (String text : numberOfText.keySet()) {
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                toWhole.writeInt(bytes.length);
                toWhole.write(bytes);
            }
            pieces.writeTo(toWhole);
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory cannot fail", e);
        }
        return whole.toByteArray();
    }

    private static void write(Node node, Map<String, Integer> numberOfText, DataOutputStream to) throws IOException {
        to.writeByte(node instanceof Scalar ? SCALAR : node instanceof Listing ? LISTING : MAPPING);
        to.writeInt(node.place().line());
        if (node instanceof Scalar scalar) {
            to.writeInt(numberOf(scalar.text(), numberOfText));
        } else if (node instanceof Listing listing) {
            to.writeInt(listing.items().size());
            for (Node item : listing.items()) {
                write(item, numberOfText, to);
            }
        } else if (node instanceof Mapping mapping) {
            to.writeInt(mapping.entries().size());
            for (Entry entry : mapping.entries()) {
                to.writeInt(entry.key().place().line());
                to.writeInt(numberOf(entry.key().text(), numberOfText));
                write(entry.value(), numberOfText, to);
            }
        }
    }

    private static int numberOf(String text, Map<String, Integer> numberOfText) {
        Integer next = numberOfText.size();
        Integer known = numberOfText.putIfAbsent(text, next);
        return known == null ? next : known;
    }

    /** @param file how messages call the file */
    static Mapping read(ByteBuffer bytes, String file) {
        String[] texts = new String[bytes.getInt()];
        for (int i = 0; i < texts.length; i++) {
            byte[] text = new byte[bytes.getInt()];
            bytes.get(text);
            texts[i] = new String(text, StandardCharsets.UTF_8);
        }
        return (Mapping) node(bytes, texts, file);
    }

    private static Node node(ByteBuffer bytes, String[] texts, String file) {
        byte kind = bytes.get();
        Place place = new Place(file, bytes.getInt());
        return switch (kind) {
            case SCALAR -> new Scalar(texts[bytes.getInt()], place);
            case LISTING -> {
                int count = bytes.getInt();
                List<Node> items = new ArrayList<>(count);
                for (int i = 0; i < count; i++) {
                    items.add(node(bytes, texts, file));
                }
                yield new Listing(List.copyOf(items), place);
            }
            default -> {
                int count = bytes.getInt();
                List<Entry> entries = new ArrayList<>(count);
                for (int i = 0; i < count; i++) {
                    Place line = new Place(file, bytes.getInt());
                    Scalar key = new Scalar(texts[bytes.getInt()], line);
                    entries.add(new Entry(key, node(bytes, texts, file)));
                }
                yield new Mapping(List.copyOf(entries), place);
            }
        };
    }
}
