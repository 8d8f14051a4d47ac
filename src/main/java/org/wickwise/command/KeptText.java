package org.wickwise.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;

/** Keeps what somebody wrote where a file can be written: here, or else in the home folder or that for temporary files. */
final class KeptText {

    private static final int MOST = 1_000;

    private KeptText() {}

    /** The new file that holds the text; empty where none of the folders takes it. */
    static Optional<Path> in(List<Path> folders, String text) {
        return folders.stream().flatMap(folder -> kept(folder, text).stream()).findFirst();
    }

    static List<Path> usualFolders() {
        return List.of(
                Path.of(""), Path.of(System.getProperty("user.home")), Path.of(System.getProperty("java.io.tmpdir")));
    }

    private static Optional<Path> kept(Path folder, String text) {
        for (int number = 1; number <= MOST; number++) {
            Path file = folder.resolve("not-in-the-notebook-" + number + ".yaml");
            try {
                Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
                return Optional.of(file);
            } catch (FileAlreadyExistsException taken) {
                continue;
            } catch (IOException e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
