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

    private NearMiss() {}

    /** The nearest known words, nearest first; none when nothing is near. */
    public static List<String> of(String written, Collection<String> known) {
        String wanted = written.toLowerCase(Locale.ROOT);
        int farthest = Math.max(2, wanted.length() / 3);
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        record Scored(String word, int away) {}
        return known.stream()
                .distinct()
                .map(word -> new Scored(word, away(distance, wanted, word.toLowerCase(Locale.ROOT))))
                .filter(scored -> scored.away() <= farthest)
                .sorted(Comparator.comparingInt(Scored::away).thenComparing(Scored::word))
                .limit(MOST_OFFERED)
                .map(Scored::word)
                .toList();
    }

    /** A way out in words: the near misses, or the whole list when nothing is near. */
    public static String suggestion(String written, Collection<String> known) {
        List<String> near = of(written, known);
        if (!near.isEmpty()) {
            return "did you mean " + quoted(near, " or ") + "?";
        }
        return "known here: " + quoted(known.stream().sorted().toList(), ", ");
    }

    private static int away(LevenshteinDistance distance, String wanted, String word) {
        boolean oneInTheOther = wanted.length() > 3 && (word.contains(wanted) || wanted.contains(word));
        return oneInTheOther ? 1 : distance.apply(wanted, word);
    }

    private static String quoted(List<String> words, String between) {
        return words.stream().map(word -> "`" + word + "`").collect(Collectors.joining(between));
    }
}
