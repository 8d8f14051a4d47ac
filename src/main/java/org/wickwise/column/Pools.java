package org.wickwise.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where to cut the outflow, so that each pool has the wanted purity and as much of its dye as that allows. A pool is one
 * stretch of volume; every other band counts as impurity. Bands are Gaussian.
 *
 * <p>A stretch from a to b has purity p or more where own - p all does not fall from a to b, both counted up to a volume.
 * For every end the earliest such beginning is looked up, which gives the most of the dye; the best of these is exact on
 * a grid of a fiftieth of each band's standard deviation.
 */
public final class Pools {

    private Pools() {}

    /**
     * @param bands in any order, each with a standard deviation above 0
     * @param amounts of the dyes, in the order of the bands and one unit, above 0
     * @param wantedPurity share of the pool's own dye, above 0 and below 1
     * @return one pool for each band in the order in which they leave; neighbours may touch and do not overlap; a
     *     band that reaches the purity nowhere has an empty pool
     */
    public static List<Pool> best(List<Band> bands, List<Double> amounts, double wantedPurity) {
        if (bands.size() != amounts.size()) {
            throw new IllegalArgumentException("there are " + bands.size() + " bands and " + amounts.size()
                    + " amounts; expected as many of each");
        }
        if (!(wantedPurity > 0 && wantedPurity < 1)) {
            throw new IllegalArgumentException(
                    "the wanted purity is " + wantedPurity + "; expected above 0 and below 1");
        }
        OutflowGrid grid = new OutflowGrid(bands, amounts);
        return withoutOverlap(grid, bands.size(), wantedPurity).stream()
                .map(grid::pool)
                .sorted(Comparator.comparingDouble(Pool::fromMillilitres).thenComparing(Pool::band))
                .toList();
    }

    /** What lies between the pools, those that are empty left out. */
    public static List<Between> between(List<Pool> pools) {
        List<Pool> filled = pools.stream().filter(pool -> !pool.isEmpty()).toList();
        return IntStream.range(1, filled.size())
                .mapToObj(i -> new Between(
                        filled.get(i - 1).band(),
                        filled.get(i).band(),
                        filled.get(i - 1).toMillilitres(),
                        filled.get(i).fromMillilitres()))
                .toList();
    }

    /**
     * Each band's own best stretch, in the order of their beginnings, then a cut where two overlap. The cut may leave a
     * stretch that is less pure, where one band lies within another, so what is left of both is searched once more.
     */
    private static List<OutflowGrid.Stretch> withoutOverlap(OutflowGrid grid, int bands, double purity) {
        List<OutflowGrid.Stretch> own = IntStream.range(0, bands)
                .mapToObj(band -> grid.bestStretch(grid.all(band), purity))
                .sorted(Comparator.comparingInt(OutflowGrid.Stretch::from))
                .toList();
        List<OutflowGrid.Stretch> apart = new ArrayList<>();
        for (OutflowGrid.Stretch next : own) {
            int before = lastFilled(apart);
            if (before < 0 || next.isEmpty() || apart.get(before).to() <= next.from()) {
                apart.add(next);
            } else {
                OutflowGrid.Stretch earlier = apart.get(before);
                // An earlier cut may have moved the beginning of the band before behind that of this one.
                int cut = grid.cut(earlier, next.since(earlier.from()));
                apart.set(before, grid.bestStretch(earlier.until(cut), purity));
                apart.add(grid.bestStretch(next.since(cut), purity));
            }
        }
        return apart;
    }

    private static int lastFilled(List<OutflowGrid.Stretch> stretches) {
        int last = stretches.size() - 1;
        while (last >= 0 && stretches.get(last).isEmpty()) {
            last--;
        }
        return last;
    }
}
