package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.wickwise.rulebook.SlotKind.OneOf;
import org.wickwise.text.NearMiss;

/** Guesses which sentence of the vocabulary was meant, with the letters, numbers and words that the writer used. */
final class MeantSentence {

    private static final Pattern LETTER = Pattern.compile("(?<![A-Za-z])[A-Z](?![A-Za-z])");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?(?: ?[A-Za-z%][A-Za-z0-9%/.]*)?");
    private static final LevenshteinDistance LETTERS_APART = LevenshteinDistance.getDefaultInstance();

    private final List<Sentence> sentences;
    private final Map<String, Limit> limits;

    /**
     * @param sentences that may stand where the other one stands
     * @param limits that sentences may name
     */
    MeantSentence(List<Sentence> sentences, Map<String, Limit> limits) {
        this.sentences = sentences;
        this.limits = limits;
    }

    /** The sentences that are nearest to what was written, all equally near; none when none is near. */
    List<String> nearest(String written) {
        List<String> near = NearMiss.of(
                written,
                sentences.stream().map(sentence -> filled(sentence, written)).toList());
        Optional<String> lost = wordIn(written)
                .filter(word -> near.stream().limit(1).noneMatch(known -> standsIn(known, word)))
                .flatMap(word -> nearestWith(word, written));
        return lost.map(List::of).orElseGet(() -> near.stream()
                .filter(known -> apart(written, known) == apart(written, near.get(0)))
                .toList());
    }

    private static int apart(String written, String known) {
        return LETTERS_APART.apply(written.toLowerCase(Locale.ROOT), known.toLowerCase(Locale.ROOT));
    }

    /** The longest word of a closed list that was written. */
    private Optional<String> wordIn(String written) {
        return longestIn(
                written,
                sentences.stream()
                        .flatMap(sentence -> sentence.slots().stream())
                        .map(Sentence.Slot::kind)
                        .filter(OneOf.class::isInstance)
                        .flatMap(kind -> ((OneOf) kind).words().stream())
                        .distinct()
                        .toList());
    }

    /** The nearest sentence that has a place for this word; empty when none has. */
    Optional<String> nearestWith(String word, String written) {
        return sentences.stream()
                .filter(sentence -> sentence.slots().stream()
                        .anyMatch(slot -> slot.kind() instanceof OneOf list
                                && list.words().contains(word)))
                .map(sentence -> filled(sentence, written))
                .min(Comparator.comparingInt(known -> apart(written, known)));
    }

    /** A sentence with what was written in its slots as far as it fits, and with those of its example elsewhere. */
    private String filled(Sentence sentence, String written) {
        List<String> usual = sentence.slotsIn(sentence.example()).orElse(List.of());
        List<String> slots = new ArrayList<>();
        List<String> letters = allIn(LETTER, written);
        for (int i = 0; i < usual.size(); i++) {
            SlotKind kind = sentence.slots().get(i).kind();
            String property = i > 0 ? slots.get(i - 1) : "";
            slots.add(
                    kind.isVariable()
                            ? letters.isEmpty() ? usual.get(i) : letters.remove(0)
                            : written(kind, written, property).orElse(usual.get(i)));
        }
        return usual.isEmpty() ? sentence.example() : sentence.with(slots);
    }

    private Optional<String> written(SlotKind kind, String written, String property) {
        if (kind instanceof OneOf list) {
            return longestIn(written, list.words());
        }
        List<String> offered = allIn(NUMBER, written);
        longestIn(written, limits.keySet()).ifPresent(limit -> offered.add("the " + limit));
        return offered.stream()
                .filter(text -> kind.misfit(text, limits, Optional.of(property)).isEmpty())
                .findFirst();
    }

    private static Optional<String> longestIn(String written, Collection<String> words) {
        return words.stream()
                .filter(word -> standsIn(written, word))
                .max(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
    }

    /** As a word of its own, and not as a part of a longer one. */
    private static boolean standsIn(String written, String word) {
        int start = written.indexOf(word);
        int end = start + word.length();
        return start >= 0
                && (start == 0 || !Character.isLetterOrDigit(written.charAt(start - 1)))
                && (end == written.length() || !Character.isLetterOrDigit(written.charAt(end)));
    }

    private static List<String> allIn(Pattern pattern, String written) {
        List<String> found = new ArrayList<>();
        for (Matcher matcher = pattern.matcher(written); matcher.find(); ) {
            found.add(matcher.group());
        }
        return found;
    }
}
