package org.wickwise.rulebook;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.wickwise.substance.SolventData;
import org.wickwise.text.ProblemsFound;

/**
 * The ideas behind the rules, worded for students.
 *
 * @param ideas in the order of the file
 * @param otherwise what there is to say when no idea belongs to an answer
 */
public record Lessons(List<Idea> ideas, Idea otherwise) {

    public Lessons {
        ideas = List.copyOf(ideas);
    }

    /**
     * One idea of chemistry or statistics.
     *
     * @param rules the rules it explains by name
     * @param rulesOfLayers the names of all rules of the layers it explains
     * @param kindsOfLine labels of plan lines without their numbers
     * @param kindsOfBed where it holds; everywhere when there are none
     * @param text a few plain sentences
     */
    public record Idea(
            String name,
            Set<String> rules,
            Set<String> rulesOfLayers,
            Set<String> kindsOfLine,
            Set<String> kindsOfBed,
            String text,
            String source) {

        public Idea {
            rules = Set.copyOf(rules);
            rulesOfLayers = Set.copyOf(rulesOfLayers);
            kindsOfLine = Set.copyOf(kindsOfLine);
            kindsOfBed = Set.copyOf(kindsOfBed);
        }

        /** Whether it explains this rule, on whatever bed. */
        public boolean explains(String rule) {
            return rules.contains(rule) || rulesOfLayers.contains(rule);
        }

        /** How near it is to an answer, the nearest 0; empty when it does not belong to it. */
        private OptionalInt nearness(String label, Map<String, Integer> depthOfRule, String kindOfBed) {
            if (!kindsOfBed.isEmpty() && !kindsOfBed.contains(kindOfBed)) {
                return OptionalInt.empty();
            }
            if (kindsOfLine.stream().anyMatch(kind -> label.equals(kind) || label.startsWith(kind + "-"))) {
                return OptionalInt.of(0);
            }
            return depthOfRule.entrySet().stream()
                    .filter(rule -> explains(rule.getKey()))
                    .mapToInt(rule -> 1 + 2 * rule.getValue() + (rules.contains(rule.getKey()) ? 0 : 1))
                    .min();
        }
    }

    /**
     * The file {@code lessons.yaml} of a folder of rules.
     *
     * @throws ProblemsFound with every problem of the file
     */
    public static Lessons read(Path folder, Rulebook rulebook, SolventData data) {
        return LessonsReader.read(folder, rulebook, data);
    }

    /**
     * The ideas that belong to an answer, the nearest first; never none.
     *
     * @param label of the answer
     * @param depthOfRule the rules the answer rests on, each with how many steps lie between, 0 or more
     * @param kindOfBed the kind of the column's stationary phase
     */
    public List<Idea> about(String label, Map<String, Integer> depthOfRule, String kindOfBed) {
        record Near(Idea idea, int nearness) {}
        List<Idea> found = ideas.stream()
                .flatMap(idea -> Optional.of(idea.nearness(label, depthOfRule, kindOfBed))
                        .filter(OptionalInt::isPresent)
                        .map(nearness -> new Near(idea, nearness.getAsInt()))
                        .stream())
                .sorted(Comparator.comparingInt(Near::nearness))
                .map(Near::idea)
                .toList();
        return found.isEmpty() ? List.of(otherwise) : found;
    }
}
