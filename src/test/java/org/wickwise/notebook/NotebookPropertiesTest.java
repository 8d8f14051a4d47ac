package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.wickwise.Shipped;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.YamlFile;

/** Whatever is added and corrected in whatever order, every entry of the notebook can be read and nothing is gone. */
class NotebookPropertiesTest {

    private static final Place PLACE = new Place("test", 1);

    /** @param corrects counted among the entries that are there; empty where it adds */
    record Doing(String mixture, Optional<String> group, Optional<Integer> corrects) {}

    @Property(tries = 60)
    void any_sequence_of_adding_and_correcting_leaves_every_entry_readable(@ForAll("doings") List<Doing> doings)
            throws IOException {
        Path folder = Files.createTempDirectory("notebook");
        try {
            Notebook notebook = Notebook.in(folder);
            List<Path> files = new ArrayList<>();
            for (int i = 0; i < doings.size(); i++) {
                Doing doing = doings.get(i);
                EntryDraft draft = draft("mark " + i, doing);
                if (doing.corrects().isPresent() && !files.isEmpty()) {
                    notebook.correct(
                            files.get(doing.corrects().get() % files.size()).toString(), draft);
                } else {
                    files.addAll(notebook.add(List.of(draft)));
                }
            }
            NotebookContents contents = notebook.contents(Shipped.data());
            assertThat(contents.setAside()).isEmpty();
            assertThat(contents.entries()).hasSize(files.size()).hasSize((int)
                    files.stream().distinct().count());
            assertThat(yamlFiles(folder)).hasSize(doings.size());
        } finally {
            remove(folder);
        }
    }

    @Property(tries = 300)
    void what_is_written_out_is_read_back_letter_by_letter(@ForAll("texts") String key, @ForAll("texts") String value) {
        Mapping written = new Mapping(
                List.of(
                        new Entry(new Scalar("x" + key, PLACE), new Scalar(value, PLACE)),
                        new Entry(
                                new Scalar("list", PLACE),
                                new Node.Listing(
                                        List.of(
                                                new Scalar(value, PLACE),
                                                new Mapping(
                                                        List.of(
                                                                new Entry(
                                                                        new Scalar(value, PLACE),
                                                                        new Scalar(key, PLACE))),
                                                        PLACE)),
                                        PLACE))),
                PLACE);
        assertThat(words(YamlFile.parse("test", EntryText.of(written)))).isEqualTo(words(written));
    }

    private static EntryDraft draft(String mark, Doing doing) {
        Mapping entry = YamlFile.parse("test", Drafts.marked(mark).text());
        Mapping mixture = (Mapping) entry.value("mixture").orElseThrow();
        entry = entry.with("mixture", mixture.with("name", new Scalar(doing.mixture(), PLACE)));
        return EntryDraft.of(
                doing.group().isPresent()
                        ? entry.with("group", new Scalar(doing.group().get(), PLACE))
                        : entry,
                Shipped.data());
    }

    private static String words(Node node) {
        if (node instanceof Mapping group) {
            return group.entries().stream()
                    .map(entry -> words(entry.key()) + "=" + words(entry.value()))
                    .toList()
                    .toString();
        }
        if (node instanceof Node.Listing listing) {
            return listing.items().stream()
                    .map(NotebookPropertiesTest::words)
                    .toList()
                    .toString();
        }
        return ((Scalar) node).text();
    }

    @Provide
    Arbitrary<List<Doing>> doings() {
        Arbitrary<Optional<String>> groups =
                texts().map(Optional::of).injectNull(0.3).map(group -> group == null ? Optional.empty() : group);
        Arbitrary<Optional<Integer>> corrects =
                Arbitraries.integers().between(0, 9).optional(0.4);
        return Combinators.combine(
                        Arbitraries.oneOf(Arbitraries.of("ink", "Ink", "Tinte für Blätter"), texts()), groups, corrects)
                .as(Doing::new)
                .list()
                .ofMaxSize(8);
    }

    /** Everything that may stand in a file: what means something to YAML, letters of any language, blanks at the ends. */
    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.of(
                        "",
                        "null",
                        "Null",
                        "~",
                        "yes",
                        "0x1F",
                        "1_000",
                        "2025-11-04",
                        "12:30",
                        "- a",
                        "a: b",
                        "a #b",
                        "#b",
                        "\"",
                        "'",
                        "\\",
                        "a\nb",
                        "\t",
                        " a ",
                        "{a",
                        "[a",
                        "a, b",
                        "&a",
                        "*a",
                        "!a",
                        "%a",
                        "@a",
                        "`a",
                        "|",
                        ">",
                        "?",
                        "--- a",
                        "...",
                        "\u0000",
                        "\u0085",
                        "\u2028",
                        "\ufeff",
                        "\ud83d\ude00",
                        "\u202e",
                        "1e3",
                        "+5",
                        ".5"),
                Arbitraries.strings().all().ofMaxLength(12).filter(text -> text.codePoints()
                        .noneMatch(letter -> Character.getType(letter) == Character.SURROGATE)));
    }

    private static List<Path> yamlFiles(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(".yaml")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
