package org.wickwise.text;

/**
 * Where something was written.
 *
 * @param file the path as the user gave it
 * @param line counted from 1, the row in a table; 0 when the whole file is meant
 * @param column how the column of a table is headed; empty where the whole line is meant
 */
public record Place(String file, int line, String column) implements Comparable<Place> {

    public Place(String file, int line) {
        this(file, line, "");
    }

    public static Place wholeFile(String file) {
        return new Place(file, 0);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        int byLine = byFile != 0 ? byFile : Integer.compare(line, other.line);
        return byLine != 0 ? byLine : column.compareTo(other.column);
    }

    @Override
    public String toString() {
        String shown = Letters.shown(file);
        String located = line == 0 ? shown : shown + ":" + line;
        return column.isEmpty() ? located : located + ", column `" + Letters.shown(column) + "`";
    }
}
