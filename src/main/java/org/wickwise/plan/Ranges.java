package org.wickwise.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wickwise.column.Band;
import org.wickwise.column.Pour;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/**
 * How early and how late each dye of a route may leave, and how much of each eluent that asks to be kept ready. Volumes are
 * in column volumes from the first drop of the first step.
 *
 * <p>An end of a band lies two standard deviations from its middle. It is worked out anew with the Rf in each eluent at the
 * ends of its 95 % interval, one at a time, and with every k at the end of the 95 % interval of the transfer from strip to
 * column; what these move the end outwards is added as the root of the summed squares (JCGM 100:2008, 5.1.2, for each side by
 * itself, since k = 1/Rf - 1 is lopsided).
 *
 * @param byDye of the dyes that have a band
 * @param ready by step, column volumes of its eluent to keep ready; at least what is poured of it
 * @param mayFallShort by step, whether that may not be enough
 */
public record Ranges(Map<Dye, Range> byDye, List<Double> ready, List<Boolean> mayFallShort) {

    private static final double COVERAGE = 2;
    private static final double SIGMAS = 2;
    private static final double ONE_COLUMN_VOLUME = 1;

    public Ranges {
        ready = List.copyOf(ready);
        mayFallShort = List.copyOf(mayFallShort);
    }

    /**
     * When one dye may leave.
     *
     * @param middle of its band, at the best estimate
     * @param to infinite where the strips do not say that it moves at all
     */
    public record Range(double from, double middle, double to) {

        /** Whether an end can be told. */
        public boolean hasEnd() {
            return to < Double.POSITIVE_INFINITY;
        }
    }

    static Ranges of(Route route, Judgement judgement) {
        Map<Dye, Range> byDye = new LinkedHashMap<>();
        List<Double> ready = new ArrayList<>();
        List<Boolean> mayFallShort = new ArrayList<>();
        double most = judgement.limit("most eluent to keep ready");
        for (int step = 0; step < route.steps().size(); step++) {
            double before = route.elution().pouredBefore(step);
            double poured = route.elution().poured().get(step);
            double latest = poured;
            for (Dye dye : route.steps().get(step).leaving()) {
                Band band = route.elution().bands().get(dye);
                if (band != null) {
                    Leaving leaving = new Leaving(dye, band, step, route, judgement);
                    byDye.put(
                            dye,
                            new Range(
                                    Math.max(0, leaving.earliest()), band.middleMillilitres(), leaving.latest(SIGMAS)));
                    double tail = Math.max(SIGMAS, route.steps().get(step).tail());
                    latest = Math.max(latest, leaving.latest(tail) - before);
                }
            }
            ready.add(Math.min(latest, Math.max(most, poured)));
            mayFallShort.add(latest == Double.POSITIVE_INFINITY || Numbers.steady(latest) > Math.max(most, poured));
        }
        return new Ranges(byDye, ready, mayFallShort);
    }

    /** One dye that leaves in a step of a route. */
    private record Leaving(Dye dye, Band band, int step, Route route, Judgement judgement) {

        double earliest() {
            return end(-SIGMAS);
        }

        /** Infinite where some reading allows that the dye does not move in the eluent it is to leave in. */
        double latest(double sigmas) {
            return end(sigmas);
        }

        /** The end of the band so many standard deviations behind its middle, moved outwards by what is not known. */
        private double end(double sigmas) {
            double end = at(band, sigmas);
            double squares = otherwise(sigmas < 0).stream()
                    .map(this::leaving)
                    .mapToDouble(other -> other.map(found -> at(found, sigmas)).orElse(Double.POSITIVE_INFINITY))
                    .map(other -> Math.max(0, Math.signum(sigmas) * (other - end)))
                    .map(shift -> shift * shift)
                    .sum();
            return end + Math.signum(sigmas) * Math.sqrt(squares);
        }

        private static double at(Band band, double sigmas) {
            return band.middleMillilitres() + sigmas * band.sigmaMillilitres();
        }

        /** k in each eluent up to its own, as it may be instead: one reading changed, or the transfer of all. */
        private List<List<Double>> otherwise(boolean faster) {
            List<Double> likely = new ArrayList<>();
            List<List<Double>> all = new ArrayList<>();
            IntStream.rangeClosed(0, step)
                    .forEach(i -> likely.add(retardation(i)
                            .map(RetardationFactor::retentionFactor)
                            .orElse(Double.POSITIVE_INFINITY)));
            for (int i = 0; i <= step; i++) {
                Optional<RetardationFactor> known = retardation(i);
                if (known.isPresent()) {
                    double value = faster ? known.get().highest() : known.get().lowest();
                    List<Double> other = new ArrayList<>(likely);
                    other.set(i, (1 - value) / value);
                    all.add(other);
                }
            }
            double transfer = Math.pow(
                    10, (faster ? -COVERAGE : COVERAGE) * judgement.limit("scatter of the transfer to a column"));
            all.add(likely.stream().map(k -> k * transfer).toList());
            return all;
        }

        private Optional<RetardationFactor> retardation(int i) {
            return judgement.retardation(dye, route.steps().get(i).eluent());
        }

        private Optional<Band> leaving(List<Double> retentionFactors) {
            List<Pour> pours = IntStream.rangeClosed(0, step)
                    .mapToObj(i -> new Pour(route.elution().poured().get(i), retentionFactors.get(i)))
                    .toList();
            return Band.of(
                    new Loading(judgement).band(dye, route.packing().packing()),
                    pours,
                    ONE_COLUMN_VOLUME,
                    Loading.plates(judgement));
        }
    }
}
