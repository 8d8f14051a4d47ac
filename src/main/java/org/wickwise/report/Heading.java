package org.wickwise.report;

/** How a report marks a heading: plainly, or bold on a terminal. */
@FunctionalInterface
public interface Heading {

    String marked(String title);

    /** Titles as they are. */
    static Heading plain() {
        return title -> title;
    }
}
