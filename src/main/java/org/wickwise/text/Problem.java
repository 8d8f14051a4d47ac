package org.wickwise.text;

/**
 * One thing that is wrong with what a person wrote, worded for that person.
 *
 * @param found what stands there
 * @param expected what was expected instead
 * @param wayOut what to do about it
 */
public record Problem(Place place, String found, String expected, String wayOut) {

    @Override
    public String toString() {
        return place + ": " + found + "; expected " + expected + "\n    " + wayOut;
    }
}
