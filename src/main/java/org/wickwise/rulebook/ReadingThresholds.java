package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Movement;
import org.wickwise.strip.Uncertain;
import org.wickwise.text.Numbers;

/**
 * Every number that some rule compares an Rf, a gap or a chance with. Two sets of readings that lie on the same side of
 * all of them meet the same conditions, so they lead to the same conclusions.
 */
final class ReadingThresholds {

    private static final Pattern ABOUT_MOVEMENTS = Pattern.compile("\\b(?:Measured|Estimated)\\(");
    private static final Pattern ABOUT_GAPS = Pattern.compile("\\b(?:Measured|Estimated)Gap\\(");
    private static final double PER_CENT = 100;

    private final Set<List<Double>> ofMovements;
    private final Set<List<Double>> ofGaps;

    private ReadingThresholds(Set<List<Double>> ofMovements, Set<List<Double>> ofGaps) {
        this.ofMovements = ofMovements;
        this.ofGaps = ofGaps;
    }

    static ReadingThresholds of(List<Rule> rules, Map<String, Limit> limits) {
        return new ReadingThresholds(
                comparisons(ReadingThresholds::isAboutMovements, rules, limits),
                comparisons(ReadingThresholds::isAboutGaps, rules, limits));
    }

    /** Whether a sentence speaks of how far a dye moved, in numbers. */
    static boolean isAboutMovements(Said said) {
        return isAbout(ABOUT_MOVEMENTS, said);
    }

    /** Whether a sentence speaks of how far two dyes lie apart, in numbers. */
    static boolean isAboutGaps(Said said) {
        return isAbout(ABOUT_GAPS, said);
    }

    private static boolean isAbout(Pattern about, Said said) {
        return about.matcher(said.sentence().means().orElse("")).find();
    }

    /** The numbers of each sentence that compares such readings with something. */
    private static Set<List<Double>> comparisons(Predicate<Said> about, List<Rule> rules, Map<String, Limit> limits) {
        return rules.stream()
                .flatMap(rule -> rule.when().stream())
                .filter(about)
                .map(said -> numbersIn(said, limits))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<Double> numbersIn(Said said, Map<String, Limit> limits) {
        List<Double> numbers = new ArrayList<>();
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).kind().isNumber()) {
                Matcher limit = SlotKind.LIMIT.matcher(said.slots().get(i));
                Matcher number = SlotKind.NUMBER.matcher(said.slots().get(i));
                if (limit.matches()) {
                    numbers.add(limits.get(limit.group(1)).value());
                } else if (number.matches()) {
                    numbers.add(Double.valueOf(number.group(1)));
                }
            }
        }
        return numbers;
    }

    /**
     * What the rules can tell of each of these readings, by a name of the reading. A reading that tells the same as another
     * in its place leads to the same conclusions.
     *
     * @param before what they could tell of readings before, some of which may be the same
     */
    Map<String, Told> told(StripSummary summary, Map<String, Told> before) {
        Map<String, Told> told = new LinkedHashMap<>();
        summary.movements().stream()
                .collect(Collectors.groupingBy(Movement::dye))
                .forEach((dye, ofDye) -> {
                    boolean same =
                            ofDye.stream().allMatch(movement -> isAsBefore(movement, before.get(name(movement))));
                    ofDye.forEach(movement -> told.put(
                            name(movement),
                            same ? before.get(name(movement)) : new Told(movement, ofMovement(movement, ofDye))));
                });
        for (Apart gap : summary.gaps()) {
            Told known = before.get(name(gap));
            told.put(name(gap), isAsBefore(gap, known) ? known : new Told(gap, ofGap(gap)));
        }
        return told;
    }

    private static boolean isAsBefore(Object reading, Told known) {
        return known != null && known.reading() == reading;
    }

    private static String name(Movement movement) {
        return movement.getClass().getSimpleName() + " " + movement.dye() + " in " + movement.eluent();
    }

    private static String name(Apart gap) {
        return gap.getClass().getSimpleName() + " " + gap.ahead() + " before " + gap.behind() + " in " + gap.eluent();
    }

    /** @param sides on which side of every number it lies */
    record Told(Object reading, List<Object> sides) {}

    /** @param ofDye what the same dye does in every eluent */
    private List<Object> ofMovement(Movement movement, List<Movement> ofDye) {
        if (movement instanceof Movement.Watched watched) {
            return List.of(watched.behaviour());
        }
        List<Object> told = new ArrayList<>();
        movement.retardation().ifPresent(retardation -> told.addAll(sides(retardation.asNumber(), ofMovements)));
        if (movement instanceof Movement.Measured measured) {
            ofDye.stream()
                    .filter(Movement.Measured.class::isInstance)
                    .map(Movement.Measured.class::cast)
                    .forEach(other -> told.add(measured.highest() < other.lowest()));
        }
        return told;
    }

    private List<Object> ofGap(Apart gap) {
        if (gap instanceof Apart.MeasuredGap measured) {
            return List.copyOf(sides(new Uncertain(measured.gap(), measured.uncertainty()), ofGaps));
        }
        if (gap instanceof Apart.EstimatedGap reckoned) {
            return List.copyOf(sides(new Uncertain(reckoned.gap(), reckoned.uncertainty()), ofGaps));
        }
        return gap instanceof Apart.WatchedGap watched ? List.of(watched.look()) : List.of();
    }

    /** For each number of a sentence the side the value lies on, and the side its chance lies on of the other numbers. */
    private static List<Integer> sides(Uncertain value, Set<List<Double>> comparisons) {
        List<Integer> sides = new ArrayList<>();
        for (List<Double> numbers : comparisons) {
            for (double number : numbers) {
                sides.add(Double.compare(Numbers.steady(value.value()), number));
                double chance = Numbers.steady(PER_CENT * value.chanceAtMost(number));
                for (double other : numbers.size() > 1 ? numbers : List.<Double>of()) {
                    sides.add(Double.compare(chance, other));
                    sides.add(Double.compare(PER_CENT - chance, other));
                }
            }
        }
        return sides;
    }
}
