package org.wickwise.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Small joinery of words for sentences that people read. */
public final class Words {

    private static final String SENTENCES = "(?<=[.!?]) (?=\\p{Lu})";

    private Words() {}

    /** "a", "a and b", "a, b and c". */
    public static String joined(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    /** Texts one behind the other; whole sentences with which all of them end are told once, at the end. */
    public static String endingOnce(List<String> texts) {
        List<List<String>> told =
                texts.stream().map(text -> List.of(text.split(SENTENCES))).toList();
        int alike = texts.size() < 2 ? 0 : endingAlike(told);
        Stream<String> ownWords =
                told.stream().flatMap(sentences -> sentences.subList(0, sentences.size() - alike).stream());
        Stream<String> ending = told.stream()
                .limit(1)
                .flatMap(sentences -> sentences.subList(sentences.size() - alike, sentences.size()).stream());
        return Stream.concat(ownWords, ending).collect(Collectors.joining(" "));
    }

    private static int endingAlike(List<List<String>> told) {
        int alike = 0;
        while (haveAlike(told, alike)) {
            alike++;
        }
        return alike;
    }

    /** Whether the sentence before so many at the end is the same in all. */
    private static boolean haveAlike(List<List<String>> told, int behind) {
        return told.stream().allMatch(sentences -> sentences.size() > behind)
                && told.stream()
                                .map(sentences -> sentences.get(sentences.size() - 1 - behind))
                                .distinct()
                                .count()
                        == 1;
    }

    /** With a capital first letter, as a sentence begins. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** As a part of a label: small letters and digits, joined by hyphens. */
    public static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("(^-|-$)", "");
    }
}
