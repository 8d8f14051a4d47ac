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

    public Problem(Place place, String found, String expected, String wayOut) {
        this(place, found, expected, wayOut, "", "");
    }

    @Override
    public String toString() {
        return place + ": " + found + "; expected " + expected + "\n    " + wayOut;
    }
}
