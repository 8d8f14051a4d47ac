package org.wickwise.why;

import java.util.List;
import java.util.Map;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * One way in which things may truly be: where each dye lies in each eluent.
 *
 * @param dyes in the order of their names
 * @param retardations Rf, 0 to 1
 */
record Truth(List<Dye> dyes, Map<Eluent, Map<Dye, Double>> retardations) {

    double retardation(Dye dye, Eluent eluent) {
        return retardations.get(eluent).get(dye);
    }

    /** A strip read without error; what was only watched stays as it is. */
    Strip read(Strip strip) {
        List<Spot> spots = strip.spots().stream()
                .map(spot -> new Spot(spot.dyes(), position(spot, strip), spot.place()))
                .toList();
        return strip.with(strip.frontMillimetres(), spots);
    }

    private Spot.Position position(Spot spot, Strip strip) {
        Map<Dye, Double> there = retardations.getOrDefault(strip.eluent(), Map.of());
        Double value = there.get(spot.dyes().get(0));
        if (value == null || spot.position() instanceof Spot.Seen) {
            return spot.position();
        }
        return spot.position() instanceof Spot.Travelled
                ? new Spot.Travelled(value * strip.frontMillimetres().orElseThrow())
                : new Spot.Quoted(value);
    }
}
