package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wickwise.text.Place;

/**
 * A sentence of the vocabulary as a writer of rules sees it.
 *
 * @param sentence with its slots in angle brackets
 * @param isCondition whether it may stand under `when`
 * @param isConclusion whether it may stand under `then`
 * @param takes what each slot takes, in words; letters left out
 */
public record WordsPage(
        String sentence, String example, boolean isCondition, boolean isConclusion, List<String> takes, Place place) {

    private static final int MOST_WORDS = 12;

    static WordsPage of(Sentence sentence, Map<String, Limit> limits) {
        return new WordsPage(
                sentence.shown(),
                sentence.example(),
                sentence.means().isPresent(),
                sentence.concludes().isPresent(),
                sentence.slots().stream()
                        .map(Sentence.Slot::kind)
                        .filter(kind -> !kind.isVariable())
                        .distinct()
                        .map(kind -> taken(kind, limits))
                        .toList(),
                sentence.place());
    }

    private static String taken(SlotKind kind, Map<String, Limit> limits) {
        if (kind instanceof SlotKind.OneOf list) {
            String words = list.words().stream().limit(MOST_WORDS).collect(Collectors.joining(", "));
            int more = list.words().size() - MOST_WORDS;
            return "<" + kind.name() + ">: " + words + (more > 0 ? " and " + more + " more" : "");
        }
        SlotKind.Quantity quantity = (SlotKind.Quantity) kind;
        String unit = quantity.unit().isEmpty() ? "in the unit of the property" : "in " + quantity.unit();
        String limit = limits.values().stream()
                .filter(known -> known.unit().equals(quantity.limitUnit()))
                .map(known -> ", or a limit such as `the " + known.name() + "`")
                .findFirst()
                .orElse(", or a limit of that unit");
        return "<" + kind.name() + ">: a number " + unit + limit;
    }
}
