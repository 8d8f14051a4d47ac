package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Levels;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Lessons;
import org.wickwise.rulebook.Lessons.Idea;
import org.wickwise.text.Words;

/**
 * An answer as a short explanation for a student.
 *
 * @param statement what is explained
 * @param because the rules' own reasons, the nearest first
 * @param readings what was measured or looked up, in plain words
 * @param ideas the ideas behind it, at least one and at most three
 */
public record Lesson(String statement, List<String> because, List<String> readings, List<Idea> ideas) {

    /** About as much as a student reads standing at the bench. */
    private static final int MOST_WORDS = 150;

    private static final int LONGEST_STATEMENT = 45;
    private static final int MOST_IDEAS = 3;

    public Lesson {
        because = List.copyOf(because);
        readings = List.copyOf(readings);
        ideas = List.copyOf(ideas);
    }

    /** The lesson of an answer: what is nearest to the statement, as far as there is room. */
    public static Lesson of(PlanLine line, Judgement judgement, Lessons lessons) {
        Map<Reason, Integer> levels = Levels.of(line.reason());
        Set<String> becauses = becauses(levels);
        String statement = firstSentences(line.text(), becauses);
        List<Idea> ideas = lessons.about(
                line.label(), depthOfRule(levels), judgement.judged().column().phaseKind());
        Room room = new Room(statement);
        List<Idea> told = new ArrayList<>();
        room.take(ideas.get(0).text());
        told.add(ideas.get(0));
        List<String> because = new ArrayList<>();
        List<String> readings = new ArrayList<>();
        List<String> reasons = becauses.stream()
                .filter(reason -> !statement.toLowerCase(Locale.ROOT).contains(reason.toLowerCase(Locale.ROOT)))
                .toList();
        List<String> seen = PlainReadings.of(levels.keySet(), judgement);
        for (int i = 0; i < Math.max(reasons.size(), seen.size()); i++) {
            if (i < reasons.size() && room.takes(reasons.get(i))) {
                because.add(reasons.get(i));
            }
            if (i < seen.size() && room.takes(seen.get(i))) {
                readings.add(seen.get(i));
            }
        }
        ideas.stream()
                .skip(1)
                .limit(MOST_IDEAS - 1)
                .filter(idea -> room.takes(idea.text()))
                .forEach(told::add);
        return new Lesson(statement, because, readings, told);
    }

    /** How many words are left. Confined to one lesson. */
    private static final class Room {

        private int left = MOST_WORDS;

        Room(String statement) {
            take(statement);
        }

        void take(String text) {
            left -= count(text);
        }

        boolean takes(String text) {
            boolean fits = count(text) <= left;
            if (fits) {
                take(text);
            }
            return fits;
        }
    }

    /** Whole sentences from the beginning, the first one however long it is, without those that a rule says anyway. */
    private static String firstSentences(String text, Set<String> becauses) {
        String taken = "";
        for (String sentence : text.split("(?<=[.!?]) (?=\\p{Lu})")) {
            if (taken.isEmpty()) {
                taken = sentence;
            } else if (count(taken) + count(sentence) > LONGEST_STATEMENT) {
                break;
            } else if (becauses.stream().noneMatch(because -> because.contains(sentence))) {
                taken = taken + " " + sentence;
            }
        }
        return Words.capital(taken);
    }

    private static Map<String, Integer> depthOfRule(Map<Reason, Integer> levels) {
        Map<String, Integer> depths = new LinkedHashMap<>();
        levels.forEach((reason, depth) -> {
            if (reason instanceof Concluded concluded) {
                concluded.arguments().forEach(argument -> depths.merge(argument.ruleId(), depth, Math::min));
            }
        });
        return depths;
    }

    /** What the rules say, each once; what another rule says comes before what a rule says again of something else. */
    private static Set<String> becauses(Map<Reason, Integer> levels) {
        record Turn(int turn, String because) {}
        Map<String, Integer> turns = new LinkedHashMap<>();
        List<Turn> all = new ArrayList<>();
        levels.keySet().forEach(reason -> {
            if (reason instanceof Concluded concluded) {
                concluded
                        .arguments()
                        .forEach(argument -> all.add(new Turn(
                                turns.merge(argument.ruleId(), 1, Integer::sum), Words.capital(argument.because()))));
            }
        });
        return all.stream()
                .sorted(Comparator.comparingInt(Turn::turn))
                .map(Turn::because)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static int count(String text) {
        return text.strip().split("\\s+").length;
    }
}
