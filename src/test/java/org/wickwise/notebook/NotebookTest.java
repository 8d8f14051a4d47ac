package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.text.ProblemsFound;

/** A notebook on a disk that does what it should, and on disks that do not. */
class NotebookTest {

    @TempDir
    private Path folder;

    @Test
    void an_entry_is_read_as_it_was_written() throws IOException {
        EntryDraft draft = Drafts.marked("first");
        Path file = Notebook.in(folder).add(List.of(draft)).get(0);
        assertThat(file).hasFileName("2025-11-04-cancelling-ink.yaml").hasContent(draft.text());
        assertThat(contents().entries()).hasSize(1);
        assertThat(names()).containsExactly("2025-11-04-cancelling-ink.yaml");
    }

    @Test
    void entries_of_one_name_are_numbered() {
        Notebook.in(folder).add(List.of(Drafts.marked("a"), Drafts.marked("b"), Drafts.marked("c")));
        assertThat(names())
                .containsExactly(
                        "2025-11-04-cancelling-ink-no-2.yaml",
                        "2025-11-04-cancelling-ink-no-3.yaml",
                        "2025-11-04-cancelling-ink.yaml");
    }

    @Test
    void what_was_broken_off_can_be_repeated() {
        List<EntryDraft> drafts = List.of(Drafts.marked("a"), Drafts.marked("b"));
        List<Path> first = Notebook.in(folder).add(drafts);
        assertThat(Notebook.in(folder).add(drafts)).isEqualTo(first);
        assertThat(names()).hasSize(2);
    }

    @Test
    void names_are_safe_on_every_disk() {
        String longName = "Tinte der Fähre Kittiwake Point, groß und klein, ".repeat(20);
        assertThat(EntryName.of(Drafts.marked("a", "../CON: Größe \u0000 ~", Optional.of("3/Ä")), 1))
                .isEqualTo("2025-11-04-con-grosse-group-3-a.yaml");
        assertThat(EntryName.of(Drafts.marked("a", longName, Optional.of(longName)), 999))
                .hasSizeLessThan(130)
                .matches("[a-z0-9.-]+");
        assertThat(EntryName.of(Drafts.marked("a", "чернила", Optional.empty()), 1))
                .isEqualTo("2025-11-04.yaml");
    }

    @Test
    void names_that_differ_in_capitals_only_meet_in_one_name() {
        Notebook.in(folder)
                .add(List.of(
                        Drafts.marked("a", "Cancelling Ink", Optional.empty()),
                        Drafts.marked("b", "cancelling ink", Optional.empty())));
        assertThat(names()).containsExactly("2025-11-04-cancelling-ink-no-2.yaml", "2025-11-04-cancelling-ink.yaml");
    }

    @Test
    void entries_come_by_date_and_then_by_name() {
        Notebook.in(folder).add(List.of(dated("2025-11-18", "b"), dated("2025-11-04", "c"), dated("2025-11-18", "a")));
        assertThat(contents().entries())
                .extracting(entry -> entry.date() + " " + entry.strips().mixture())
                .containsExactly("2025-11-04 c", "2025-11-18 a", "2025-11-18 b");
    }

    private static EntryDraft dated(String date, String mixture) {
        return EntryDraft.parse(
                "test",
                Drafts.marked("x", mixture, Optional.empty()).text().replace("2025-11-04", date),
                Shipped.data());
    }

    @Test
    void damaged_files_are_set_aside_and_the_rest_is_read() throws IOException {
        Notebook.in(folder).add(List.of(Drafts.marked("a")));
        Files.writeString(folder.resolve("half.yaml"), "date: 2025-11-04\nmixture: {name: ink, dy");
        Files.write(folder.resolve("Größe und mehr.yml"), new byte[] {(byte) 0xff, 0, 1});
        Files.createFile(folder.resolve("empty.yaml"));
        Files.createDirectory(folder.resolve("a folder.yaml"));
        Files.writeString(folder.resolve("readme.txt"), "no entry");
        NotebookContents contents = contents();
        assertThat(contents.entries()).hasSize(1);
        assertThat(contents.setAside())
                .extracting(SetAside::file)
                .containsExactly("Größe und mehr.yml", "a folder.yaml", "empty.yaml", "half.yaml");
        assertThat(contents.setAside().get(3).problems().get(0).place())
                .hasToString(folder.resolve("half.yaml") + ":2");
        assertThat(contents.setAside())
                .allSatisfy(aside -> assertThat(folder.resolve(aside.file())).exists());
    }

    @Test
    void a_correction_keeps_every_older_version() {
        Notebook notebook = Notebook.in(folder);
        Path file = notebook.add(List.of(Drafts.marked("a"))).get(0);
        notebook.correct("2025-11-04-cancelling-ink", Drafts.marked("b"));
        notebook.correct(file.toString(), Drafts.marked("c"));
        assertThat(file).hasContent(Drafts.marked("c").text());
        Path earlier = folder.resolve(Notebook.EARLIER);
        assertThat(earlier.resolve("2025-11-04-cancelling-ink-version-1.yaml"))
                .hasContent(Drafts.marked("a").text());
        assertThat(earlier.resolve("2025-11-04-cancelling-ink-version-2.yaml"))
                .hasContent(Drafts.marked("b").text());
        assertThat(contents().entries()).hasSize(1);
    }

    @Test
    void correcting_what_is_not_there_names_what_is() {
        Notebook.in(folder).add(List.of(Drafts.marked("a")));
        assertThatThrownBy(() -> Notebook.in(folder).correct("2025-11-04-canceling-ink.yaml", Drafts.marked("b")))
                .isInstanceOf(ProblemsFound.class)
                .hasMessageContaining("did you mean `2025-11-04-cancelling-ink.yaml`?");
    }

    @Test
    void a_full_disk_leaves_what_was_written_before_and_hands_back_the_rest() {
        Disk full = new LocalDisk() {
            private int left = 1;

            @Override
            public void write(Path newFile, byte[] content) throws IOException {
                if (left-- == 0) {
                    Files.write(newFile, new byte[] {content[0]});
                    throw new FileSystemException(newFile.toString(), null, "No space left on device");
                }
                super.write(newFile, content);
            }
        };
        NotWritten told = catchThrowableOfType(NotWritten.class, () -> new Notebook(folder, full)
                .add(List.of(Drafts.marked("a"), Drafts.marked("b"), Drafts.marked("c"))));
        assertThat(told.problem().found()).isEqualTo("the disk is full");
        assertThat(told.problem().place()).hasToString(folder.toString());
        assertThat(told.written()).containsExactly(folder.resolve("2025-11-04-cancelling-ink.yaml"));
        assertThat(told.texts())
                .containsExactly(Drafts.marked("b").text(), Drafts.marked("c").text());
        assertThat(names()).containsExactly("2025-11-04-cancelling-ink.yaml");
        assertThat(contents().setAside()).isEmpty();
    }

    @Test
    void a_correction_that_the_disk_does_not_take_leaves_the_older_entry() {
        Path file = Notebook.in(folder).add(List.of(Drafts.marked("a"))).get(0);
        Disk closed = new LocalDisk() {
            @Override
            public void write(Path newFile, byte[] content) throws IOException {
                throw new AccessDeniedException(newFile.toString());
            }
        };
        NotWritten told = catchThrowableOfType(
                NotWritten.class, () -> new Notebook(folder, closed).correct(file.toString(), Drafts.marked("b")));
        assertThat(told.problem().found()).isEqualTo("nothing may be written into this folder");
        assertThat(told.texts()).containsExactly(Drafts.marked("b").text());
        assertThat(file).hasContent(Drafts.marked("a").text());
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_told() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        assertThatThrownBy(() -> Notebook.in(file).add(List.of(Drafts.marked("a"))))
                .isInstanceOf(NotWritten.class)
                .hasMessageContaining(file + ": this is a file; expected the folder of a notebook");
    }

    @Test
    void another_writer_that_takes_the_name_in_the_last_moment_loses_nothing() {
        Disk late = new LocalDisk() {
            @Override
            public void publish(Path whole, Path name) throws IOException {
                if (name.getFileName().toString().equals("2025-11-04-cancelling-ink.yaml")) {
                    Files.writeString(name, Drafts.marked("of another").text());
                }
                super.publish(whole, name);
            }
        };
        Path file =
                new Notebook(folder, late).add(List.of(Drafts.marked("mine"))).get(0);
        assertThat(file)
                .hasFileName("2025-11-04-cancelling-ink-no-2.yaml")
                .hasContent(Drafts.marked("mine").text());
        assertThat(folder.resolve("2025-11-04-cancelling-ink.yaml"))
                .hasContent(Drafts.marked("of another").text());
    }

    @Test
    void a_disk_without_second_names_for_files_takes_entries_under_a_lock() {
        Disk plain = new LocalDisk() {
            @Override
            void link(Path name, Path whole) {
                throw new UnsupportedOperationException("no links here");
            }
        };
        new Notebook(folder, plain).add(List.of(Drafts.marked("a"), Drafts.marked("b")));
        assertThat(contents().entries()).hasSize(2);
        assertThatThrownBy(() -> plain.publish(
                        Files.writeString(folder.resolve(".whole"), "x"),
                        folder.resolve("2025-11-04-cancelling-ink.yaml")))
                .isInstanceOf(java.nio.file.FileAlreadyExistsException.class);
        assertThat(folder.resolve("2025-11-04-cancelling-ink.yaml"))
                .hasContent(Drafts.marked("a").text());
    }

    @Test
    void left_over_files_are_passed_over_and_removed_only_when_old() throws IOException {
        Path fresh = Files.writeString(folder.resolve(TemporaryFiles.newName()), "half");
        Path old = Files.writeString(folder.resolve(TemporaryFiles.newName()), "half");
        Path fromTheFuture = Files.writeString(folder.resolve(TemporaryFiles.newName()), "half");
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(2))));
        Files.setLastModifiedTime(fromTheFuture, FileTime.from(Instant.now().plus(Duration.ofDays(400))));
        assertThat(contents().setAside()).isEmpty();
        Notebook.in(folder).add(List.of(Drafts.marked("a")));
        assertThat(old).doesNotExist();
        assertThat(fresh).exists();
        assertThat(fromTheFuture).exists();
    }

    @Test
    void a_folder_that_is_not_there_cannot_be_read() {
        assertThatThrownBy(() -> Notebook.in(folder.resolve("none")).contents(Shipped.data()))
                .isInstanceOf(ProblemsFound.class)
                .hasMessageContaining("there is no such folder");
    }

    private NotebookContents contents() {
        return Notebook.in(folder).contents(Shipped.data());
    }

    /** What lies in the folder, hidden files but the lock included. */
    private List<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals(LocalDisk.LOCK))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
