package org.wickwise.substance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The charge a dye carries in solution, which decides what holds it. */
public enum DyeClass {
    NEUTRAL,
    CATIONIC,
    ANIONIC,
    AMPHOTERIC,
    UNSTATED;

    public String word() {
        return this == UNSTATED ? "of unstated class" : name().toLowerCase(java.util.Locale.ROOT);
    }

    public static Optional<DyeClass> named(String word) {
        return Arrays.stream(values())
                .filter(known -> known != UNSTATED && known.word().equals(word))
                .findFirst();
    }

    /** The classes a person may write. */
    public static List<String> words() {
        return Arrays.stream(values())
                .filter(known -> known != UNSTATED)
                .map(DyeClass::word)
                .toList();
    }
}
