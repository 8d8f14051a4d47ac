package org.wickwise.text;

/**
 * Cells of tables that a spreadsheet program opens. One that begins like a formula gets an apostrophe in front, so that no
 * program reckons with what somebody called a dye.
 */
public final class Cells {

    private static final String LIKE_A_FORMULA = "=+-@\t\r";
    private static final char GUARD = '\'';

    private Cells() {}

    /** The cell as it is written to a table. */
    public static String guarded(String cell) {
        return begins(cell, 0) ? GUARD + cell : cell;
    }

    /** The cell as it was before it was guarded. */
    public static String unguarded(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == GUARD && begins(cell, 1) ? cell.substring(1) : cell;
    }

    private static boolean begins(String cell, int at) {
        return cell.length() > at && LIKE_A_FORMULA.indexOf(cell.charAt(at)) >= 0;
    }
}
