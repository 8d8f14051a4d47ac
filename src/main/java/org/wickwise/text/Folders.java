package org.wickwise.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What lies in a folder. */
public final class Folders {

    private Folders() {}

    /**
     * Everything that lies right in a folder, sorted by its name.
     *
     * @throws IOException also where the disk fails halfway through
     */
    public static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /**
     * As {@link #files(Path)}, told to a person where it fails.
     *
     * @param expected what folder was meant
     * @throws ProblemsFound if the folder cannot be read
     */
    public static List<Path> files(Path folder, String expected, String wayOut) {
        try {
            return files(folder);
        } catch (IOException e) {
            throw new ProblemsFound(List.of(
                    new Problem(Place.wholeFile(folder.toString()), "the folder cannot be read", expected, wayOut)));
        }
    }
}
