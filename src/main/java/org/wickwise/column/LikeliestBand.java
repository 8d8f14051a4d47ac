package org.wickwise.column;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.wickwise.column.CollectedBand.Portion;

/**
 * The Gaussian band that is the likeliest to fall into fractions of these limits in these shares: expectation and
 * maximisation for grouped readings (Dempster, Laird and Rubin, J. R. Stat. Soc. B 1977, 39, 1, from memory).
 */
final class LikeliestBand {

    private static final int MOST_ROUNDS = 500;
    private static final double NEAR_ENOUGH = 1e-7;
    private static final double HARDLY_ANY = 1e-12;
    /** As much of a band may be too faint to be read in the fractions around it. Our choice. */
    private static final double MOST_TOO_FAINT = 0.02;

    private LikeliestBand() {}

    /** Mean and variance of the amounts as they stand, each taken to be spread evenly over its fraction. */
    static double[] moments(List<Portion> filled, double total) {
        double mean = filled.stream()
                        .mapToDouble(portion -> portion.amount() * portion.middle())
                        .sum()
                / total;
        double variance = filled.stream()
                        .mapToDouble(portion -> portion.amount()
                                * (Math.pow(portion.middle() - mean, 2) + portion.width() * portion.width() / 12))
                        .sum()
                / total;
        return new double[] {mean, variance};
    }

    /**
     * Mean and variance of the likeliest band.
     *
     * @param start mean and variance to begin with
     */
    static double[] of(List<Portion> filled, double total, double[] start) {
        double[] now = start;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double sigma = Math.sqrt(now[1]);
            double mean = 0;
            double square = 0;
            double share = 0;
            double[] rest = {now[0], now[1] + now[0] * now[0]};
            for (Portion portion : filled) {
                double[] within = within(portion, now[0], sigma);
                mean += portion.amount() / total * within[1];
                square += portion.amount() / total * within[2];
                share += within[0];
                rest[0] -= within[0] * within[1];
                rest[1] -= within[0] * within[2];
            }
            double faint = Math.min(MOST_TOO_FAINT, Math.max(0, 1 - share) / share);
            double scale = share < 1 ? faint / (1 - share) : 0;
            mean = (mean + scale * rest[0]) / (1 + faint);
            square = (square + scale * rest[1]) / (1 + faint);
            double[] next = {mean, square - mean * mean};
            boolean same = Math.abs(next[0] - now[0]) < NEAR_ENOUGH * sigma
                    && Math.abs(Math.sqrt(next[1]) - sigma) < NEAR_ENOUGH * sigma;
            now = next;
            if (same) {
                break;
            }
        }
        return now;
    }

    /** Share, mean and mean square of the part of a Gaussian band that falls into a fraction. */
    private static double[] within(Portion portion, double mean, double sigma) {
        NormalDistribution unit = new NormalDistribution();
        double a = (portion.fromMillilitres() - mean) / sigma;
        double b = (portion.toMillilitres() - mean) / sigma;
        double share = unit.cumulativeProbability(b) - unit.cumulativeProbability(a);
        if (share < HARDLY_ANY) {
            double nearest = a > 0 ? portion.fromMillilitres() : portion.toMillilitres();
            return new double[] {0, nearest, nearest * nearest};
        }
        double first = (unit.density(a) - unit.density(b)) / share;
        double second = 1 + (a * unit.density(a) - b * unit.density(b)) / share;
        double inside = mean + sigma * first;
        double spread = Math.max(0, second - first * first) * sigma * sigma;
        return new double[] {share, inside, inside * inside + spread};
    }
}
