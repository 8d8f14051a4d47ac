package org.wickwise.report;

import java.util.stream.Collectors;
import org.wickwise.lesson.ClassSummary;

/** What the plans of a class come to, as text or Markdown. */
public final class ClassText {

    private ClassText() {}

    public static String of(ClassSummary summary, Heading heading) {
        String parts = summary.parts().stream()
                .map(part -> TextReport.answered(part.title(), part.lines(), heading))
                .collect(Collectors.joining("\n"));
        return heading.marked("Class: " + summary.title()) + "\n\n" + parts
                + "\nA group's plan: class LESSONFILE GROUP; why a line stands there: class LESSONFILE LABEL,"
                + "\nor class LESSONFILE GROUP LABEL for a line of a group's plan\n";
    }

    public static String markdown(ClassSummary summary) {
        return "# Class: " + MarkdownReport.escaped(summary.title()) + "\n\n"
                + summary.parts().stream()
                        .map(part -> "#" + MarkdownReport.of(part.title(), part.lines()))
                        .collect(Collectors.joining("\n"));
    }
}
