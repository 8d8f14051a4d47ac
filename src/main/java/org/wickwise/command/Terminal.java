package org.wickwise.command;

import org.wickwise.report.Heading;
import picocli.CommandLine.Help.Ansi;

/** What may be shown on the terminal at hand: bold headings only where it is one and NO_COLOR is not set. */
final class Terminal {

    private Terminal() {}

    static Heading heading() {
        return Ansi.AUTO.enabled() ? title -> "\u001B[1m" + title + "\u001B[0m" : Heading.plain();
    }
}
