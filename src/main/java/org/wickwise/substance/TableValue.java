package org.wickwise.substance;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.text.Place;

/**
 * One printed value of one property of one solvent.
 *
 * @param texts the value as words: one for most properties, several for a list of codes
 * @param number the value as a number, where it is one
 * @param constants named numbers, for values that are a set of constants
 * @param condition temperature, revision, scale: what the value holds for
 * @param sources full citations
 * @param confidence "two sources", "one source" or "memory"
 * @param used whether the program computes and judges with this value
 * @param note why this one is used among several, or why none is
 */
public record TableValue(
        String solvent,
        String property,
        List<String> texts,
        OptionalDouble number,
        Map<String, Double> constants,
        String unit,
        String condition,
        List<String> sources,
        String confidence,
        boolean used,
        String note,
        Place place)
        implements Ground {

    private static final Pattern CELSIUS = Pattern.compile("(-?\\d+(?:\\.\\d+)?) degC");

    public TableValue {
        texts = List.copyOf(texts);
        constants = Map.copyOf(constants);
        sources = List.copyOf(sources);
    }

    /** The same value, not in use. */
    TableValue unused() {
        return new TableValue(
                solvent, property, texts, number, constants, unit, condition, sources, confidence, false, note, place);
    }

    /** The temperature it holds for in degrees Celsius; empty where its condition names none, or more than one. */
    public OptionalDouble celsius() {
        List<Double> named = CELSIUS.matcher(condition)
                .results()
                .map(found -> Double.parseDouble(found.group(1)))
                .distinct()
                .toList();
        return named.size() == 1 ? OptionalDouble.of(named.get(0)) : OptionalDouble.empty();
    }

    /** The value with its unit, as printed. */
    public String shown() {
        return String.join(", ", texts) + (unit.equals("none") ? "" : " " + unit);
    }

    @Override
    public Reason reason() {
        String statement = property + " of " + solvent + ": " + shown() + " (" + condition + ")";
        return new Reason.Tabled(statement, sources, confidence);
    }
}
