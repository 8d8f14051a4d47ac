package org.wickwise.command;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** Waits for files of a folder to be saved. */
final class SavedFiles {

    /** Editors save in several steps; what comes within this time is one saving. */
    private static final long TOGETHER_MILLISECONDS = 50;

    private SavedFiles() {}

    /**
     * Does something whenever a file of the folder or of one in it is saved, until the program is stopped or the folder is
     * gone.
     */
    static void whenever(Path folder, Runnable doing) {
        try (WatchService watch = FileSystems.getDefault().newWatchService()) {
            for (Path each : foldersIn(folder)) {
                each.register(
                        watch,
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE);
            }
            while (isStillThere(watch.take())) {
                while (waitForMore(watch)) {
                    // the editor is still saving
                }
                doing.run();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile(folder.toString()),
                    "the folder cannot be watched",
                    "a folder on a disk of this computer",
                    "leave --watch out and check again by hand")));
        }
    }

    private static boolean waitForMore(WatchService watch) throws InterruptedException {
        WatchKey more = watch.poll(TOGETHER_MILLISECONDS, TimeUnit.MILLISECONDS);
        return more != null && isStillThere(more);
    }

    private static boolean isStillThere(WatchKey key) {
        key.pollEvents();
        return key.reset();
    }

    private static List<Path> foldersIn(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isDirectory).toList();
        }
    }
}
