package org.wickwise.lesson;

import java.util.List;
import org.wickwise.reason.Reason;

/**
 * Something a group does in a lesson.
 *
 * @param label short, as lines are called
 * @param words "mark and spot 4 strips"
 * @param minutes 0 or more
 * @param after the labels of what has to be finished before
 */
record Task(String label, Unit unit, String words, double minutes, List<String> after, Reason reason) {

    /** What is done on one day or not begun: strips wait dry, a packed bed waits wet, a running column waits for nobody. */
    enum Unit {
        STRIPS("the strips"),
        PACKING("packing"),
        COLUMN("the column");

        private final String words;

        Unit(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    Task {
        after = List.copyOf(after);
    }
}
