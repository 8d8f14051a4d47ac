package org.wickwise.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.wickwise.text.Letters;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * A folder from an instructor, or from a stranger: what of it may be read at all. Nothing outside of it is read, nothing in it
 * but YAML files, and no letters that do not show.
 *
 * @param shownAs how messages call the folder
 * @param names of its files, sorted
 * @param overlooked what holds rules in it and is not read
 * @param content of a file by its name
 */
record OwnFolder(String shownAs, List<String> names, List<Problem> overlooked, Function<String, Mapping> content) {

    private static final int MOST_FILES = 200;
    private static final long MOST_BYTES = 2_000_000;
    private static final int LONGEST_TEXT = 2_000;
    private static final int LONGEST_FILE_NAME = 100;
    private static final int MOST_HIDDEN = 20;
    private static final Pattern FILE_NAME = Pattern.compile("[\\p{L}\\p{M}\\p{N} ._()-]+");

    /** @throws ProblemsFound when the folder cannot be read, or holds what is no file of its own */
    static OwnFolder at(Path folder) {
        String shownAs = folder.toString().replace('\\', '/');
        return new OwnFolder(
                shownAs,
                names(folder, shownAs),
                Overlooked.in(folder, shownAs),
                name -> YamlFile.read(folder.resolve(name), shownAs + "/" + name));
    }

    /** @param texts of a folder that stands nowhere: the content of its files by their names */
    static OwnFolder of(Map<String, String> texts) {
        String shownAs = "own";
        return new OwnFolder(
                shownAs,
                texts.keySet().stream().sorted().toList(),
                List.of(),
                name -> YamlFile.parse(shownAs + "/" + name, texts.get(name)));
    }

    boolean holds(String name) {
        return names.contains(name);
    }

    /** @throws ProblemsFound when the file cannot be read, or holds letters that do not show */
    Mapping file(String name) {
        Mapping file = content.apply(name);
        Problems hidden = new Problems();
        allShow(file, hidden);
        hidden.throwIfAny();
        return file;
    }

    /** Whatever stands in the folder may be printed: on a terminal, hidden letters could command or mislead. */
    private static void allShow(Node node, Problems hidden) {
        if (hidden.size() >= MOST_HIDDEN) {
            return;
        }
        if (node instanceof Mapping mapping) {
            for (Entry entry : mapping.entries()) {
                allShow(entry.key(), hidden);
                allShow(entry.value(), hidden);
            }
        } else if (node instanceof Listing listing) {
            listing.items().forEach(item -> allShow(item, hidden));
        } else if (node instanceof Scalar scalar) {
            shows(scalar, hidden);
        }
    }

    private static void shows(Scalar scalar, Problems hidden) {
        if (scalar.text().length() > LONGEST_TEXT) {
            hidden.add(new Problem(
                    scalar.place(),
                    "a text of " + scalar.text().length() + " characters",
                    "at most " + LONGEST_TEXT,
                    "shorten it",
                    RuleTrouble.TOO_LONG.code(),
                    ""));
            return;
        }
        Letters.hidden(scalar.text().stripTrailing())
                .ifPresent(letter -> hidden.add(new Problem(
                        scalar.place(),
                        "a letter that does not show stands in " + scalar.kind() + ": " + Letters.nameOf(letter),
                        "letters that show, on one line",
                        "write the text again on the keyboard, without copying; join lines with `>`",
                        RuleTrouble.FOREIGN_LETTER.code(),
                        "")));
    }

    /** The YAML files of the folder, none of them a link to somewhere else. */
    private static List<String> names(Path folder, String shownAs) {
        if (!Files.isDirectory(folder)) {
            throw problem(
                    Place.wholeFile(shownAs),
                    Files.isRegularFile(folder) ? "this is a file" : "there is no such folder",
                    "a folder with rules of your own",
                    Files.isRegularFile(folder)
                            ? "name the folder in which it stands"
                            : "check the spelling, or make it and put a rule file into it",
                    RuleTrouble.FORM);
        }
        List<String> names = YamlFile.namesIn(folder, "a folder with rules of your own", "check who may read it");
        if (names.size() > MOST_FILES) {
            throw problem(
                    Place.wholeFile(shownAs),
                    names.size() + " files",
                    "at most " + MOST_FILES,
                    "keep the rules of one room in one folder",
                    RuleTrouble.TOO_MANY);
        }
        long bytes = 0;
        for (String name : names) {
            Place place = Place.wholeFile(shownAs + "/" + name);
            if (name.length() > LONGEST_FILE_NAME || !FILE_NAME.matcher(name).matches()) {
                throw problem(
                        place,
                        "the file has a name that could be taken for something else",
                        "letters, digits, blanks and hyphens, such as `our-room.yaml`",
                        "rename the file",
                        RuleTrouble.FORM);
            }
            if (leadsOutOfTheFolder(folder, folder.resolve(name))) {
                throw problem(
                        place,
                        "this is a link to a file somewhere else",
                        "a file of this folder",
                        "copy the file itself into the folder",
                        RuleTrouble.FORM);
            }
            bytes += folder.resolve(name).toFile().length();
        }
        if (bytes > MOST_BYTES) {
            throw problem(
                    Place.wholeFile(shownAs),
                    bytes + " bytes of rules",
                    "at most " + MOST_BYTES,
                    "keep the rules of one room in one folder",
                    RuleTrouble.TOO_MANY);
        }
        return names;
    }

    private static boolean leadsOutOfTheFolder(Path folder, Path file) {
        try {
            return Files.isSymbolicLink(file) || !file.toRealPath().getParent().equals(folder.toRealPath());
        } catch (IOException gone) {
            return true;
        }
    }

    private static ProblemsFound problem(
            Place place, String found, String expected, String wayOut, RuleTrouble trouble) {
        return new ProblemsFound(List.of(new Problem(place, found, expected, wayOut, trouble.code(), "")));
    }
}
