package org.wickwise.strip;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a dye does in an eluent on a strip, slowest first. */
public enum Behaviour {
    STAYS("stays"),
    CREEPS("creeps"),
    TRAVELS("travels"),
    RUNS_AHEAD("runs ahead");

    private final String word;

    Behaviour(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether a dye that does this comes off a column in reasonable time. */
    public boolean leaves() {
        return compareTo(TRAVELS) >= 0;
    }

    public static Optional<Behaviour> named(String word) {
        return Arrays.stream(values()).filter(known -> known.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Behaviour::word).toList();
    }
}
