package org.wickwise.plan;

import java.util.Map;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;

/**
 * How much each eluent weighs on people and surroundings, from the greenness ranking of its parts.
 *
 * @param ofRanking every ranking of the table, and {@value #UNRANKED} for whatever has none of these
 */
record Burden(Map<String, Double> ofRanking) {

    private static final String PROPERTY = "greenness ranking";
    private static final String UNRANKED = "unranked";

    /** The heaviest part decides. */
    double of(Eluent eluent) {
        return eluent.parts().stream()
                .mapToDouble(part -> of(part.solvent()))
                .max()
                .orElse(0);
    }

    private double of(Solvent solvent) {
        String ranking = solvent.value(PROPERTY)
                .map(value -> value.texts().get(0))
                .filter(ofRanking::containsKey)
                .orElse(UNRANKED);
        return ofRanking.get(ranking);
    }
}
