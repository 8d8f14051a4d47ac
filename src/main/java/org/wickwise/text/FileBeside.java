package org.wickwise.text;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.wickwise.text.Node.Scalar;

/** A file that another one names, as seen from it. */
public final class FileBeside {

    private FileBeside() {}

    /**
     * The path of the named file, which need not be there; empty where no file of this system can be called so, which is
     * reported.
     *
     * @param file that names it
     */
    public static Optional<Path> of(Path file, Scalar name, Problems problems) {
        try {
            return Optional.of(file.resolveSibling(name.text()));
        } catch (InvalidPathException e) {
            problems.add(
                    name.place(),
                    "`" + Letters.shown(name.text()) + "` is no name of a file",
                    "the name of a file, as seen from the file that names it",
                    "correct its name");
            return Optional.empty();
        }
    }
}
