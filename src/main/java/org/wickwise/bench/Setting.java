package org.wickwise.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where the column is run, which decides what may stand on the bench. */
public enum Setting {
    SECONDARY_SCHOOL,
    COLLEGE,
    RESEARCH;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Setting> named(String word) {
        return Arrays.stream(values())
                .filter(known -> known.word().equals(word))
                .findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Setting::word).toList();
    }
}
