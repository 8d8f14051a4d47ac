package org.wickwise.text;

/**
 * Where something was written.
 *
 * @param file the path as the user gave it
 * @param line counted from 1; 0 when the whole file is meant
 */
public record Place(String file, int line) implements Comparable<Place> {

    public static Place wholeFile(String file) {
        return new Place(file, 0);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        return byFile != 0 ? byFile : Integer.compare(line, other.line);
    }

    @Override
    public String toString() {
        String shown = Letters.shown(file);
        return line == 0 ? shown : shown + ":" + line;
    }
}
