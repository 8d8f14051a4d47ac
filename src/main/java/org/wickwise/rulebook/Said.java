package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.wickwise.text.Place;

/**
 * A sentence as it stands in a rule: which sentence of the vocabulary it is, and what stands in its slots.
 *
 * @param slots the texts in the slots, in order
 */
record Said(String written, Sentence sentence, List<String> slots, Place place) {

    private static final Pattern LETTER = Pattern.compile("(?<![A-Za-z])([A-Z])(?![A-Za-z])");

    /** What stands in the first slot of a kind; empty where the sentence has none. */
    Optional<String> slot(String kind) {
        return IntStream.range(0, slots.size())
                .filter(i -> sentence.slots().get(i).kind().name().equals(kind))
                .mapToObj(slots::get)
                .findFirst();
    }

    /** The word in the slot of this name; empty where it is a letter, a number or no slot. */
    Optional<String> inSlot(String name) {
        return IntStream.range(0, slots.size())
                .filter(i -> sentence.slots().get(i).name().equals(name)
                        && sentence.slots().get(i).kind() instanceof SlotKind.OneOf)
                .mapToObj(slots::get)
                .findFirst();
    }

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
