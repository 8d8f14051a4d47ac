package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.wickwise.column.Band;
import org.wickwise.column.Pool;
import org.wickwise.column.Pools;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/**
 * What to keep of a route's outflow: for each fraction from which volume to which, so that it holds the wanted purity, and
 * how pure and how complete it then is. Every dye is taken to be there in the same amount. Volumes are in column volumes
 * from the first drop of the first step.
 *
 * @param flasks in the order of leaving; fractions of dyes that were not measured are left out
 */
public record Keeping(List<Flask> flasks) {

    private static final double PER_CENT = 100;
    private static final double SIGMAS_EACH_SIDE = 3;

    public Keeping {
        flasks = List.copyOf(flasks);
    }

    /**
     * One flask.
     *
     * @param step the step it leaves in, from 0
     * @param dyes what it is meant for, at least one
     * @param tooThin whether the wanted purity is reached only where next to nothing of the dye leaves, or where its step
     *     has ended
     * @param purity share of these dyes in it; empty for dyes that leave together, of which none is pure
     * @param recovery share of the dye that lands in it; empty for dyes that leave together
     */
    public record Flask(
            int step,
            List<Dye> dyes,
            double from,
            double to,
            boolean tooThin,
            Optional<Double> purity,
            Optional<Double> recovery) {

        public Flask {
            dyes = List.copyOf(dyes);
        }

        /** Whether there is nothing worth a flask: the wanted purity is reached nowhere, or only where it is too thin. */
        public boolean isEmpty() {
            return !(to > from);
        }
    }

    /**
     * The dyes that a step brings off alone by their spots, but of which the bed parts too little by its plates.
     *
     * @param leastRecovery share of a dye that has to land in its flask, 0 to 1
     */
    public List<Dye> overlapping(double leastRecovery) {
        return flasks.stream()
                .filter(flask -> flask.recovery()
                        .filter(share -> Numbers.steady(share) < leastRecovery)
                        .isPresent())
                .flatMap(flask -> flask.dyes().stream())
                .toList();
    }

    /** Those by the limit. */
    List<Dye> overlapping(Judgement judgement) {
        return overlapping(judgement.limit("least recovery alone") / PER_CENT);
    }

    /** At the wanted purity of the limits. */
    static Keeping of(Route route, Judgement judgement) {
        return of(route, judgement.limit("wanted purity") / PER_CENT);
    }

    /** @param wantedPurity share, above 0 and below 1 */
    public static Keeping of(Route route, double wantedPurity) {
        List<Dye> dyes = List.copyOf(route.elution().bands().keySet());
        List<Band> bands = dyes.stream().map(route.elution().bands()::get).toList();
        if (dyes.isEmpty()) {
            return new Keeping(List.of());
        }
        List<Pool> pools = Pools.best(bands, Collections.nCopies(bands.size(), 1.0), wantedPurity);
        List<Flask> flasks = new ArrayList<>();
        for (int step = 0; step < route.steps().size(); step++) {
            for (List<Dye> fraction : route.steps().get(step).fractions()) {
                if (dyes.containsAll(fraction)) {
                    flasks.add(
                            fraction.size() == 1
                                    ? alone(step, fraction.get(0), dyes, bands, pools, end(step, route))
                                    : together(step, fraction, route.elution()));
                }
            }
        }
        return new Keeping(flasks);
    }

    /** Where a step ends. */
    private static double end(int step, Route route) {
        return route.elution().poured().subList(0, step + 1).stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    /** The pool of one dye, without the endless thin ends of its band, and no further than its step is poured. */
    private static Flask alone(
            int step, Dye dye, List<Dye> dyes, List<Band> bands, List<Pool> pools, double endOfStep) {
        int number = dyes.indexOf(dye);
        Band band = bands.get(number);
        Pool pool =
                pools.stream().filter(one -> one.band() == number).findFirst().orElseThrow();
        double from = Math.max(
                0,
                Math.max(
                        pool.fromMillilitres(), band.middleMillilitres() - SIGMAS_EACH_SIDE * band.sigmaMillilitres()));
        double endOfBand =
                Math.min(pool.toMillilitres(), band.middleMillilitres() + SIGMAS_EACH_SIDE * band.sigmaMillilitres());
        double to = Math.min(endOfBand, endOfStep);
        boolean isWorthAFlask = to > from;
        double recovery = 0;
        if (isWorthAFlask) {
            recovery = endOfStep < endOfBand
                    ? Math.min(pool.recovery(), band.shareBetween(from, endOfStep))
                    : pool.recovery();
        }
        return new Flask(
                step,
                List.of(dye),
                from,
                to,
                !isWorthAFlask && !pool.isEmpty(),
                Optional.of(pool.purity()),
                Optional.of(recovery));
    }

    private static Flask together(int step, List<Dye> fraction, Elution elution) {
        double from = fraction.stream()
                .mapToDouble(dye -> elution.bands().get(dye).fromMillilitres())
                .min()
                .orElseThrow();
        double to = fraction.stream()
                .mapToDouble(dye -> elution.bands().get(dye).toMillilitres())
                .max()
                .orElseThrow();
        return new Flask(step, fraction, from, to, false, Optional.empty(), Optional.empty());
    }
}
