package org.wickwise.notebook;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A process of its own that adds and corrects entries until it has done so many, or is killed. It prints the mark of each
 * entry once the notebook has taken it. Arguments: the folder, the name of the writer, how many.
 */
final class RecordingInALoop {

    private static final int GROUPS = 3;
    private static final int CORRECTED_EVERY = 4;

    private RecordingInALoop() {}

    public static void main(String[] arguments) {
        Notebook notebook = Notebook.in(Path.of(arguments[0]));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.println("ready");
        int most = Integer.parseInt(arguments[2]);
        Path last = Path.of("");
        for (int i = 1; i <= most; i++) {
            String mark = arguments[1] + "-" + i;
            EntryDraft draft = Drafts.marked(mark, "cancelling ink", Optional.of(String.valueOf(i % GROUPS)));
            if (i % CORRECTED_EVERY == 0) {
                notebook.correct(last.toString(), draft);
            } else {
                last = notebook.add(List.of(draft)).get(0);
            }
            out.println(mark);
        }
    }
}
