package org.wickwise.column;

/** What the formulas of this room take. */
final class Expected {

    private Expected() {}

    static double aboveZero(String what, double found) {
        if (!(found > 0 && found < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + found + "; expected a number above 0");
        }
        return found;
    }

    static double notBelowZero(String what, double found) {
        if (!(found >= 0 && found < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + found + "; expected 0 or more");
        }
        return found;
    }

    static double above(String what, double found, double limit) {
        if (!(found > limit && found < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + found + "; expected more than " + limit);
        }
        return found;
    }
}
