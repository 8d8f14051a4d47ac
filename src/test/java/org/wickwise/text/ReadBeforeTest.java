package org.wickwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wickwise.text.Node.Mapping;

/** Files read at packaging are read as if they were read at every start. */
class ReadBeforeTest {

    private static final List<String> TEXTS = new ArrayList<>();

    @BeforeAll
    static void read_the_shipped_files() throws IOException {
        for (String folder : List.of("rules", "solvent-data", "docs/examples")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file :
                        files.filter(name -> name.toString().endsWith(".yaml")).toList()) {
                    TEXTS.add(Files.readString(file));
                }
            }
        }
    }

    @Test
    void every_shipped_file_holds_the_same_keys_values_and_lines_as_when_it_is_read_anew() {
        ReadBefore before = ReadBefore.in(ReadBefore.written(TEXTS));

        assertThat(TEXTS).hasSizeGreaterThan(100);
        assertThat(TEXTS).allSatisfy(text -> assertThat(before.find("shown/so.yaml", text))
                .contains(YamlFile.parse("shown/so.yaml", text)));
    }

    @Test
    void a_file_with_one_changed_letter_was_not_read_before() {
        ReadBefore before = ReadBefore.in(ReadBefore.written(TEXTS));

        assertThat(TEXTS).allSatisfy(text -> assertThat(before.find("shown/so.yaml", text.replaceFirst("e", "i")))
                .isEmpty());
    }

    @Test
    void signs_beyond_the_alphabet_empty_values_and_nested_lists_come_back() {
        String text = "näme: \"µL, 10 °C, 𝛿\"\nnothing:\nempty: {}\nrows: [[1, [2, 3]], [], {a: [b]}]\n";
        Mapping anew = YamlFile.parse("odd.yaml", text);

        assertThat(ReadBefore.in(ReadBefore.written(List.of(text))).find("odd.yaml", text))
                .contains(anew);
        assertThat(anew.entries()).hasSize(4);
    }

    @Test
    void a_program_that_is_not_packaged_has_read_nothing_before() {
        assertThat(TEXTS).allSatisfy(text -> assertThat(ReadBefore.SHIPPED.find("shown/so.yaml", text))
                .isEmpty());
    }
}
