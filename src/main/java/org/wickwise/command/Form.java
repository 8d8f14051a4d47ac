package org.wickwise.command;

import java.util.Locale;

/** The forms a report can take. */
enum Form {
    TEXT,
    MARKDOWN,
    JSON;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
