package org.wickwise.notebook;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wickwise.substance.Dye;
import org.wickwise.text.Place;

/**
 * A finished column: what was poured, what came out, and what went wrong.
 *
 * @param poured in the order of pouring, at least one
 * @param fractions in the order of collecting, at least one, each beginning where the one before ended
 * @param load the solution that was loaded, where its absorbance was read
 * @param pools what was put together and weighed dry
 * @param stuck the dyes that can still be seen on the bed at the end
 */
public record ColumnRun(
        List<Poured> poured,
        List<Fraction> fractions,
        Optional<LoadSolution> load,
        List<WeighedPool> pools,
        Set<Dye> stuck,
        Set<RunMishap> wentWrong,
        Place place) {

    public ColumnRun {
        poured = List.copyOf(poured);
        fractions = List.copyOf(fractions);
        pools = List.copyOf(pools);
        stuck = new TreeSet<>(stuck);
        wentWrong = wentWrong.isEmpty() ? EnumSet.noneOf(RunMishap.class) : EnumSet.copyOf(wentWrong);
    }

    /**
     * The solution that was loaded.
     *
     * @param diluted how many times it was diluted before reading, 1 or more
     */
    public record LoadSolution(double millilitres, Map<Dye, Double> absorbance, double diluted, Place place) {

        public LoadSolution {
            absorbance = new TreeMap<>(absorbance);
        }

        /** As {@link Fraction#absorbed}. */
        public OptionalDouble absorbed(Dye dye) {
            Double read = absorbance.get(dye);
            return read == null ? OptionalDouble.empty() : OptionalDouble.of(read * diluted * millilitres);
        }
    }

    /**
     * Fractions that were put together, dried and weighed.
     *
     * @param fractions their numbers
     */
    public record WeighedPool(List<Integer> fractions, double dryMilligrams, Place place) {
        public WeighedPool {
            fractions = List.copyOf(fractions);
        }
    }

    /** What was poured in all. */
    public double pouredMillilitres() {
        return poured.stream().mapToDouble(Poured::millilitres).sum();
    }

    /** What was collected in all. */
    public double collectedMillilitres() {
        return fractions.get(fractions.size() - 1).toMillilitres();
    }

    /** What had been poured before this pour, counted from 0. */
    public double pouredBefore(int pour) {
        return poured.subList(0, pour).stream().mapToDouble(Poured::millilitres).sum();
    }
}
