package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.text.Place;

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

    private static final Pattern BRACED = Pattern.compile("\\{([A-Z])}");

    /** What the cautions that it may give are about. */
    List<String> cautionTopics() {
        return then.stream()
                .filter(said -> said.sentence().concludes().orElse("").contains("Caution("))
                .flatMap(said -> said.slot("topic").stream())
                .distinct()
                .toList();
    }

    String becauseFilled(Map<String, String> names) {
        return BRACED.matcher(because)
                .replaceAll(letter -> Matcher.quoteReplacement(names.getOrDefault(letter.group(1), letter.group())));
    }

    List<String> lettersInBecause() {
        return BRACED.matcher(because).results().map(result -> result.group(1)).toList();
    }
}
