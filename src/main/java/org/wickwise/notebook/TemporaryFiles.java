package org.wickwise.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.wickwise.text.Folders;

/** Files that are being written. Readers pass them over; those that a broken-off writing left are removed when they are old. */
final class TemporaryFiles {

    private static final String BEGINNING = ".being-written-";
    private static final Duration OLD = Duration.ofDays(1);

    private TemporaryFiles() {}

    static String newName() {
        return BEGINNING + UUID.randomUUID();
    }

    /**
     * Removes what is a day older than a file that was written just before. Both times are those of the disk, so a clock that
     * was set back, or differs between two computers, makes nothing old.
     */
    static void tidy(Path folder, Path justWritten) {
        try {
            Instant latest = Files.getLastModifiedTime(justWritten).toInstant().minus(OLD);
            for (Path file : Folders.files(folder)) {
                if (file.getFileName().toString().startsWith(BEGINNING)
                        && Files.getLastModifiedTime(file).toInstant().isBefore(latest)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException e) {
            // what cannot be tidied harms nobody
        }
    }

    static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // it is passed over, and tidied when it is old
        }
    }
}
