package org.wickwise.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.notebook.NotWritten;

/** Sees to it that what a notebook did not take is not lost. */
final class Unwritten {

    private Unwritten() {}

    /** Keeps each entry in a file of its own, and says where; what no file takes is printed. */
    static String kept(NotWritten unwritten) {
        return kept(unwritten, KeptText.usualFolders());
    }

    static String kept(NotWritten unwritten, List<Path> folders) {
        List<String> lines = new ArrayList<>();
        int written = unwritten.written().size();
        if (written > 0) {
            lines.add("    In the notebook: " + written + (written == 1 ? " entry." : " entries."));
        }
        for (String text : unwritten.texts()) {
            Optional<Path> file = KeptText.in(folders, text);
            lines.add(file.map(path -> "    Not in the notebook, and kept in " + path + ".")
                    .orElse("    Not in the notebook, and no other folder takes it. Copy it from here:\n\n" + text));
        }
        lines.add("    Nothing that was written is lost. When the way is free, record it again.");
        return String.join("\n", lines);
    }
}
