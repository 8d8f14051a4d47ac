package org.wickwise.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;

/**
 * Files that hold rules and are not read, since they have another ending or stand in a folder inside the folder. Whoever wrote
 * them believes that they count.
 */
final class Overlooked {

    /** Editors add one of these, or people; copies that an editor keeps end otherwise and are left alone. */
    private static final Pattern MEANT_TO_BE_READ = Pattern.compile("(?i)([^.~]+)(?:\\.yaml|\\.yml)?(?:\\.txt)?");

    private static final String ENDING = ".yaml";
    private static final int MOST_FILES = 500;
    private static final long LONGEST_BYTES = 200_000;
    private static final Pattern KEY = Pattern.compile("(?m)^(rules|limits|switched off|choose by):");

    private Overlooked() {}

    /** Nothing of a folder that is not there; links are not followed. */
    static List<Problem> in(Path folder, String shownAs) {
        List<Problem> found = new ArrayList<>();
        for (Path file : filesOf(folder)) {
            String name = file.getFileName().toString();
            Matcher meant = MEANT_TO_BE_READ.matcher(name);
            if (!name.endsWith(ENDING) && meant.matches()) {
                keyOf(file)
                        .ifPresent(key -> found.add(problem(
                                shownAs + "/" + name,
                                "the file is not read",
                                "a file name that ends in `" + ENDING + "`",
                                "call it `" + OwnRulesReader.fileFor(key).orElse(meant.group(1) + ENDING)
                                        + "`, or move it out of the folder")));
            }
        }
        for (Path inner : foldersOf(folder)) {
            for (Path file : filesOf(inner)) {
                boolean isMeant =
                        MEANT_TO_BE_READ.matcher(file.getFileName().toString()).matches();
                if (isMeant && keyOf(file).isPresent()) {
                    found.add(problem(
                            shownAs + "/" + inner.getFileName() + "/" + file.getFileName(),
                            "rules in a folder inside the folder are not read",
                            "rule files in " + shownAs + " itself",
                            "move the file there, or out of the folder"));
                }
            }
        }
        return found;
    }

    private static Problem problem(String file, String found, String expected, String wayOut) {
        return new Problem(Place.wholeFile(file), found, expected, wayOut, RuleTrouble.NOT_READ.code(), "");
    }

    private static List<Path> filesOf(Path folder) {
        return listed(folder).stream()
                .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                .toList();
    }

    private static List<Path> foldersOf(Path folder) {
        return listed(folder).stream()
                .filter(inner -> Files.isDirectory(inner, LinkOption.NOFOLLOW_LINKS))
                .filter(inner -> !inner.getFileName().toString().startsWith("."))
                .toList();
    }

    private static List<Path> listed(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().limit(MOST_FILES).toList();
        } catch (IOException | UncheckedIOException unreadable) {
            return List.of();
        }
    }

    /** The first key by which a file can be told to hold rules. */
    private static Optional<String> keyOf(Path file) {
        try {
            return Files.size(file) > LONGEST_BYTES
                    ? Optional.empty()
                    : KEY.matcher(Files.readString(file))
                            .results()
                            .map(key -> key.group(1))
                            .findFirst();
        } catch (IOException notText) {
            return Optional.empty();
        }
    }
}
