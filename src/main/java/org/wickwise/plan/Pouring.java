package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wickwise.column.Band;
import org.wickwise.column.BandOnBed;
import org.wickwise.column.Pour;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.rulebook.Wishes.Cost;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;

/**
 * A plan on its way: what has been poured so far, where every band is, and what counts against it. Volumes are in column
 * volumes from the first drop of the first step.
 *
 * @param on the dyes still on the column, as bits
 * @param onBed by dye, where its band stands on the bed; empty where it has left or was not measured
 * @param out by dye, the band it left in; empty where it has not left or was not measured
 * @param poured how much of each eluent was poured
 * @param counts what each criterion counts, in the order of the preferences
 */
record Pouring(
        Choices choices,
        Preferences preferences,
        Packing packing,
        int on,
        List<Move> moves,
        List<Double> tails,
        List<Double> poured,
        List<Optional<BandOnBed>> onBed,
        List<Optional<Band>> out,
        double[] counts) {

    private static final double ONE_COLUMN_VOLUME = 1;

    /** The column packed and loaded, nothing poured yet. */
    static Pouring packed(Packing packing, Choices choices, Preferences preferences) {
        int dyes = choices.dyes().size();
        return new Pouring(
                choices,
                preferences,
                packing,
                choices.everyDye(),
                List.of(),
                List.of(),
                List.of(),
                packing.loaded().stream().map(Optional::of).toList(),
                Collections.nCopies(dyes, Optional.empty()),
                packingCounts(packing, preferences));
    }

    private static double[] packingCounts(Packing packing, Preferences preferences) {
        Cost cost = preferences.wishes().cost();
        return preferences.criteria().stream()
                .mapToDouble(criterion -> criterion == Criterion.COST
                        ? cost.burden() * packing.burden()
                                + cost.price() * packing.columnVolumes() * packing.pricePerColumnVolume()
                        : criterion.countPacking(packing))
                .toArray();
    }

    OptionalInt lastEluent() {
        return moves.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(moves.get(moves.size() - 1).eluent());
    }

    /** Whether the bottles hold what the last step takes; where they do not say, they do. */
    boolean isWithinTheBottle() {
        int last = moves.size() - 1;
        OptionalDouble held = moves.get(last).pourable(choices).heldColumnVolumes();
        return held.isEmpty() || poured.get(last) <= held.getAsDouble();
    }

    double pouredSoFar() {
        double sum = 0;
        for (double one : poured) {
            sum += one;
        }
        return sum;
    }

    /**
     * The same plan one step further.
     *
     * @param tail after how many standard deviations of its last band the step ends
     */
    Pouring then(Move move, double tail) {
        Pourable pourable = move.pourable(choices);
        List<Optional<Band>> nextOut = new ArrayList<>(out);
        double before = pouredSoFar();
        double until = before;
        int leaving = move.leaving();
        for (int dye = 0; dye < choices.dyes().size(); dye++) {
            if ((leaving & 1 << dye) != 0 && out.get(dye).isEmpty()) {
                Optional<Band> band = band(dye, pourable);
                nextOut.set(dye, band);
                until = Math.max(
                        until,
                        band.map(found -> found.middleMillilitres() + tail * found.sigmaMillilitres())
                                .orElse(before + unmeasured(dye, pourable, tail)));
            }
        }
        double volume = Math.max(choices.leastColumnVolumes(), until - before);
        int creeping = 0;
        List<Optional<BandOnBed>> nextOnBed = new ArrayList<>(onBed);
        for (int dye = 0; dye < choices.dyes().size(); dye++) {
            boolean stays = (move.staying() & 1 << dye) != 0;
            Optional<BandOnBed> pushed = stays ? pushed(dye, pourable, volume) : Optional.empty();
            boolean counted = !moves.isEmpty() && hasCrept(onBed.get(dye));
            creeping += hasCrept(pushed) && !counted ? 1 : 0;
            if (pushed.filter(bed -> bed.position() >= 1).isPresent()) {
                nextOut.set(dye, band(dye, pourable));
                pushed = Optional.empty();
            }
            nextOnBed.set(dye, pushed);
        }
        return new Pouring(
                choices,
                preferences,
                packing,
                move.staying(),
                with(moves, move),
                with(tails, tail),
                with(poured, volume),
                List.copyOf(nextOnBed),
                List.copyOf(nextOut),
                countsWith(move, volume, creeping));
    }

    private static <T> List<T> with(List<T> some, T one) {
        List<T> more = new ArrayList<>(some);
        more.add(one);
        return List.copyOf(more);
    }

    private Optional<Band> band(int dye, Pourable pourable) {
        return onBed.get(dye).flatMap(bed -> retention(dye, pourable)
                .flatMap(k -> bed.leavingIn(k, ONE_COLUMN_VOLUME, choices.plates())));
    }

    /** The volume of an unmeasured step, or what a dye at the top of the bed takes if its speed is known in this eluent only. */
    private double unmeasured(int dye, Pourable pourable, double tail) {
        double fromTheTop = retention(dye, pourable)
                .filter(k -> k < Double.POSITIVE_INFINITY)
                .map(k -> (1 + k) * (1 + tail / Math.sqrt(choices.plates())))
                .orElse(0.0);
        return Math.max(choices.unmeasuredColumnVolumes(), fromTheTop);
    }

    /** Where a dye that stays is after so much of an eluent; at the outlet, if it is carried out before its turn. */
    private Optional<BandOnBed> pushed(int dye, Pourable pourable, double volume) {
        return onBed.get(dye).flatMap(bed -> retention(dye, pourable)
                .map(k -> bed.after(new Pour(volume, k), ONE_COLUMN_VOLUME, choices.plates())));
    }

    /** A dye that was seen to stay does not move, whether anybody measured or not. */
    private static Optional<Double> retention(int dye, Pourable pourable) {
        Optional<Reach> reach = pourable.reach().get(dye);
        Optional<Double> measured = reach.flatMap(Reach::retardation).map(RetardationFactor::retentionFactor);
        return measured.or(() ->
                reach.filter(found -> found.behaviour() == Behaviour.STAYS).map(stays -> Double.POSITIVE_INFINITY));
    }

    /** The dyes still on the column that have crept further than they may, as bits. */
    int crept() {
        int crept = 0;
        for (int dye = 0; dye < choices.dyes().size(); dye++) {
            boolean outBeforeItsStep = onBed.get(dye).isEmpty() && out.get(dye).isPresent();
            crept |= outBeforeItsStep || hasCrept(onBed.get(dye)) ? 1 << dye : 0;
        }
        return crept & on;
    }

    private boolean hasCrept(Optional<BandOnBed> band) {
        return band.filter(bed -> bed.position() > choices.creepLimit()).isPresent();
    }

    private double[] countsWith(Move move, double volume, int creeping) {
        double[] next = counts.clone();
        List<Criterion> criteria = preferences.criteria();
        for (int i = 0; i < next.length; i++) {
            next[i] += switch (criteria.get(i)) {
                case CREEPING -> creeping;
                case COST ->
                    costOf(move.pourable(choices), volume, preferences.wishes().cost());
                default ->
                    criteria.get(i).count(move, choices)
                            + criteria.get(i).countAfter(lastEluent(), move.eluent(), choices);
            };
        }
        return next;
    }

    /** What a step costs that pours so many column volumes; what it loses of the dyes is not in it. */
    static double costOf(Pourable pourable, double columnVolumes, Cost cost) {
        return cost.step()
                + cost.burden() * pourable.burden()
                + columnVolumes
                        * (cost.columnVolume()
                                + cost.minute() * pourable.minutesPerColumnVolume()
                                + cost.price() * pourable.pricePerColumnVolume());
    }

    /** The counts of a plan that has brought every dye off: with what is lost of purity and recovery. */
    double[] finalCounts(Flasks flasks) {
        double[] all = counts.clone();
        int cost = preferences.criteria().indexOf(Criterion.COST);
        if (cost >= 0) {
            Cost weights = preferences.wishes().cost();
            all[cost] += weights.purityLost() * flasks.percentOfPurityLost()
                    + weights.recoveryLost() * flasks.percentOfRecoveryLost();
        }
        return all;
    }
}
