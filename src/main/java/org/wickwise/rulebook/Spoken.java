package org.wickwise.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A conclusion that a sentence asks for or draws, without the things it is about.
 *
 * @param kind of conclusion
 * @param words what tells it from others of its kind, such as STAYS
 * @param denied whether the sentence asks that it is not so, or counts all of its kind
 */
record Spoken(String kind, Set<String> words, boolean denied) {

    private static final Set<String> KINDS = Arrays.stream(Conclusion.class.getPermittedSubclasses())
            .map(Class::getSimpleName)
            .collect(Collectors.toUnmodifiableSet());
    private static final Pattern MENTION = Pattern.compile("(not |not \\(|: |new )?\\b([A-Z][A-Za-z]+)\\(");
    private static final Pattern WORD =
            Pattern.compile("\\b(?:Fit|Reading|Behaviour|Basis|Separation|PackingKind)\\.([A-Z_]+)");
    private static final Pattern HOLE = Pattern.compile("\\{([a-z])}");

    /** What a condition asks for. */
    static List<Spoken> askedBy(Said said) {
        return in(said.sentence().means().orElse(""), said);
    }

    /** What a conclusion draws. */
    static List<Spoken> drawnBy(Said said) {
        return in(said.sentence().concludes().orElse(""), said);
    }

    private static List<Spoken> in(String meaning, Said said) {
        boolean isWholeDenied = meaning.startsWith("not (");
        Matcher mention = MENTION.matcher(meaning);
        return mention.results()
                .filter(found -> KINDS.contains(found.group(2)))
                .map(found -> new Spoken(
                        found.group(2),
                        words(meaning.substring(found.end()), said),
                        isWholeDenied || List.of("not ", ": ").contains(found.group(1) == null ? "" : found.group(1))))
                .toList();
    }

    /** The words up to the bracket that closes the mention. */
    private static Set<String> words(String rest, Said said) {
        int depth = 1;
        int end = 0;
        while (end < rest.length() && depth > 0) {
            depth += rest.charAt(end) == '(' ? 1 : rest.charAt(end) == ')' ? -1 : 0;
            end++;
        }
        String inside = rest.substring(0, end);
        Set<String> words = new TreeSet<>();
        WORD.matcher(inside).results().map(found -> found.group(1)).forEach(words::add);
        HOLE.matcher(inside)
                .results()
                .map(found -> found.group(1))
                .flatMap(hole -> said.inSlot(hole).stream())
                .map(word -> word.toUpperCase(Locale.ROOT).replace(' ', '_'))
                .forEach(words::add);
        return words;
    }

    /** Whether what is drawn may be what is asked for; where one says less, it may. */
    boolean mayBe(Spoken drawn) {
        return kind.equals(drawn.kind) && (drawn.words.containsAll(words) || words.containsAll(drawn.words));
    }
}
