package org.wickwise.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of a file, so that a person hears of all of them in one go. Confined to one reading. */
public final class Problems {

    private static final int MOST = 1_000;

    private final List<Problem> found = new ArrayList<>();

    public void add(Place place, String what, String expected, String wayOut) {
        add(new Problem(place, what, expected, wayOut));
    }

    /** @throws ProblemsFound when there are so many that nobody would read on */
    public void add(Problem problem) {
        found.add(problem);
        if (found.size() >= MOST) {
            throw found();
        }
    }

    /** How many were found so far; tells whether a part of the reading found any. */
    public int size() {
        return found.size();
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** @throws ProblemsFound with every problem, in the order of the lines, if there is any */
    public void throwIfAny() {
        if (!found.isEmpty()) {
            throw found();
        }
    }

    /** Every problem, in the order of the lines, to be thrown. */
    public ProblemsFound found() {
        return new ProblemsFound(found.stream()
                .distinct()
                .sorted(Comparator.comparing(Problem::place))
                .toList());
    }

    /**
     * Reports a word that is none of the known ones; an empty word was reported as missing.
     *
     * @param isNo "no family of solvents"
     */
    public void expectOneOf(Place place, String written, String isNo, Collection<String> known) {
        if (!written.isEmpty() && !known.contains(written)) {
            add(
                    place,
                    "`" + written + "` is " + isNo,
                    "one of " + String.join(", ", known.stream().sorted().toList()),
                    NearMiss.suggestion(written, known, List.of()));
        }
    }
}
