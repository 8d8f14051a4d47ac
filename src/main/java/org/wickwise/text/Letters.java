package org.wickwise.text;

import java.util.OptionalInt;
import java.util.Set;

/**
 * Tells letters that show on a screen from those that do not, or that move what stands beside them: control letters,
 * marks that turn the direction of writing, blanks without width. Letters of every language show.
 */
public final class Letters {

    private static final char IN_PLACE_OF_ONE = '\uFFFD';
    private static final int LAST_LATIN = 0x2FF;
    private static final Set<Integer> JOINERS = Set.of(0x200C, 0x200D);
    /** Fillers, blanks and selectors that Unicode counts among letters, signs and marks. */
    private static final Set<Integer> EMPTY =
            Set.of(0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x180B, 0x180C, 0x180D, 0x180F, 0x2800, 0x3164, 0xFFA0);

    private Letters() {}

    /** The code point of the first letter that does not show; empty when all do. */
    public static OptionalInt hidden(String text) {
        int before = ' ';
        for (int i = 0; i < text.length(); ) {
            int letter = text.codePointAt(i);
            if (isHidden(letter) && !joins(before, letter)) {
                return OptionalInt.of(letter);
            }
            before = letter;
            i += Character.charCount(letter);
        }
        return OptionalInt.empty();
    }

    /** "RIGHT-TO-LEFT OVERRIDE": how Unicode calls a letter. */
    public static String nameOf(int letter) {
        String name = Character.getName(letter);
        return name == null ? "without a name" : name;
    }

    /** The text with a sign in the place of each letter that does not show, as long as before. */
    public static String shown(String text) {
        if (hidden(text).isEmpty()) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            if (isHidden(letter)) {
                shown.append(String.valueOf(IN_PLACE_OF_ONE).repeat(Character.charCount(letter)));
            } else {
                shown.appendCodePoint(letter);
            }
        });
        return shown.toString();
    }

    /** Some scripts need joiners between their letters. */
    private static boolean joins(int before, int letter) {
        return JOINERS.contains(letter)
                && before > LAST_LATIN
                && Character.isUnicodeIdentifierPart(before)
                && !isHidden(before);
    }

    private static boolean isHidden(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> true;
            default -> EMPTY.contains(letter) || isSelector(letter);
        };
    }

    private static boolean isSelector(int letter) {
        return letter >= 0xFE00 && letter <= 0xFE0F || letter >= 0xE0100 && letter <= 0xE01EF;
    }
}
