package org.wickwise.notebook;

import java.nio.file.Path;
import java.util.List;
import org.wickwise.text.Problem;

/** The disk took not all that was to be written. What it did not take is here, so that it can be kept elsewhere. */
public final class NotWritten extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;
    private final transient List<Path> written;
    private final transient List<String> texts;

    NotWritten(Problem problem, List<Path> written, List<String> texts) {
        super(problem.toString());
        this.problem = problem;
        this.written = List.copyOf(written);
        this.texts = List.copyOf(texts);
    }

    /** Where, why and the way out. */
    public Problem problem() {
        return problem;
    }

    /** The files that hold the first of the entries; these are whole. */
    public List<Path> written() {
        return written;
    }

    /** The texts of the entries that are in no file, in the order they were to be written. */
    public List<String> texts() {
        return texts;
    }
}
