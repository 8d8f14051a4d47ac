package org.wickwise.text;

import com.fasterxml.jackson.core.JacksonException;
import java.util.Locale;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says in plain words where and why a text is not YAML. */
final class YamlTrouble {

    private static final String EXPECTED =
            "`key: value` lines, lists with `- `, the same indentation for things of one kind";

    private YamlTrouble() {}

    static Problem in(String file, String content, JacksonException trouble) {
        Optional<ReaderException> unreadable = cause(trouble, ReaderException.class);
        if (unreadable.isPresent()) {
            long line = content.codePoints()
                            .limit(unreadable.get().getPosition())
                            .filter(point -> point == '\n')
                            .count()
                    + 1;
            return new Problem(
                    new Place(file, (int) line),
                    "a character that cannot be shown stands here",
                    "plain text",
                    "delete it; it often comes in with copied text");
        }
        return cause(trouble, MarkedYAMLException.class)
                .map(marked -> marked(file, marked))
                .orElseGet(() -> new Problem(
                        new Place(file, lineOf(trouble)),
                        "this is not YAML that can be read",
                        EXPECTED,
                        "look at this line and the one before it"));
    }

    private static Problem marked(String file, MarkedYAMLException marked) {
        String context = text(marked.getContext());
        boolean opened = context.startsWith("while scanning") || context.startsWith("while parsing a flow");
        Mark begun = marked.getContextMark();
        Mark noticed = marked.getProblemMark();
        Mark where = opened && begun != null ? begun : noticed;
        int line = where == null ? 0 : where.getLine() + 1;
        String elsewhere = begun != null && noticed != null && begun.getLine() != noticed.getLine()
                ? " (it began in line " + (begun.getLine() + 1) + " and was noticed in line " + (noticed.getLine() + 1)
                        + ")"
                : "";
        return new Problem(
                new Place(file, line), found(marked, context) + elsewhere, EXPECTED, wayOut(marked, context));
    }

    private static String found(MarkedYAMLException marked, String context) {
        String problem = text(marked.getProblem());
        if (problem.contains("'\\t'") || problem.contains("\\t(tab)")) {
            return "a tab stands here";
        }
        if (context.contains("quoted scalar")) {
            return "a quote that opens here is never closed";
        }
        if (context.contains("simple key") || problem.contains("could not find expected ':'")) {
            return "this line has no colon";
        }
        if (context.contains("flow mapping") || context.contains("flow sequence")) {
            return "a bracket that opens here is not closed, or a comma is missing in it";
        }
        if (context.contains("block mapping") || context.contains("block collection")) {
            return "this line does not fit to the lines above it";
        }
        if (problem.contains("mapping values are not allowed")) {
            return "a second colon on a line that has one already";
        }
        return "this is not YAML that can be read";
    }

    private static String wayOut(MarkedYAMLException marked, String context) {
        String problem = text(marked.getProblem());
        if (problem.contains("'\\t'") || problem.contains("\\t(tab)")) {
            return "indent with blanks, never with tabs";
        }
        if (context.contains("quoted scalar")) {
            return "close the quote on the same line";
        }
        if (context.contains("flow")) {
            return "count the brackets { } and [ ], and put a comma between items";
        }
        if (problem.contains("mapping values are not allowed")) {
            return "put the text behind the first colon into quotes, or begin a new line for the second key";
        }
        return "give the line its colon and a blank behind it, and indent things of one kind alike";
    }

    private static String text(String words) {
        return words == null ? "" : words.toLowerCase(Locale.ROOT);
    }

    private static int lineOf(JacksonException trouble) {
        return trouble.getLocation() == null
                ? 0
                : Math.max(0, trouble.getLocation().getLineNr());
    }

    private static <T extends Throwable> Optional<T> cause(Throwable trouble, Class<T> kind) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                return Optional.of(kind.cast(cause));
            }
        }
        return Optional.empty();
    }
}
