package org.wickwise.why;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.wickwise.plan.Advantage;
import org.wickwise.substance.Dye;

/**
 * What may come of running one strip.
 *
 * @param draws what came of it each time it was drawn, at least one
 */
public record Prospect(StripToRun strip, List<Draw> draws) {

    /** Normal quantile of a 95 % interval. */
    private static final double QUANTILE = 1.96;

    public Prospect {
        draws = List.copyOf(draws);
    }

    /**
     * One drawing of the truth and of the strip.
     *
     * @param outcome the plan with the strip, in short
     * @param changed whether the plan without the strip fails, or is worse than the one with it
     * @param better what the plan is better at than the one without the strip; empty when it is no better
     * @param right whether the plan without the strip and the plan with it are as good as the one that strips read without
     *     error would lead to; empty where nothing was seen before
     * @param truth Rf of each dye, in the order of their names
     */
    public record Draw(
            String outcome, boolean changed, Optional<Better> better, Optional<Right> right, List<Double> truth) {

        public Draw {
            truth = List.copyOf(truth);
        }
    }

    /**
     * A better plan.
     *
     * @param advantage over the plan there is; empty where there was none
     * @param fewerSteps by how many steps it is shorter; negative when it is longer
     */
    public record Better(Optional<Advantage> advantage, int fewerSteps) {}

    /** Which of the two plans was right. */
    public record Right(boolean before, boolean after) {
        int gain() {
            return (after ? 1 : 0) - (before ? 1 : 0);
        }
    }

    /** In how many draws the strip opened a better plan. */
    public int better() {
        return (int) draws.stream().filter(draw -> draw.better().isPresent()).count();
    }

    /** The chance that the strip opens a better plan, 0 to 1. */
    public double chance() {
        return (double) better() / draws.size();
    }

    /** Standard uncertainty of the chance from the number of draws: sqrt(p (1 - p)/n). */
    public double chanceUncertainty() {
        return Math.sqrt(chance() * (1 - chance()) / draws.size());
    }

    /** The high end of Wilson's 95 % interval of the chance: what so many draws cannot exclude, 0 to 1. */
    public double chanceAtMost() {
        double n = draws.size();
        double z2 = QUANTILE * QUANTILE;
        double spread = QUANTILE * Math.sqrt(chance() * (1 - chance()) / n + z2 / (4 * n * n));
        return Math.min(1, (chance() + z2 / (2 * n) + spread) / (1 + z2 / n));
    }

    /** Whether it was asked how often the right plan is chosen. */
    public boolean hasRight() {
        return draws.get(0).right().isPresent();
    }

    public double rightBefore() {
        return share(draw -> draw.right().filter(Right::before).isPresent());
    }

    public double rightAfter() {
        return share(draw -> draw.right().filter(Right::after).isPresent());
    }

    /** By how much the chance of choosing the right plan rises with the strip, -1 to 1; 0 where it was not asked. */
    public double gain() {
        return draws.stream().mapToInt(Prospect::gain).average().orElseThrow();
    }

    /** Standard uncertainty of the gain: the standard deviation of the differences over the root of their number. */
    public double gainUncertainty() {
        double mean = gain();
        double squares = draws.stream()
                .mapToDouble(draw -> Math.pow(gain(draw) - mean, 2))
                .sum();
        return Math.sqrt(squares) / draws.size();
    }

    private static int gain(Draw draw) {
        return draw.right().map(Right::gain).orElse(0);
    }

    /** What the strip is worth: the greater of the chance of a better plan and of the gain, 0 to 1. */
    public double worth() {
        return Math.max(chance(), gain());
    }

    /** Standard uncertainty of the worth. */
    public double worthUncertainty() {
        return chance() >= gain() ? chanceUncertainty() : gainUncertainty();
    }

    /** The better plan that came out most often, in the words of its first draw; empty where none did. */
    public Optional<Draw> usualBetter() {
        Map<String, Integer> counts = new TreeMap<>();
        draws.stream()
                .filter(draw -> draw.better().isPresent())
                .forEach(draw -> counts.merge(draw.outcome(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(
                                Map.Entry.<String, Integer>comparingByKey().reversed()))
                .flatMap(usual -> draws.stream()
                        .filter(draw ->
                                draw.better().isPresent() && draw.outcome().equals(usual.getKey()))
                        .findFirst());
    }

    /**
     * The dye on which it turns whether the plan changes.
     *
     * @param changed mean true Rf where the plan changed
     * @param unchanged mean true Rf where it did not
     */
    public record Turning(Dye dye, double changed, double unchanged) {}

    /** The dye whose Rf differs most between the draws that changed the plan and the others, in standard deviations. */
    public Optional<Turning> turning(List<Dye> dyes) {
        Optional<Turning> best = Optional.empty();
        double most = 0;
        for (int i = 0; i < dyes.size(); i++) {
            int dye = i;
            double[] changed = truths(dye, true);
            double[] unchanged = truths(dye, false);
            if (changed.length == 0 || unchanged.length == 0) {
                return Optional.empty();
            }
            double difference = Math.abs(mean(changed) - mean(unchanged));
            double spread = Math.sqrt((squares(changed) + squares(unchanged)) / draws.size());
            if (spread > 0 && difference / spread > most) {
                most = difference / spread;
                best = Optional.of(new Turning(dyes.get(dye), mean(changed), mean(unchanged)));
            }
        }
        return best;
    }

    private double[] truths(int dye, boolean changed) {
        return draws.stream()
                .filter(draw -> draw.changed() == changed)
                .mapToDouble(draw -> draw.truth().get(dye))
                .toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double squares(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(value -> Math.pow(value - mean, 2)).sum();
    }

    private double share(Predicate<Draw> wanted) {
        return (double) draws.stream().filter(wanted).count() / draws.size();
    }

    /** The most worth first; where two are worth the same, what was seen before comes last, then by name. */
    static final Comparator<Prospect> MOST_WORTH_FIRST = Comparator.comparingDouble(
                    (Prospect prospect) -> -prospect.worth())
            .thenComparing(prospect -> prospect.strip().kind().isRepeat())
            .thenComparing(prospect -> prospect.strip().eluent());
}
