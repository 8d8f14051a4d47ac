package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.column.CollectedBand.Portion;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/**
 * Neighbouring fractions of a finished column to put together for one dye.
 *
 * @param first number of the first fraction
 * @param last number of the last
 * @param purity share of the dye in it; empty where that is not known
 * @param recovery share of the dye's load in it, or of what was collected where the load is not known; empty where neither is
 */
public record PooledFractions(Dye dye, int first, int last, Optional<Share> purity, Optional<Share> recovery) {

    private static final double COVERAGE = 2;

    /**
     * A share with what it may be, 0 to 1.
     *
     * @param byEye whether it is a range by eye, and not a value with a 95 % interval
     */
    public record Share(double value, double lowest, double highest, boolean byEye) {

        private static Share of(double value, double uncertainty) {
            return new Share(value, Math.max(0, value - COVERAGE * uncertainty), value + COVERAGE * uncertainty, false);
        }

        private static Share between(double lowest, double highest) {
            return new Share((lowest + highest) / 2, lowest, highest, true);
        }
    }

    /**
     * The stretch of fractions with the most of the dye that holds the wanted purity. By absorbance, every stretch is tried,
     * and a dye counts by its absorbance; a fraction is for the dye it holds most of, and left out where it shows a dye that nobody read. By eye, it is the longest
     * stretch that shows no other dye, and the ranges come from the bands, every dye taken to be there in the same amount.
     *
     * @param wantedPurity share, above 0 and below 1
     * @return empty when the dye is in no fraction, or no stretch has the wanted purity
     */
    public static Optional<PooledFractions> of(DyeOutcome dye, RunOutcome outcome, double wantedPurity) {
        return dye.byAbsorbance() ? byAbsorbance(dye, outcome, wantedPurity) : byEye(dye, outcome);
    }

    /** Amounts of one stretch, grown fraction by fraction. */
    private record Stretch(int first, int last, double own, double ownSquare, double others, double othersSquare) {

        boolean isAsMuchInLess(Stretch other) {
            return own == other.own && last - first < other.last - other.first;
        }

        double purity() {
            return own == 0 ? 0 : own / (own + others);
        }

        /** P = a/(a + b), so u(P) = sqrt((b u(a))^2 + (a u(b))^2)/(a + b)^2 (JCGM 100:2008, 5.1.2). */
        double purityUncertainty() {
            double all = own + others;
            return Math.sqrt(others * others * ownSquare + own * own * othersSquare) / (all * all);
        }
    }

    private static Optional<PooledFractions> byAbsorbance(DyeOutcome dye, RunOutcome outcome, double wantedPurity) {
        List<Fraction> fractions = outcome.run().fractions();
        Optional<Stretch> best = Optional.empty();
        for (int first = 0; first < fractions.size(); first++) {
            Stretch stretch = new Stretch(first, first, 0, 0, 0, 0);
            for (int last = first; last < fractions.size() && isFor(dye.dye(), fractions.get(last), outcome); last++) {
                stretch = with(stretch, fractions.get(last), dye.dye(), outcome);
                boolean isBetter = Numbers.steady(stretch.purity()) >= wantedPurity
                        && (best.isEmpty() || stretch.own() > best.get().own() || stretch.isAsMuchInLess(best.get()));
                best = isBetter ? Optional.of(stretch) : best;
            }
        }
        return best.map(found -> new PooledFractions(
                dye.dye(),
                fractions.get(found.first()).number(),
                fractions.get(found.last()).number(),
                Optional.of(Share.of(found.purity(), found.purityUncertainty())),
                dye.balance()
                        .map(balance -> Share.of(
                                found.own() / balance.loaded().orElse(balance.collected()),
                                balance.shareUncertainty(found.own(), Math.sqrt(found.ownSquare()))))));
    }

    /** Whether all its dyes were read, and none of them more than this one. So no fraction is for two dyes. */
    private static boolean isFor(Dye dye, Fraction fraction, RunOutcome outcome) {
        double own = fraction.absorbed(dye).orElse(0);
        return outcome.dyes().stream().filter(other -> !other.dye().equals(dye)).allMatch(other -> {
            boolean isUnread = fraction.shows(other.dye())
                    && fraction.absorbed(other.dye()).isEmpty();
            double others = fraction.absorbed(other.dye()).orElse(0);
            return !isUnread && (others == 0 || others < own);
        });
    }

    private static Stretch with(Stretch stretch, Fraction fraction, Dye dye, RunOutcome outcome) {
        double own = stretch.own();
        double ownSquare = stretch.ownSquare();
        double others = stretch.others();
        double othersSquare = stretch.othersSquare();
        for (DyeOutcome other : outcome.dyes()) {
            Portion portion = RunOutcome.portion(fraction, other.dye(), outcome.tolerances());
            if (other.dye().equals(dye)) {
                own += portion.amount();
                ownSquare += portion.uncertainty() * portion.uncertainty();
            } else {
                others += portion.amount();
                othersSquare += portion.uncertainty() * portion.uncertainty();
            }
        }
        return new Stretch(stretch.first(), fraction.number() - 1, own, ownSquare, others, othersSquare);
    }

    private static Optional<PooledFractions> byEye(DyeOutcome dye, RunOutcome outcome) {
        List<Fraction> longest = List.of();
        List<Fraction> now = new ArrayList<>();
        for (Fraction fraction : outcome.run().fractions()) {
            boolean alone = fraction.shows(dye.dye())
                    && outcome.dyes().stream().noneMatch(other -> !other.equals(dye) && fraction.shows(other.dye()));
            if (!alone) {
                now = new ArrayList<>();
                continue;
            }
            now.add(fraction);
            longest = volume(now) > volume(longest) ? List.copyOf(now) : longest;
        }
        if (longest.isEmpty()) {
            return Optional.empty();
        }
        Fraction first = longest.get(0);
        Fraction last = longest.get(longest.size() - 1);
        Optional<Share> recovery = share(dye, first, last);
        return Optional.of(new PooledFractions(
                dye.dye(), first.number(), last.number(), purity(dye, outcome, first, last, recovery), recovery));
    }

    private static double volume(List<Fraction> fractions) {
        return fractions.stream().mapToDouble(Fraction::millilitres).sum();
    }

    /** Between what and what the share of the band between two volumes may lie, its middle and width being uncertain. */
    private static Optional<Share> share(DyeOutcome dye, Fraction first, Fraction last) {
        CollectedBand band = dye.observed().orElseThrow();
        if (band.sigmaMillilitres().isEmpty() || band.isCut()) {
            return Optional.empty();
        }
        double sigma = band.sigmaMillilitres().getAsDouble();
        double[] shares = DoubleStream.of(-COVERAGE, 0, COVERAGE)
                .flatMap(wider -> DoubleStream.of(-COVERAGE, 0, COVERAGE).map(later -> new Band(
                                band.middleMillilitres() + later * band.middleUncertainty(),
                                Math.max(sigma / 3, sigma + wider * band.sigmaUncertainty()))
                        .shareBetween(first.fromMillilitres(), last.toMillilitres())))
                .toArray();
        return Optional.of(Share.between(
                DoubleStream.of(shares).min().orElseThrow(),
                DoubleStream.of(shares).max().orElseThrow()));
    }

    private static Optional<Share> purity(
            DyeOutcome dye, RunOutcome outcome, Fraction first, Fraction last, Optional<Share> own) {
        double least = 0;
        double most = 0;
        for (DyeOutcome other : outcome.inOrder()) {
            if (!other.equals(dye)) {
                Optional<Share> share = share(other, first, last);
                if (share.isEmpty()) {
                    return Optional.empty();
                }
                least += share.get().lowest();
                most += share.get().highest();
            }
        }
        if (own.isEmpty() || own.get().lowest() == 0) {
            return Optional.empty();
        }
        return Optional.of(Share.between(
                own.get().lowest() / (own.get().lowest() + most),
                own.get().highest() / (own.get().highest() + least)));
    }
}
