package org.wickwise.strip;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What lies between two spots by eye, where nobody measured. */
public enum GapLook {
    CLEAR,
    TOUCHING;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static Optional<GapLook> named(String word) {
        return Arrays.stream(values())
                .filter(known -> known.word().equals(word))
                .findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(GapLook::word).toList();
    }
}
