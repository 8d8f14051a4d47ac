package org.wickwise.strip;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What may go wrong with a whole strip, in the words a person writes down. */
public enum Mishap {
    ORIGIN_UNDER_SOLVENT("origin under the solvent"),
    FRONT_RAN_OFF("front ran off the end"),
    FRONT_NOT_MARKED("front not marked before it dried"),
    JAR_LEFT_OPEN("jar left open"),
    STRIP_TOUCHED_WALL("strip touched the wall"),
    OVERLOADED("spots overloaded");

    private final String word;

    Mishap(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<Mishap> named(String word) {
        return Arrays.stream(values()).filter(known -> known.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Mishap::word).toList();
    }
}
