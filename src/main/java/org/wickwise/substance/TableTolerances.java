package org.wickwise.substance;

import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Problems;

/**
 * How far values of the solvent table may differ that physics ties together.
 *
 * @param boilingKelvin printed boiling points and Antoine fits agree within this
 * @param pressurePercent printed vapour pressures and Antoine fits agree within this
 * @param leastFlashFactor the vapour over a liquid at its flash point is at least so many times the lower explosive limit
 * @param mostFlashFactor and at most so many times
 */
public record TableTolerances(
        double boilingKelvin, double pressurePercent, double leastFlashFactor, double mostFlashFactor) {

    private static final Set<String> KEYS = Set.of(
            "boiling point K",
            "vapour pressure percent",
            "least of the lower explosive limit at the flash point",
            "most of the lower explosive limit at the flash point",
            "source");

    static TableTolerances of(Node node, Problems problems) {
        Fields fields = Fields.ofNode(node, "the tolerances", KEYS, problems);
        fields.requiredText("source");
        return new TableTolerances(
                aboveZero("boiling point K", fields, problems),
                aboveZero("vapour pressure percent", fields, problems),
                aboveZero("least of the lower explosive limit at the flash point", fields, problems),
                aboveZero("most of the lower explosive limit at the flash point", fields, problems));
    }

    private static double aboveZero(String key, Fields fields, Problems problems) {
        if (!fields.has(key)) {
            fields.missing(key);
        }
        OptionalDouble number = fields.number(key);
        if (number.isPresent() && number.getAsDouble() <= 0) {
            problems.add(
                    fields.placeOf(key),
                    "`" + key + "` is " + number.getAsDouble(),
                    "a number above 0",
                    "write how far the values may differ");
        }
        return number.orElse(0);
    }
}
