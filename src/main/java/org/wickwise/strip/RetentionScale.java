package org.wickwise.strip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentStrength;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Numbers;

/**
 * A measure of eluents over which RM of a neutral dye falls along a straight line.
 *
 * @param name what is measured
 * @param reference where the law comes from
 * @param onePair whether it compares only blends of one pair of solvents
 * @param position where an eluent stands; empty where it does not belong
 */
record RetentionScale(String name, String reference, boolean onePair, Function<Eluent, Optional<Position>> position) {

    /** @param grounds what it was reckoned from, besides the recipe */
    record Position(double x, List<Reason> grounds) {}

    /** Snyder's strength of the eluent on an adsorbent; that of each eluent is reckoned once. */
    static RetentionScale ofStrength(EluentStrength strength) {
        Map<Eluent, Optional<Position>> known = new HashMap<>();
        return new RetentionScale(
                "strength",
                "RM falls with eluent strength: L. R. Snyder, Principles of Adsorption Chromatography, 1968, from memory",
                false,
                eluent -> known.computeIfAbsent(eluent, any -> strength.of(any)
                        .map(found -> new Position(found.value(), List.of(found.reason())))));
    }

    /** The logarithm of the share of the stronger of two solvents on a polar adsorbent. */
    static RetentionScale ofLogarithm(Solvent weak, Solvent strong) {
        return new RetentionScale(
                "log10 of the share of " + strong,
                "RM falls with the logarithm of the share: E. Soczewinski, Anal. Chem. 1969, 41, 179, from memory",
                true,
                eluent -> madeOf(eluent, weak, strong) && eluent.contains(strong)
                        ? Optional.of(new Position(Math.log10(eluent.percentOf(strong) / 100), List.of()))
                        : Optional.empty());
    }

    /** The share of the organic solvent beside an aqueous one on a reversed phase. */
    static RetentionScale ofShare(Solvent aqueous, Solvent organic) {
        return new RetentionScale(
                "share of " + organic,
                "log10 k falls with the share: L. R. Snyder, J. W. Dolan, J. R. Gant, J. Chromatogr. 1979, 165, 3, from"
                        + " memory",
                true,
                eluent -> madeOf(eluent, aqueous, organic)
                        ? Optional.of(new Position(eluent.percentOf(organic) / 100, List.of()))
                        : Optional.empty());
    }

    Optional<Position> of(Eluent eluent) {
        return eluent.additions().isEmpty() ? position.apply(eluent) : Optional.empty();
    }

    String shown(double x) {
        return Numbers.fixed(x, 3);
    }

    private static boolean madeOf(Eluent eluent, Solvent one, Solvent other) {
        return eluent.parts().stream()
                .map(Eluent.Part::solvent)
                .allMatch(part -> part.equals(one) || part.equals(other));
    }
}
