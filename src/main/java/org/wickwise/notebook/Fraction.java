package org.wickwise.notebook;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Place;

/**
 * One fraction that was collected.
 *
 * @param number counted from 1
 * @param fromMillilitres where it begins at the outlet, from the moment the first pour meets the loaded bed
 * @param colour by eye; empty where nobody wrote it down
 * @param seen the dyes that somebody saw in it
 * @param absorbance of each dye that was measured, at the dye's own wavelength, as read
 * @param diluted how many times it was diluted before reading, 1 or more
 * @param strip a strip that was run of it
 */
public record Fraction(
        int number,
        double fromMillilitres,
        double millilitres,
        Optional<String> colour,
        Set<Dye> seen,
        Map<Dye, Double> absorbance,
        double diluted,
        Optional<Strip> strip,
        Place place) {

    public Fraction {
        seen = new TreeSet<>(seen);
        absorbance = new TreeMap<>(absorbance);
    }

    public double toMillilitres() {
        return fromMillilitres + millilitres;
    }

    /** Whether the strip of this fraction, or the eye where there is none, shows the dye. */
    public boolean shows(Dye dye) {
        return strip.map(run -> run.spotOf(dye).isPresent()).orElse(false) || seen.contains(dye);
    }

    /** Absorbance times volume of the undiluted fraction, which is proportional to the amount; empty where nobody read it. */
    public OptionalDouble absorbed(Dye dye) {
        Double read = absorbance.get(dye);
        return read == null ? OptionalDouble.empty() : OptionalDouble.of(read * diluted * millilitres);
    }
}
