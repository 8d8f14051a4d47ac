package org.wickwise.text;

import java.util.List;
import java.util.stream.Collectors;

/** Input that cannot be used; the message lists every problem with its place and the way out. */
public final class ProblemsFound extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public ProblemsFound(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
