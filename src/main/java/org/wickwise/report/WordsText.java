package org.wickwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.text.WordUtils;
import org.wickwise.rulebook.WordsPage;
import org.wickwise.text.Words;

/** The sentences that rules are made of, one a line, and below them what may stand in their angle brackets. */
public final class WordsText {

    private static final int WIDTH = 92;
    private static final String INDENT = "    ";

    private WordsText() {}

    /**
     * @param pages in the order of the vocabulary
     * @param wanted words that each sentence has to hold, itself or in what it takes; none for all sentences
     */
    public static String of(List<WordsPage> pages, List<String> wanted, Heading heading) {
        List<WordsPage> shown =
                pages.stream().filter(page -> holdsAll(page, wanted)).toList();
        if (shown.isEmpty()) {
            return "No sentence has to do with `" + String.join(" ", wanted)
                    + "`. Without a word, `wickwise rules words` prints them all.\n";
        }
        StringBuilder text =
                new StringBuilder("Capital letters stand for things of the case: S for a strip, D and F for"
                        + " dyes, E, F, G and P for\neluents. What stands in < > is chosen from the lists at the end. Some"
                        + " sentences are for `when` only,\nsome for `then` only, some for both.\n");
        Map<String, String> lists = new LinkedHashMap<>();
        String file = "";
        for (WordsPage page : shown) {
            if (!page.place().file().equals(file)) {
                file = page.place().file();
                text.append("\n").append(heading.marked(subjectOf(file))).append("\n");
            }
            text.append(wrapped(String.format("  %-10s  %s", use(page), page.sentence()), " ".repeat(16)));
            page.slots().forEach(slot -> lists.putIfAbsent(slot.name(), slot.takes()));
        }
        if (!lists.isEmpty()) {
            text.append("\n").append(heading.marked("What stands in < >")).append("\n");
            lists.forEach((name, takes) -> text.append(wrapped("  <" + name + ">: " + takes, INDENT)));
        }
        return text.toString();
    }

    private static String use(WordsPage page) {
        return page.isCondition() ? page.isConclusion() ? "when, then" : "when" : "then";
    }

    private static boolean holdsAll(WordsPage page, List<String> wanted) {
        StringBuilder all = new StringBuilder(page.sentence()).append(' ').append(page.example());
        page.slots().forEach(slot -> all.append(' ').append(slot.takes()));
        String text = all.toString().toLowerCase(Locale.ROOT);
        return wanted.stream().allMatch(word -> text.contains(word.toLowerCase(Locale.ROOT)));
    }

    /** "rules/words/1-strips.yaml" is about strips. */
    private static String subjectOf(String file) {
        return Words.capital(
                file.replaceAll(".*/\\d*-?", "").replace(".yaml", "").replace('-', ' '));
    }

    private static String wrapped(String line, String hanging) {
        return WordUtils.wrap(line, WIDTH, "\n" + hanging, false) + "\n";
    }
}
