package org.wickwise.command;

import java.util.Locale;
import org.wickwise.plan.Plan;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.TextReport;

/** The forms a report can take. */
enum Form {
    TEXT,
    MARKDOWN,
    JSON;

    /** A plan in this form. */
    String of(Plan plan) {
        return of(plan, "why CASE LABEL");
    }

    /** @param question how a person asks for the reason of a line */
    String of(Plan plan, String question) {
        return switch (this) {
            case TEXT -> TextReport.of(plan, Terminal.heading(), question);
            case MARKDOWN -> MarkdownReport.of(plan);
            case JSON -> JsonReport.of(plan);
        };
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
