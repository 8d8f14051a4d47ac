package org.wickwise.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.rulebook.Wishes.Cost;
import org.wickwise.text.Numbers;

/**
 * What the cost of a plan is made of.
 *
 * @param terms by name, each weighed; in the order of the preferences file
 */
public record CostTerms(Map<String, Double> terms) {

    private static final double SMALL = 0.05;

    static CostTerms of(Pouring pouring, Flasks flasks) {
        Cost cost = pouring.preferences().wishes().cost();
        double burden = pouring.packing().burden();
        double price = pouring.packing().columnVolumes() * pouring.packing().pricePerColumnVolume();
        double minutes = 0;
        for (int i = 0; i < pouring.moves().size(); i++) {
            Pourable pourable = pouring.moves().get(i).pourable(pouring.choices());
            double poured = pouring.poured().get(i);
            burden += pourable.burden();
            price += poured * pourable.pricePerColumnVolume();
            minutes += poured * pourable.minutesPerColumnVolume();
        }
        Map<String, Double> terms = new LinkedHashMap<>();
        terms.put("purity lost", cost.purityLost() * flasks.percentOfPurityLost());
        terms.put("recovery lost", cost.recoveryLost() * flasks.percentOfRecoveryLost());
        terms.put("burden", cost.burden() * burden);
        terms.put("steps", cost.step() * pouring.moves().size());
        terms.put("column volumes", cost.columnVolume() * pouring.pouredSoFar());
        terms.put("minutes", cost.minute() * minutes);
        terms.put("price", cost.price() * price);
        return new CostTerms(terms);
    }

    double sum() {
        return terms.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** "burden 20 against 0, column volumes 9.1 against 8.2", for the terms that differ. */
    String against(CostTerms other) {
        return terms.keySet().stream()
                .filter(name -> Math.abs(terms.get(name) - other.terms.get(name)) >= SMALL)
                .map(name -> name + " " + Numbers.plain(terms.get(name), 1) + " against "
                        + Numbers.plain(other.terms.get(name), 1))
                .collect(Collectors.joining(", "));
    }
}
