package org.wickwise.text;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;

/**
 * Reads one YAML document into nodes that know their line. Aliases, tags, a second document, more than
 * {@value #MOST_BYTES} bytes and more than {@value #DEEPEST} levels are refused: nobody needs them beside a strip.
 */
public final class YamlFile {

    static final long MOST_BYTES = 1_000_000;
    static final int DEEPEST = 30;

    private final String file;
    private final YAMLParser parser;
    private final Problems problems;

    private YamlFile(String file, YAMLParser parser, Problems problems) {
        this.file = file;
        this.parser = parser;
        this.problems = problems;
    }

    /** @throws ProblemsFound if the file is missing, too large, not text, or not YAML */
    public static Mapping read(Path path) {
        return read(path, path.toString().replace('\\', '/'));
    }

    /**
     * As {@link #read(Path)}.
     *
     * @param shownAs how messages and reasons call the file
     */
    public static Mapping read(Path path, String shownAs) {
        return parse(shownAs, contentOf(path, Place.wholeFile(shownAs)));
    }

    /**
     * The names of the YAML files of a folder that comes with the program, sorted.
     *
     * @throws ProblemsFound if the folder cannot be read
     */
    public static List<String> namesIn(Path folder) {
        return namesIn(
                folder,
                "the folders `rules` and `solvent-data` beside the program",
                "start the program from its own folder, or with its start script");
    }

    /**
     * The names of the YAML files of any folder, sorted.
     *
     * @param expected what folder was meant
     * @param wayOut what to do where it cannot be read
     * @throws ProblemsFound if the folder cannot be read
     */
    public static List<String> namesIn(Path folder, String expected, String wayOut) {
        return Folders.files(folder, expected, wayOut).stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> name.endsWith(".yaml"))
                .sorted()
                .toList();
    }

    /** @throws ProblemsFound as {@link #read} */
    public static Mapping parse(String file, String content) {
        return ReadBefore.SHIPPED.find(file, content).orElseGet(() -> parsed(file, content));
    }

    private static Mapping parsed(String file, String content) {
        Problems problems = new Problems();
        try (YAMLParser parser = new YAMLFactory().createParser(content)) {
            Node root = new YamlFile(file, parser, problems).document();
            problems.throwIfAny();
            if (root instanceof Mapping mapping) {
                return mapping;
            }
            problems.add(
                    Place.wholeFile(file),
                    "the file holds " + root.kind(),
                    "keys with values, such as `title: ...`",
                    "start from one of the files in docs/examples");
        } catch (JacksonException e) {
            problems.add(YamlTrouble.in(file, content, e));
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory cannot fail", e);
        }
        problems.throwIfAny();
        throw new IllegalStateException("a file without a mapping and without a problem");
    }

    private static String contentOf(Path path, Place place) {
        Problems problems = new Problems();
        try {
            if (!Files.isRegularFile(path)) {
                problems.add(
                        place,
                        Files.exists(path) ? "this is not a file" : "there is no such file",
                        "a YAML file",
                        "check the spelling and the folder you are in");
            } else if (Files.size(path) > MOST_BYTES) {
                problems.add(
                        place,
                        "the file has " + Files.size(path) + " bytes",
                        "at most " + MOST_BYTES + " bytes",
                        "a case with eight dyes and forty strips needs about 20,000 bytes: is this the right file?");
            } else {
                return Files.readString(path);
            }
        } catch (MalformedInputException e) {
            problems.add(place, "the file is not UTF-8 text", "plain text in UTF-8", "save it as UTF-8 in your editor");
        } catch (IOException e) {
            problems.add(place, "the file cannot be read", "a readable file", "check who may read it");
        }
        problems.throwIfAny();
        throw new IllegalStateException("an unreadable file without a problem");
    }

    private Node document() throws IOException {
        if (parser.nextToken() == null) {
            return new Scalar("", Place.wholeFile(file));
        }
        Node root = node(1);
        if (parser.nextToken() != null) {
            problems.add(
                    here(), "a second document starts here", "one document a file", "keep each case in its own file");
        }
        return root;
    }

    private Node node(int depth) throws IOException {
        Place place = here();
        if (parser.isCurrentAlias() || parser.getObjectId() != null) {
            problems.add(place, "an anchor or alias (& or *)", "plain values", "write the value out here");
        }
        if (parser.getTypeId() != null) {
            problems.add(place, "a tag (!) stands here", "plain values", "leave the tag out, or quote the text");
        }
        if (depth > DEEPEST) {
            problems.add(place, "more than " + DEEPEST + " levels", "a few levels", "check the brackets");
            problems.throwIfAny();
        }
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return mapping(place, depth);
        }
        if (token == JsonToken.START_ARRAY) {
            return listing(place, depth);
        }
        return new Scalar(token == JsonToken.VALUE_NULL ? "" : parser.getText(), place);
    }

    private Mapping mapping(Place place, int depth) throws IOException {
        List<Entry> entries = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Scalar key = new Scalar(parser.currentName(), here());
            if (parser.isCurrentAlias()) {
                problems.add(key.place(), "an alias (*) as a key", "plain keys", "write the key out here");
            }
            if (!seen.add(key.text())) {
                problems.add(
                        key.place(),
                        "`" + key.text() + "` stands here a second time",
                        "each key once",
                        "remove one of the two, or give it its own name");
            }
            parser.nextToken();
            entries.add(new Entry(key, node(depth + 1)));
        }
        return new Mapping(List.copyOf(entries), place);
    }

    private Listing listing(Place place, int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return new Listing(List.copyOf(items), place);
    }

    private Place here() {
        return new Place(file, parser.currentTokenLocation().getLineNr());
    }
}
