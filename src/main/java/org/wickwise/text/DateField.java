package org.wickwise.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** A day, written as year-month-day. */
public final class DateField {

    private DateField() {}

    /** The day of a field; empty where it is not there, or is no date, which is reported. */
    public static Optional<LocalDate> in(Fields fields, String key, Problems problems) {
        Optional<String> text = fields.text(key);
        try {
            return text.map(LocalDate::parse);
        } catch (DateTimeException e) {
            problems.add(
                    fields.placeOf(key),
                    "`" + text.orElse("") + "` is no date",
                    "year-month-day, such as 2026-03-01",
                    "write it like that");
            return Optional.empty();
        }
    }
}
