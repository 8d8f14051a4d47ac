package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.text.Place;

/**
 * A sentence of the vocabulary.
 *
 * @param words the sentence with its slots, {@code {D: dye} stays in {E: eluent}}
 * @param means the engine's condition for it, empty where the sentence only concludes
 * @param concludes the engine's conclusion for it, empty where the sentence only asks
 * @param forOwnRules whether it stands here for rules of one's own, and no shipped rule needs it
 */
record Sentence(
        String words,
        List<Slot> slots,
        Pattern pattern,
        Optional<String> means,
        Optional<String> concludes,
        String example,
        boolean forOwnRules,
        Place place) {

    private static final Pattern SLOT = Pattern.compile("\\{([A-Za-z]+): ([A-Za-z ]+)}");

    record Slot(String name, SlotKind kind) {}

    /** Kinds of slots in these words that nobody knows. */
    static List<String> unknownKinds(String words, Vocabulary.Kinds kinds) {
        return SLOT.matcher(words)
                .results()
                .map(slot -> slot.group(2))
                .filter(kind -> kinds.named(kind).isEmpty())
                .toList();
    }

    /** A slot of an unknown kind takes no word at all. */
    static Sentence of(
            String words,
            Vocabulary.Kinds kinds,
            Optional<String> means,
            Optional<String> concludes,
            String example,
            boolean forOwnRules,
            Place place) {
        List<Slot> slots = new ArrayList<>();
        StringBuilder pattern = new StringBuilder();
        Matcher matcher = SLOT.matcher(words);
        int end = 0;
        while (matcher.find()) {
            String kindName = matcher.group(2);
            SlotKind kind = kinds.named(matcher.group(2)).orElseGet(() -> new SlotKind.OneOf(kindName, List.of()));
            pattern.append(Pattern.quote(words.substring(end, matcher.start())))
                    .append("(")
                    .append(kind.pattern())
                    .append(")");
            slots.add(new Slot(matcher.group(1), kind));
            end = matcher.end();
        }
        pattern.append(Pattern.quote(words.substring(end)));
        return new Sentence(
                words,
                List.copyOf(slots),
                Pattern.compile(pattern.toString()),
                means,
                concludes,
                example,
                forOwnRules,
                place);
    }

    /** The sentence as a person reads it in a list, slots in angle brackets. */
    String shown() {
        return SLOT.matcher(words)
                .replaceAll(match -> match.group(2).equals("strip")
                                || match.group(2).equals("dye")
                                || match.group(2).equals("eluent")
                        ? match.group(1)
                        : "<" + match.group(2) + ">");
    }

    /** The sentence with these texts in its slots, in order. */
    String with(List<String> texts) {
        Iterator<String> next = texts.iterator();
        return SLOT.matcher(words).replaceAll(slot -> Matcher.quoteReplacement(next.next()));
    }

    /** How many letters of the sentence are its own and not of a slot. */
    int ownLetters() {
        return SLOT.matcher(words).replaceAll("").length();
    }

    /** What stands in the slots, in order, when a written sentence has this shape. */
    Optional<List<String>> slotsIn(String written) {
        Matcher matcher = pattern.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<String> found = new ArrayList<>();
        for (int i = 1; i <= matcher.groupCount(); i++) {
            found.add(matcher.group(i));
        }
        return Optional.of(found);
    }
}
