package org.wickwise.bench;

import java.util.List;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.StationaryPhase;

/**
 * The strips of one mixture that somebody ran, whatever for.
 *
 * @param mixture what the mixture is called
 * @param dyes 2 to 8, in the order of their names
 * @param phase what the strips were run on, where a strip does not say otherwise
 * @param strips in the order they were written down; may be empty
 */
public record StripSet(String mixture, List<Dye> dyes, StationaryPhase phase, List<Strip> strips) {

    public StripSet {
        dyes = List.copyOf(dyes);
        strips = List.copyOf(strips);
    }
}
