package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;

/**
 * Every number that some rule compares an Rf, a gap or a chance with. Two sets of readings that lie on the same side of
 * all of them meet the same conditions, so they lead to the same conclusions.
 */
final class ReadingThresholds {

    private static final Pattern ABOUT_READINGS = Pattern.compile("\\b(?:Measured|Estimated)(?:Gap)?\\(");
    private static final double PER_CENT = 100;

    private final double[] numbers;

    private ReadingThresholds(double[] numbers) {
        this.numbers = numbers;
    }

    static ReadingThresholds of(List<Rule> rules, Map<String, Limit> limits) {
        TreeSet<Double> numbers = new TreeSet<>();
        for (Rule rule : rules) {
            for (Said said : rule.when()) {
                String means = said.sentence().means().orElse("");
                if (ABOUT_READINGS.matcher(means).find()) {
                    numbers.addAll(numbersIn(said, limits));
                }
            }
        }
        return new ReadingThresholds(
                numbers.stream().mapToDouble(Double::doubleValue).toArray());
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

    /** What the rules can tell of these readings; equal for two sets of readings that no rule tells apart. */
    List<Object> toldApart(StripSummary summary) {
        List<Object> told = new ArrayList<>();
        for (Movement movement : summary.movements()) {
            told.add(movement.getClass().getSimpleName());
            told.add(movement.dye());
            told.add(movement.eluent());
            movement.retardation().ifPresent(retardation -> {
                told.add(sides(retardation));
                summary.movements().stream()
                        .filter(other -> other.dye().equals(movement.dye()))
                        .flatMap(other -> other.retardation().stream())
                        .forEach(other -> told.add(retardation.highest() < other.lowest()));
            });
        }
        for (Apart gap : summary.gaps()) {
            told.add(gap.getClass().getSimpleName());
            told.add(gap.eluent());
            told.add(gap.ahead());
            told.add(gap.behind());
            if (gap instanceof Apart.MeasuredGap measured) {
                told.add(sides(new RetardationFactor(measured.gap(), measured.uncertainty())));
            }
            if (gap instanceof Apart.EstimatedGap reckoned) {
                told.add(sides(new RetardationFactor(reckoned.gap(), reckoned.uncertainty())));
            }
        }
        return told;
    }

    /** For each number whether the value is above it, and between which two numbers the chance of that lies. */
    private List<Integer> sides(RetardationFactor value) {
        List<Integer> sides = new ArrayList<>();
        for (double number : numbers) {
            sides.add(Double.compare(value.value(), number));
            double chance = PER_CENT * value.chanceAtMost(number);
            int below = 0;
            int above = 0;
            for (double other : numbers) {
                below += chance < other ? 1 : 0;
                above += PER_CENT - chance < other ? 1 : 0;
            }
            sides.add(below);
            sides.add(above);
        }
        return sides;
    }
}
