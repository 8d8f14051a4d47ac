package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.text.Place;

/**
 * A sentence as it stands in a rule: which sentence of the vocabulary it is, and what stands in its slots.
 *
 * @param slots the texts in the slots, in order
 */
record Said(String written, Sentence sentence, List<String> slots, Place place) {

    private static final Pattern LETTER = Pattern.compile("(?<![A-Za-z])([A-Z])(?![A-Za-z])");

    /**
     * The sentence with names for letters and values for limits.
     *
     * @param names what each letter stands for
     * @param limits the limits by name
     */
    String filled(Map<String, String> names, Map<String, Limit> limits) {
        String filled = written;
        for (int i = 0; i < slots.size(); i++) {
            Matcher limit = SlotKind.LIMIT.matcher(slots.get(i));
            if (sentence.slots().get(i).kind().isNumber() && limit.matches()) {
                String shown = limits.get(limit.group(1)).shown();
                filled = filled.replace(slots.get(i), shown + " (" + slots.get(i) + ")");
            }
        }
        return LETTER.matcher(filled)
                .replaceAll(letter -> Matcher.quoteReplacement(names.getOrDefault(letter.group(1), letter.group(1))));
    }
}
