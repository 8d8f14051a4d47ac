package org.wickwise.report;

import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.SetAside;
import org.wickwise.text.Letters;
import org.wickwise.text.Problem;

/** A notebook as plain text: one entry a line, then what could not be read. */
public final class NotebookText {

    private NotebookText() {}

    /** The entries, each with its file. */
    public static String of(String title, List<Entry> entries, Heading heading) {
        return heading.marked(title) + "\n"
                + entries.stream().map(NotebookText::line).collect(Collectors.joining());
    }

    /** Files that are set aside, each with place, reason and way out; nothing where there are none. */
    public static String setAside(List<SetAside> files, Heading heading) {
        if (files.isEmpty()) {
            return "";
        }
        String title = files.size() == 1
                ? "1 file cannot be read and is set aside; it stays where it is"
                : files.size() + " files cannot be read and are set aside; they stay where they are";
        return "\n" + heading.marked(title) + "\n"
                + files.stream()
                        .flatMap(file -> file.problems().stream())
                        .map(Problem::toString)
                        .map(problem -> "  " + problem.replace("\n", "\n  ") + "\n")
                        .collect(Collectors.joining());
    }

    private static String line(Entry entry) {
        int strips = entry.strips().strips().size();
        return Letters.shown("  " + entry.date() + "  "
                        + entry.group().map(group -> "group " + group + ", ").orElse("")
                        + entry.strips().mixture() + ", "
                        + (strips == 1 ? "1 strip" : strips + " strips") + " on "
                        + entry.strips().phase().name()
                        + entry.where().map(where -> ", " + where).orElse("") + "  ["
                        + fileName(entry) + "]")
                + "\n";
    }

    /** The name of an entry's file, as `show` takes it. */
    public static String fileName(Entry entry) {
        return entry.place().file().replaceAll("^.*/", "").replaceAll("\\.ya?ml$", "");
    }
}
