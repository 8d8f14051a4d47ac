package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.special.Erf;
import org.wickwise.column.Band;

/**
 * What lands in each flask when flasks are changed at every step and, within a step, between two bands where both are
 * equally many standard deviations away. Every dye is taken to be there in the same amount.
 *
 * @param shares by flask, by dye: the share of the dye that lands in it
 * @param wanted by flask, the dyes it is meant for, as bits
 */
record Flasks(List<double[]> shares, List<Integer> wanted) {

    private static final double PER_CENT = 100;

    /** The flasks of a plan; dyes that were not measured are left out. */
    static Flasks of(Pouring pouring) {
        List<double[]> shares = new ArrayList<>();
        List<Integer> wanted = new ArrayList<>();
        double from = 0;
        double end = 0;
        for (int step = 0; step < pouring.moves().size(); step++) {
            end += pouring.poured().get(step);
            List<Integer> fractions = pouring.moves().get(step).fractions();
            for (int i = 0; i < fractions.size(); i++) {
                boolean last = i == fractions.size() - 1;
                double to = last ? end : cut(fractions.get(i), fractions.get(i + 1), pouring.out(), end);
                shares.add(shares(pouring.out(), from, to));
                wanted.add(fractions.get(i));
                from = Math.max(from, to);
            }
        }
        return new Flasks(shares, wanted);
    }

    /** Between the last band of one fraction and the first of the next; the end of the step where one is unknown. */
    private static double cut(int earlier, int later, List<Optional<Band>> bands, double end) {
        Optional<Band> last =
                bandsOf(earlier, bands).reduce((a, b) -> a.middleMillilitres() > b.middleMillilitres() ? a : b);
        Optional<Band> first =
                bandsOf(later, bands).reduce((a, b) -> a.middleMillilitres() < b.middleMillilitres() ? a : b);
        if (last.isEmpty() || first.isEmpty()) {
            return end;
        }
        double early = last.get().sigmaMillilitres();
        double late = first.get().sigmaMillilitres();
        return (last.get().middleMillilitres() * late + first.get().middleMillilitres() * early) / (early + late);
    }

    private static Stream<Band> bandsOf(int set, List<Optional<Band>> bands) {
        return IntStream.range(0, bands.size())
                .filter(dye -> (set & 1 << dye) != 0)
                .mapToObj(bands::get)
                .flatMap(Optional::stream);
    }

    private static double[] shares(List<Optional<Band>> bands, double from, double to) {
        return bands.stream()
                .mapToDouble(band ->
                        band.map(found -> below(found, to) - below(found, from)).orElse(0.0))
                .toArray();
    }

    private static double below(Band band, double volume) {
        double z = (volume - band.middleMillilitres()) / band.sigmaMillilitres();
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }

    /** Per cent of other dyes in each flask, summed over the flasks. */
    double percentOfPurityLost() {
        double sum = 0;
        for (int flask = 0; flask < wanted.size(); flask++) {
            sum += PER_CENT * (1 - purity(flask));
        }
        return sum;
    }

    /** Per cent of each dye outside its flask, summed over the dyes. */
    double percentOfRecoveryLost() {
        double sum = 0;
        for (int flask = 0; flask < wanted.size(); flask++) {
            sum += PER_CENT * lost(flask);
        }
        return sum;
    }

    /** The share of what is in the flask that is meant for it; 1 for a flask of which nothing is known. */
    double purity(int flask) {
        double meant = 0;
        double all = 0;
        for (int dye = 0; dye < shares.get(flask).length; dye++) {
            double share = shares.get(flask)[dye];
            all += share;
            meant += (wanted.get(flask) & 1 << dye) != 0 ? share : 0;
        }
        return all <= 0 ? 1 : meant / all;
    }

    /** How much of the dyes a flask is meant for does not land in it, summed over these dyes; unmeasured ones count 0. */
    private double lost(int flask) {
        double lost = 0;
        for (int dye = 0; dye < shares.get(flask).length; dye++) {
            boolean meant = (wanted.get(flask) & 1 << dye) != 0;
            lost += meant && shares.get(flask)[dye] > 0 ? 1 - shares.get(flask)[dye] : 0;
        }
        return lost;
    }
}
