package org.wickwise.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known words that a person probably meant. */
public final class NearMiss {

    private static final int MOST_OFFERED = 3;
    private static final int SHORT_WORD = 3;
    private static final int LONGEST = 300;

    private NearMiss() {}

    /** The nearest known words, nearest first; none when nothing is near. */
    public static List<String> of(String written, Collection<String> known) {
        if (written.length() > LONGEST) {
            return List.of();
        }
        String wanted = written.toLowerCase(Locale.ROOT);
        int farthest = wanted.length() <= SHORT_WORD ? 1 : Math.max(2, wanted.length() / 3);
        LevenshteinDistance distance = new LevenshteinDistance(farthest);
        record Scored(String word, int away) {}
        return known.stream()
                .distinct()
                .map(word -> new Scored(word, away(distance, wanted, word.toLowerCase(Locale.ROOT))))
                .filter(scored -> scored.away() >= 0 && scored.away() <= farthest)
                .sorted(Comparator.comparingInt(Scored::away).thenComparing(Scored::word))
                .limit(MOST_OFFERED)
                .map(Scored::word)
                .toList();
    }

    /** A way out in words: the near misses, or the whole list when nothing is near. */
    public static String suggestion(String written, Collection<String> known) {
        return suggestion(written, known, known);
    }

    /**
     * As {@link #suggestion(String, Collection)}.
     *
     * @param shown what to list when nothing is near; empty when the list stands in the message already
     */
    public static String suggestion(String written, Collection<String> known, Collection<String> shown) {
        List<String> near = of(written, known);
        if (!near.isEmpty()) {
            return "did you mean " + quoted(near, " or ") + "?";
        }
        return shown.isEmpty()
                ? "take one of these"
                : "known here: " + quoted(shown.stream().sorted().toList(), ", ");
    }

    /** How many letters differ; -1 where more do than the distance counts. */
    private static int away(LevenshteinDistance distance, String wanted, String word) {
        int shorter = Math.min(wanted.length(), word.length());
        boolean oneInTheOther = shorter > SHORT_WORD
                && 2 * shorter >= Math.max(wanted.length(), word.length())
                && (word.contains(wanted) || wanted.contains(word));
        return oneInTheOther ? 1 : distance.apply(wanted, word);
    }

    private static String quoted(List<String> words, String between) {
        return words.stream().map(word -> "`" + word + "`").collect(Collectors.joining(between));
    }
}
