package org.wickwise.notebook;

import java.util.List;
import org.wickwise.text.Problem;

/**
 * A file of a notebook that cannot be read. It stays where it is.
 *
 * @param file its name in the folder
 * @param problems where and why, at least one
 */
public record SetAside(String file, List<Problem> problems) {

    public SetAside {
        problems = List.copyOf(problems);
    }
}
