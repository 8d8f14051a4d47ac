package org.wickwise.rulebook;

import java.util.Collection;
import java.util.List;
import org.wickwise.text.Place;

/**
 * A sentence of the vocabulary as a writer of rules sees it.
 *
 * @param sentence with its slots in angle brackets
 * @param isCondition whether it may stand under `when`
 * @param isConclusion whether it may stand under `then`
 * @param slots what may stand in its angle brackets
 */
public record WordsPage(
        String sentence, String example, boolean isCondition, boolean isConclusion, List<Slot> slots, Place place) {

    public WordsPage {
        slots = List.copyOf(slots);
    }

    /**
     * What stands in angle brackets.
     *
     * @param takes what may be written there, in words
     */
    public record Slot(String name, String takes) {}

    /** @param limits the limits that rules name in the place of a number of each kind */
    static WordsPage of(Sentence sentence, LimitsOfKinds limits) {
        return new WordsPage(
                sentence.shown(),
                sentence.example(),
                sentence.means().isPresent(),
                sentence.concludes().isPresent(),
                sentence.slots().stream()
                        .map(Sentence.Slot::kind)
                        .filter(kind -> !kind.isVariable())
                        .distinct()
                        .map(kind -> new Slot(kind.name(), taken(kind, limits.of(kind))))
                        .toList(),
                sentence.place());
    }

    /** Which limits stand where a number may stand. */
    interface LimitsOfKinds {
        Collection<String> of(SlotKind kind);
    }

    private static String taken(SlotKind kind, Collection<String> limits) {
        if (kind instanceof SlotKind.OneOf list) {
            return String.join(", ", list.words());
        }
        String number = ((SlotKind.Quantity) kind).inWords();
        return limits.isEmpty() ? number : number + ", or a limit, such as the " + String.join(", the ", limits);
    }
}
