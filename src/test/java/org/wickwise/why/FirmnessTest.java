package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.WarmJudging;

/** Whether the redraws are as random as the uncertainty of a share takes them to be. */
class FirmnessTest {

    private static final Case CONFIRMED = Shipped.caseIn(Path.of("docs/examples/tag-dye-confirmed.yaml"));
    private static final int IN_HEPTANE = 0;
    private static final int IN_TOLUENE = 1;
    private static final int IN_ETHYL_ACETATE = 2;
    private static final double BEYOND_ONE_SIGMA = 1 - new NormalDistribution().cumulativeProbability(1);

    /** The fronts are read from the first numbers of a draw, and lie far from both ends. */
    private static double[] frontErrors(WarmJudging judging, int strip, long seed, int redraws) {
        double front = CONFIRMED.strips().get(strip).frontMillimetres().orElseThrow();
        double reading = judging.first().limit("usual ruler division") / Math.sqrt(12);
        return IntStream.range(0, redraws)
                .mapToDouble(drawing -> judging.redraw(seed, drawing)
                        .get(strip)
                        .strip()
                        .frontMillimetres()
                        .orElseThrow())
                .map(redrawn -> (redrawn - front) / (Math.sqrt(2) * reading))
                .toArray();
    }

    private static double[] spotErrors(WarmJudging judging, int strip, long seed, int redraws) {
        return IntStream.range(0, redraws)
                .mapToDouble(drawing ->
                        judging.redraw(seed, drawing).get(strip).errors().get(0))
                .toArray();
    }

    private static double shareBeyondOneSigma(double[] errors) {
        return (double) Arrays.stream(errors).filter(error -> error > 1).count() / errors.length;
    }

    private static double varianceOfAShare(int redraws) {
        return BEYOND_ONE_SIGMA * (1 - BEYOND_ONE_SIGMA) / redraws;
    }

    private static double correlation(double[] some, double[] others) {
        return new PearsonsCorrelation().correlation(some, others);
    }

    @Test
    void spots_lie_beyond_their_standard_uncertainty_as_often_as_gaussian_errors_do() {
        try (WarmJudging judging = Shipped.bench().judge().keepWarm(CONFIRMED)) {
            assertThat(shareBeyondOneSigma(spotErrors(judging, IN_TOLUENE, 1, 2000)))
                    .isCloseTo(BEYOND_ONE_SIGMA, within(4 * Math.sqrt(varianceOfAShare(2000))));
        }
    }

    @Test
    void a_share_wanders_from_seed_to_seed_as_far_as_its_uncertainty_says() {
        try (WarmJudging judging = Shipped.bench().judge().keepWarm(CONFIRMED)) {
            double seen = IntStream.range(0, 100)
                    .mapToDouble(seed -> shareBeyondOneSigma(frontErrors(judging, IN_HEPTANE, seed, 200)))
                    .map(share -> Math.pow(share - BEYOND_ONE_SIGMA, 2))
                    .average()
                    .orElseThrow();
            assertThat(seen / varianceOfAShare(200)).isBetween(0.5, 1.6);
        }
    }

    @Test
    void one_redraw_says_nothing_of_the_next() {
        try (WarmJudging judging = Shipped.bench().judge().keepWarm(CONFIRMED)) {
            double[] errors = frontErrors(judging, IN_HEPTANE, 1, 2000);
            double[] before = Arrays.copyOf(errors, errors.length - 1);
            double[] after = Arrays.copyOfRange(errors, 1, errors.length);
            assertThat(correlation(before, after)).isCloseTo(0, within(0.1));
        }
    }

    @Test
    void one_strip_says_nothing_of_another() {
        try (WarmJudging judging = Shipped.bench().judge().keepWarm(CONFIRMED)) {
            assertThat(correlation(
                            frontErrors(judging, IN_HEPTANE, 1, 2000), frontErrors(judging, IN_ETHYL_ACETATE, 1, 2000)))
                    .isCloseTo(0, within(0.1));
        }
    }
}
