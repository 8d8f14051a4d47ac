package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.text.Place;
import org.wickwise.text.Words;

/**
 * A rule as an instructor writes it.
 *
 * @param layer the subject it belongs to, such as "reading"
 * @param about what the rules of its file are about
 * @param because why, with {@code {E}} where the name for a letter goes
 * @param source what the rule rests on
 */
record Rule(
        String id,
        String layer,
        String about,
        List<Said> when,
        List<Said> then,
        String because,
        String source,
        Place place) {

    private static final Pattern BRACED = Pattern.compile("(?<begins>^|[.!?] )?\\{(?<letter>[A-Z])}");

    /** What the cautions that it may give are about. */
    List<String> cautionTopics() {
        return then.stream()
                .filter(said -> said.sentence().concludes().orElse("").contains("Caution("))
                .flatMap(said -> said.slot("topic").stream())
                .distinct()
                .toList();
    }

    /** The text with names for its letters, each with a capital where it begins a sentence. */
    String becauseFilled(Map<String, String> names) {
        Matcher braced = BRACED.matcher(because);
        StringBuilder filled = new StringBuilder();
        while (braced.find()) {
            String begins = braced.group("begins");
            String name = names.getOrDefault(braced.group("letter"), "{" + braced.group("letter") + "}");
            braced.appendReplacement(
                    filled, Matcher.quoteReplacement(begins == null ? name : begins + Words.capital(name)));
        }
        return braced.appendTail(filled).toString();
    }

    List<String> lettersInBecause() {
        return BRACED.matcher(because).results().map(result -> result.group(2)).toList();
    }
}
