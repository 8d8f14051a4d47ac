package org.wickwise.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies in a folder, and what a person is told where it cannot be seen. */
class FoldersTest {

    @TempDir
    private Path folder;

    @Test
    void files_come_in_the_order_of_their_names_and_without_those_deeper_down() throws IOException {
        Files.writeString(folder.resolve("b.yaml"), "");
        Files.writeString(folder.resolve("a.csv"), "");
        Files.writeString(Files.createDirectory(folder.resolve("c.yaml")).resolve("deep.yaml"), "");
        assertThat(Folders.files(folder))
                .containsExactly(folder.resolve("a.csv"), folder.resolve("b.yaml"), folder.resolve("c.yaml"));
        assertThat(YamlFile.namesIn(folder)).containsExactly("b.yaml", "c.yaml");
    }

    @Test
    void a_folder_that_cannot_be_read_is_told_with_what_was_meant_and_the_way_out() {
        Path missing = folder.resolve("missing");
        assertThatThrownBy(() -> Folders.files(missing)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> YamlFile.namesIn(missing, "a folder with rules", "make one"))
                .isInstanceOf(ProblemsFound.class)
                .hasMessageContaining(missing + ": the folder cannot be read")
                .hasMessageContaining("a folder with rules")
                .hasMessageContaining("make one");
    }
}
