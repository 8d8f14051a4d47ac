package org.wickwise.report;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wickwise.text.Letters;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;

/** A finding with the line it is about and carets under the words that are meant. */
public final class FindingText {

    private static final String FORM = "form";

    private static final String TAB = "    ";

    private FindingText() {}

    /** @param lineAt the text of a line, without its end; empty where it cannot be read */
    public static String of(List<Problem> findings, Function<Place, String> lineAt) {
        return findings.stream().map(finding -> of(finding, lineAt)).collect(Collectors.joining("\n"));
    }

    private static String of(Problem finding, Function<Place, String> lineAt) {
        String code = finding.code().isEmpty() ? FORM : finding.code();
        return finding.place() + ": [" + code + "] " + finding.found() + "; expected " + finding.expected() + "\n"
                + marked(Letters.shown(lineAt.apply(finding.place()).replace("\t", TAB)), finding.words()) + "    "
                + finding.wayOut()
                + "\n";
    }

    private static String marked(String line, String words) {
        if (line.isBlank()) {
            return "";
        }
        int start = words.isEmpty() ? -1 : line.indexOf(words);
        String shown = line.strip();
        int indent = line.indexOf(shown);
        String carets =
                start < 0 ? "^".repeat(shown.length()) : " ".repeat(start - indent) + "^".repeat(words.length());
        return "      " + shown + "\n      " + carets + "\n";
    }
}
