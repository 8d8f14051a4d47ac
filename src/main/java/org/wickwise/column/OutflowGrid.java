package org.wickwise.column;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Several Gaussian bands counted up to volumes that lie close together wherever a band is. */
final class OutflowGrid {

    private static final int STEPS_PER_SIGMA = 50;
    /** Only 6 in 100 000 of a Gaussian band lie further out. */
    private static final int SIGMAS_EACH_SIDE = 4;

    private final double[] millilitres;
    private final List<Double> amounts;
    /** Share of each band that has left up to each volume. */
    private final double[][] left;
    /** Amount of all bands that has left up to each volume. */
    private final double[] all;

    /** From one volume of the grid to another, to collect one band. */
    record Stretch(int band, int from, int to) {
        boolean isEmpty() {
            return from == to;
        }

        Stretch until(int cut) {
            return new Stretch(band, from, Math.max(from, Math.min(to, cut)));
        }

        Stretch since(int cut) {
            return new Stretch(band, Math.min(to, Math.max(from, cut)), to);
        }
    }

    OutflowGrid(List<Band> bands, List<Double> amounts) {
        this.amounts = List.copyOf(amounts);
        amounts.forEach(amount -> Expected.aboveZero("the amount of a dye", amount));
        // Volumes of two bands that coincide but for rounding would have nothing between them.
        double tooClose =
                bands.stream().mapToDouble(Band::sigmaMillilitres).min().orElse(1) / (1000 * STEPS_PER_SIGMA);
        millilitres = bands.stream()
                .flatMapToDouble(OutflowGrid::around)
                .map(volume -> Math.rint(volume / tooClose) * tooClose)
                .sorted()
                .distinct()
                .toArray();
        left = bands.stream().map(this::leftOf).toArray(double[][]::new);
        all = new double[millilitres.length];
        for (int band = 0; band < left.length; band++) {
            for (int at = 0; at < all.length; at++) {
                all[at] += amounts.get(band) * left[band][at];
            }
        }
    }

    private static DoubleStream around(Band band) {
        double sigma = Expected.aboveZero("the standard deviation of a band", band.sigmaMillilitres());
        int steps = STEPS_PER_SIGMA * SIGMAS_EACH_SIDE;
        return IntStream.rangeClosed(-steps, steps)
                .mapToDouble(step -> Math.max(0, band.middleMillilitres() + step * sigma / STEPS_PER_SIGMA));
    }

    private double[] leftOf(Band band) {
        NormalDistribution normal = new NormalDistribution(band.middleMillilitres(), band.sigmaMillilitres());
        return DoubleStream.of(millilitres).map(normal::cumulativeProbability).toArray();
    }

    /** Where a band is seen. */
    Stretch all(int band) {
        double unseen = new NormalDistribution().cumulativeProbability(-SIGMAS_EACH_SIDE);
        int from = 0;
        while (left[band][from + 1] <= unseen) {
            from++;
        }
        int to = millilitres.length - 1;
        while (left[band][to - 1] >= 1 - unseen) {
            to--;
        }
        return new Stretch(band, from, to);
    }

    /** The stretch within another that has the most of its band at the wanted purity; empty when none has it. */
    Stretch bestStretch(Stretch within, double purity) {
        int band = within.band();
        double[] own = left[band];
        double[] surplus = new double[millilitres.length];
        int[] lows = new int[millilitres.length];
        int lowCount = 0;
        Stretch best = within.until(within.from());
        double most = 0;
        for (int at = within.from(); at <= within.to(); at++) {
            surplus[at] = amounts.get(band) * own[at] - purity * all[at];
            if (lowCount == 0 || surplus[at] < surplus[lows[lowCount - 1]]) {
                lows[lowCount++] = at;
            }
            int from = earliestNotAbove(surplus, lows, lowCount, surplus[at]);
            if (own[at] - own[from] > most) {
                most = own[at] - own[from];
                best = new Stretch(band, from, at);
            }
        }
        return best;
    }

    /** The first of the falling lows that does not lie above a value; the last one never does. */
    private static int earliestNotAbove(double[] surplus, int[] lows, int lowCount, double value) {
        int low = 0;
        int high = lowCount - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (surplus[lows[middle]] <= value) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return lows[low];
    }

    /** Where two stretches overlap, the volume at which the later band begins to leave faster than the earlier one. */
    int cut(Stretch earlier, Stretch later) {
        int end = Math.min(earlier.to(), later.to());
        int at = later.from();
        while (at < end && leaving(earlier.band(), at) >= leaving(later.band(), at)) {
            at++;
        }
        return at;
    }

    private double leaving(int band, int at) {
        return amounts.get(band) * (left[band][at + 1] - left[band][at]);
    }

    Pool pool(Stretch stretch) {
        int band = stretch.band();
        if (stretch.isEmpty()) {
            int at = purest(band);
            return new Pool(band, millilitres[at], millilitres[at], purity(band, at, at + 1), 0);
        }
        return new Pool(
                band,
                millilitres[stretch.from()],
                millilitres[stretch.to()],
                purity(band, stretch.from(), stretch.to()),
                left[band][stretch.to()] - left[band][stretch.from()]);
    }

    private int purest(int band) {
        Stretch seen = all(band);
        int best = seen.from();
        for (int at = best + 1; at < seen.to(); at++) {
            if (purity(band, at, at + 1) > purity(band, best, best + 1)) {
                best = at;
            }
        }
        return best;
    }

    private double purity(int band, int from, int to) {
        double everything = all[to] - all[from];
        return everything > 0 ? amounts.get(band) * (left[band][to] - left[band][from]) / everything : 0;
    }
}
