package org.wickwise.notebook;

import java.text.Normalizer;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the file of an entry is called: date, mixture and group, in small letters of the English alphabet, digits and
 * hyphens. Such names mean the same on every disk: where capitals do not count, where marks on letters are written in one of
 * two ways, and where the system cannot write them at all.
 */
final class EntryName {

    private static final int LONGEST_MIXTURE = 60;
    private static final int LONGEST_GROUP = 20;

    private EntryName() {}

    /**
     * @param number 1 for the first entry of this date, mixture and group, which goes without one
     */
    static String of(EntryDraft draft, int number) {
        return Stream.of(
                        draft.date().toString(),
                        plain(draft.mixture(), LONGEST_MIXTURE),
                        draft.group()
                                .map(group -> "group-" + plain(group, LONGEST_GROUP))
                                .orElse(""),
                        number == 1 ? "" : "no-" + number)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("-", "", ".yaml"));
    }

    private static String plain(String words, int longest) {
        String plain = Normalizer.normalize(words, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replace("ß", "ss")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return plain.length() <= longest ? plain : plain.substring(0, longest).replaceAll("-$", "");
    }
}
