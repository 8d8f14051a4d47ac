package org.wickwise.notebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Folders;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * A folder with one file an entry. Several programs may read it and write to it at once: an entry is there whole or not at
 * all, no entry takes the place of another, and what was returned from {@link #add} is kept.
 */
public final class Notebook {

    /** The folder inside a notebook that keeps what was corrected. */
    public static final String EARLIER = "earlier";

    private final Path folder;
    private final Disk disk;

    Notebook(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    /** The notebook in a folder; the folder is made when the first entry is added. */
    public static Notebook in(Path folder) {
        return new Notebook(folder, new LocalDisk());
    }

    public Path folder() {
        return folder;
    }

    /**
     * Reads every entry. A file that cannot be read is set aside and the rest is read all the same; hidden files and folders
     * are passed over.
     *
     * @throws ProblemsFound when the folder itself cannot be read
     */
    public NotebookContents contents(SolventData data) {
        List<Looked> looked =
                files().parallelStream().map(file -> looked(file, data)).toList();
        return new NotebookContents(
                looked.stream()
                        .flatMap(one -> one.entry().stream())
                        .sorted(Comparator.comparing(Entry::date).thenComparing(Entry::place))
                        .toList(),
                looked.stream().flatMap(one -> one.setAside().stream()).toList());
    }

    private record Looked(List<Entry> entry, List<SetAside> setAside) {}

    private static Looked looked(Path file, SolventData data) {
        try {
            return new Looked(List.of(EntryReader.read(file, data)), List.of());
        } catch (ProblemsFound found) {
            return new Looked(List.of(), List.of(new SetAside(file.getFileName().toString(), found.problems())));
        }
    }

    private List<Path> files() {
        try {
            return Folders.files(folder).stream().filter(Notebook::isEntry).toList();
        } catch (IOException e) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile(folder.toString()),
                    Files.exists(folder) ? "the folder cannot be read" : "there is no such folder",
                    "the folder of a notebook",
                    "check the spelling and who may read it; `record` begins a new one")));
        }
    }

    private static boolean isEntry(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && (name.endsWith(".yaml") || name.endsWith(".yml"));
    }

    /**
     * Adds entries, in this order. An entry of which the notebook holds the very same text under the same date, mixture and
     * group is not added again, so what was broken off can simply be repeated.
     *
     * @return the file of each
     * @throws NotWritten with what is not in the notebook, when the disk does not take all
     */
    public List<Path> add(List<EntryDraft> drafts) {
        List<Path> written = new ArrayList<>();
        Map<String, Integer> nextNumbers = new HashMap<>();
        for (int i = 0; i < drafts.size(); i++) {
            try {
                if (i == 0) {
                    LocalDisk.makeFolder(folder);
                }
                written.add(added(drafts.get(i), nextNumbers));
            } catch (IOException e) {
                throw new NotWritten(
                        problem(e),
                        written,
                        drafts.subList(i, drafts.size()).stream()
                                .map(EntryDraft::text)
                                .toList());
            }
        }
        return List.copyOf(written);
    }

    private Path added(EntryDraft draft, Map<String, Integer> nextNumbers) throws IOException {
        byte[] content = draft.text().getBytes(StandardCharsets.UTF_8);
        Path whole = folder.resolve(TemporaryFiles.newName());
        try {
            disk.write(whole, content);
            if (nextNumbers.isEmpty()) {
                TemporaryFiles.tidy(folder, whole);
            }
            String first = EntryName.of(draft, 1);
            for (int number = nextNumbers.getOrDefault(first, 1); ; number++) {
                Path file = folder.resolve(EntryName.of(draft, number));
                if (isFree(file) && isPublished(whole, file) || holds(file, content)) {
                    nextNumbers.put(first, number);
                    return file;
                }
            }
        } finally {
            TemporaryFiles.remove(whole);
        }
    }

    private static boolean isFree(Path file) {
        return Files.notExists(file, LinkOption.NOFOLLOW_LINKS);
    }

    private boolean isPublished(Path whole, Path file) throws IOException {
        try {
            disk.publish(whole, file);
            return true;
        } catch (FileAlreadyExistsException anotherWriterWasFirst) {
            return false;
        }
    }

    private static boolean holds(Path file, byte[] content) {
        try {
            return Files.isRegularFile(file)
                    && Files.size(file) == content.length
                    && Arrays.equals(Files.readAllBytes(file), content);
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Puts a corrected entry into the place of an older one, which is kept in the folder {@value #EARLIER}. Its file keeps its
     * name, whatever the entry says.
     *
     * @param file the name of the entry's file, with or without the notebook's folder
     * @throws ProblemsFound when the notebook has no such entry
     * @throws NotWritten when the disk does not take it; the older entry stands then
     */
    public Path correct(String file, EntryDraft draft) {
        Path name = fileNamed(file);
        Path whole = folder.resolve(TemporaryFiles.newName());
        try {
            disk.write(whole, draft.text().getBytes(StandardCharsets.UTF_8));
            disk.replace(whole, name, folder.resolve(EARLIER));
            return name;
        } catch (IOException e) {
            throw new NotWritten(problem(e), List.of(), List.of(draft.text()));
        } finally {
            TemporaryFiles.remove(whole);
        }
    }

    /**
     * The file of an entry.
     *
     * @param file its name, with or without the notebook's folder and the ending
     * @throws ProblemsFound with the nearest names when there is no such entry
     */
    public Path fileNamed(String file) {
        String wanted = withoutFolder(file);
        List<Path> files = files();
        return files.stream()
                .filter(one -> Stream.of(wanted, wanted + ".yaml", wanted + ".yml")
                        .anyMatch(one.getFileName().toString()::equals))
                .findFirst()
                .orElseThrow(() -> new ProblemsFound(List.of(new Problem(
                        Place.wholeFile(folder.toString()),
                        "the notebook has no entry `" + wanted + "`",
                        "the name of one of its files",
                        NearMiss.suggestion(
                                wanted,
                                files.stream()
                                        .map(one -> one.getFileName().toString())
                                        .toList(),
                                List.of())))));
    }

    private static String withoutFolder(String file) {
        return file.replace('\\', '/').replaceAll("^.*/", "");
    }

    private Problem problem(IOException trouble) {
        Place place = Place.wholeFile(folder.toString());
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return new Problem(place, "this is a file", "the folder of a notebook", "name a folder");
        }
        String why = trouble.getMessage() == null ? trouble.getClass().getSimpleName() : trouble.getMessage();
        if (trouble instanceof AccessDeniedException || why.contains("Read-only")) {
            return new Problem(
                    place,
                    "nothing may be written into this folder",
                    "a folder that you may write to",
                    "ask who may write there, or name another folder");
        }
        if (why.contains("No space left") || why.contains("not enough space") || why.contains("quota")) {
            return new Problem(
                    place, "the disk is full", "room for the entry", "make room on the disk, or name another folder");
        }
        return new Problem(
                place,
                "the disk does not take the entry (" + why + ")",
                "a folder on a disk that can be written to",
                "check the folder, or name another");
    }
}
