package org.wickwise.rulebook;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * The folder where compiled rules are kept between runs. A file is named after the fingerprint of its rules and the
 * checksum of its own content, and comes into the folder whole or not at all; so several processes may use the folder at
 * once, and a truncated or altered file is known before it is used. Whatever goes wrong with the folder only costs time.
 */
final class KeptRules {

    /** An instructor who edits rules leaves a file of about a megabyte behind for each content. */
    static final int MOST_FILES = 20;

    private static final String ALL = "rules-*.jar";

    private final Path folder;

    /** @param folder made when something is to be kept and it is not there */
    KeptRules(Path folder) {
        this.folder = folder;
    }

    /** The undamaged content kept under a fingerprint. */
    Optional<byte[]> find(String fingerprint) {
        for (Path file : files("rules-" + fingerprint + "-*.jar")) {
            try {
                byte[] content = Files.readAllBytes(file);
                if (file.endsWith(name(fingerprint, content))) {
                    return Optional.of(content);
                }
            } catch (IOException e) {
                // Taken away or locked by another process since it was listed: as good as never kept.
                continue;
            }
        }
        return Optional.empty();
    }

    /** Keeps a content in the place of others of the same fingerprint, if the folder allows. */
    void keep(String fingerprint, byte[] content) {
        Path passing = null;
        try {
            Files.createDirectories(folder);
            passing = Files.createTempFile(folder, "rules-", ".part");
            Files.write(passing, content);
            Path kept = folder.resolve(name(fingerprint, content));
            Files.move(passing, kept, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            files("rules-" + fingerprint + "-*.jar").stream()
                    .filter(file -> !file.equals(kept))
                    .forEach(KeptRules::remove);
            files(ALL).stream()
                    .sorted(Comparator.comparing(KeptRules::written).reversed())
                    .skip(MOST_FILES)
                    .forEach(KeptRules::remove);
        } catch (IOException e) {
            if (passing != null) {
                remove(passing);
            }
        }
    }

    private List<Path> files(String pattern) {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, pattern)) {
            files.forEach(found::add);
        } catch (IOException | DirectoryIteratorException e) {
            return List.of();
        }
        return found;
    }

    private static FileTime written(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // Somebody else's file, or open elsewhere: it only takes room.
            return;
        }
    }

    private static String name(String fingerprint, byte[] content) {
        CRC32 checksum = new CRC32();
        checksum.update(content);
        return "rules-" + fingerprint + "-" + HexFormat.of().toHexDigits((int) checksum.getValue()) + ".jar";
    }
}
