package org.wickwise.text;

import java.util.List;
import java.util.Locale;

/** Small joinery of words for sentences that people read. */
public final class Words {

    private Words() {}

    /** "a", "a and b", "a, b and c". */
    public static String joined(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
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
