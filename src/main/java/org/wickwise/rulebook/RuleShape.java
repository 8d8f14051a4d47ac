package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What a rule says, whatever letters it uses and in whatever order its conditions stand.
 *
 * @param when its conditions with letters by the order of their first use
 * @param then its conclusions, the same way
 * @param drawn the conclusions without things and words, to tell which exclude each other
 */
record RuleShape(Set<String> when, Set<String> then, Map<String, String> drawn) {

    /** Kinds of conclusions of which only one can be so of the same things. */
    private static final Set<String> EXCLUSIVE = Set.of("Behaves", "Between", "StripVerdict", "Fitness");

    static RuleShape of(Rule rule) {
        Map<String, String> letters = new HashMap<>();
        List<Said> ordered = rule.when().stream()
                .sorted(Comparator.comparing(RuleShape::withoutLetters))
                .toList();
        Set<String> when = new TreeSet<>();
        ordered.forEach(said -> when.add(renamed(said, letters)));
        Set<String> then = new TreeSet<>();
        Map<String, String> drawn = new HashMap<>();
        for (Said said : rule.then()) {
            then.add(renamed(said, letters));
            Spoken.drawnBy(said).stream()
                    .filter(spoken -> EXCLUSIVE.contains(spoken.kind()))
                    .forEach(spoken -> drawn.put(
                            spoken.kind() + lettersOf(said, letters),
                            spoken.words().toString()));
        }
        return new RuleShape(when, then, drawn);
    }

    private static String withoutLetters(Said said) {
        return renamed(said, Map.of(), true);
    }

    private static String renamed(Said said, Map<String, String> letters) {
        RuleLetters.of(said).forEach(letter -> letters.computeIfAbsent(letter, any -> "#" + letters.size()));
        return renamed(said, letters, false);
    }

    private static String renamed(Said said, Map<String, String> letters, boolean allAlike) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < said.slots().size(); i++) {
            boolean isLetter = said.sentence().slots().get(i).kind().isVariable();
            parts.add(
                    !isLetter
                            ? said.slots().get(i)
                            : allAlike ? "#" : letters.get(said.slots().get(i)));
        }
        return said.sentence().words() + parts;
    }

    private static String lettersOf(Said said, Map<String, String> letters) {
        return RuleLetters.of(said).stream().map(letters::get).toList().toString();
    }

    boolean saysTheSameAs(RuleShape other) {
        return when.equals(other.when) && then.equals(other.then);
    }

    /** Wherever one of the two fires the other does too, and they conclude what cannot both be so. */
    boolean contradicts(RuleShape other) {
        boolean fireTogether = when.containsAll(other.when) || other.when.containsAll(when);
        return fireTogether
                && Stream.of(drawn.keySet())
                        .flatMap(Set::stream)
                        .anyMatch(about -> other.drawn.containsKey(about)
                                && !other.drawn.get(about).equals(drawn.get(about)));
    }
}
