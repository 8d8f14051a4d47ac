package org.wickwise.lesson;

import org.wickwise.text.Numbers;

/** Minutes as people read them off a clock. */
final class Minutes {

    private static final double HALVES_BELOW = 10;

    private Minutes() {}

    /** "4.5", "13", "140": to half a minute below ten, whole above. */
    static String number(double minutes) {
        return minutes < HALVES_BELOW ? Numbers.plain(Math.round(2 * minutes) / 2.0, 1) : Numbers.plain(minutes, 0);
    }

    /** "13 minutes", "1 minute". */
    static String shown(double minutes) {
        String number = number(minutes);
        return number + (number.equals("1") ? " minute" : " minutes");
    }
}
