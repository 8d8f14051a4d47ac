package org.wickwise.report;

import java.util.List;
import org.apache.commons.text.WordUtils;
import org.wickwise.rulebook.Lessons.Idea;
import org.wickwise.why.Lesson;

/** A lesson as plain paragraphs. Made for reading, not for parsing. */
public final class LessonText {

    private static final int WIDTH = 96;

    private LessonText() {}

    public static String of(Lesson lesson, Heading heading) {
        StringBuilder text = new StringBuilder(wrapped(lesson.statement()));
        paragraph(text, "Because: ", lesson.because());
        paragraph(text, "What was seen: ", lesson.readings());
        for (Idea idea : lesson.ideas()) {
            text.append("\n").append(heading.marked(idea.name())).append("\n").append(wrapped(idea.text()));
        }
        return text.toString();
    }

    private static void paragraph(StringBuilder text, String beginning, List<String> sentences) {
        if (!sentences.isEmpty()) {
            text.append("\n").append(wrapped(beginning + String.join(" ", sentences)));
        }
    }

    private static String wrapped(String paragraph) {
        return WordUtils.wrap(paragraph, WIDTH, "\n", false) + "\n";
    }
}
