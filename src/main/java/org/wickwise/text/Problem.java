package org.wickwise.text;

/**
 * One thing that is wrong with what a person wrote, worded for that person.
 *
 * @param found what stands there
 * @param expected what was expected instead
 * @param wayOut what to do about it
 * @param code names this kind of problem in the documentation; empty where kinds are not told apart
 * @param words the words of the line that are meant; empty where the whole line is
 */
public record Problem(Place place, String found, String expected, String wayOut, String code, String words) {

    private static final int LONGEST = 4_000;

    /** Whatever was written is shown without letters that a terminal would obey, and not at any length. */
    public Problem {
        found = shown(found);
        expected = shown(expected);
        wayOut = shown(wayOut);
        words = Letters.shown(words);
    }

    public Problem(Place place, String found, String expected, String wayOut) {
        this(place, found, expected, wayOut, "", "");
    }

    private static String shown(String text) {
        return Letters.shown(text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text);
    }

    @Override
    public String toString() {
        return place + ": " + found + "; expected " + expected + "\n    " + wayOut;
    }
}
