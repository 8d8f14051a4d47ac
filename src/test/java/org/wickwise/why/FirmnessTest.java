package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.WarmJudging;
import org.wickwise.strip.Redraw;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

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

    /** Four invented strips in one solvent that no number tells apart, two of them on another stationary phase. */
    private static Case alike(Path folder) throws IOException {
        Path file = folder.resolve("alike.yaml");
        Files.writeString(
                file,
                """
                title: Invented
                mixture: {dyes: [{name: plum, class: neutral}, {name: sand, class: neutral}]}
                column: {stationary phase: silica}
                setting: college
                shelf: [heptane, ethyl acetate]
                strips:
                  - {solvent: ethyl acetate, front mm: 80, travel mm: {plum: 48, sand: 20}}
                  - {solvent: ethyl acetate, front mm: 80, travel mm: {plum: 48, sand: 20}}
                  - {solvent: ethyl acetate, stationary phase: alumina, front mm: 80, travel mm: {plum: 48, sand: 20}}
                  - {solvent: ethyl acetate, stationary phase: alumina, front mm: 80, travel mm: {plum: 48, sand: 20}}
                """);
        return Shipped.caseIn(file);
    }

    @Test
    void strips_that_repeat_one_another_are_read_with_errors_of_their_own(@TempDir Path folder) throws IOException {
        try (WarmJudging judging = Shipped.bench().judge().keepWarm(alike(folder))) {
            for (int one = 0; one < 4; one++) {
                for (int other = 0; other < one; other++) {
                    assertThat(correlation(spotErrors(judging, one, 1, 1000), spotErrors(judging, other, 1, 1000)))
                            .as("strips %d and %d", one, other)
                            .isCloseTo(0, within(0.12));
                }
            }
        }
    }

    @Test
    void strips_that_repeat_one_another_keep_their_errors_when_they_are_listed_otherwise(@TempDir Path folder)
            throws IOException {
        Case written = alike(folder);
        List<Strip> turned = new ArrayList<>(written.strips());
        Collections.reverse(turned);
        assertThat(redrawn(written.with(turned))).isEqualTo(redrawn(written));
    }

    private static Map<Place, Strip> redrawn(Case written) {
        try (WarmJudging judging = Shipped.bench().judge().keepWarm(written)) {
            return judging.redraw(1, 0).stream()
                    .map(Redraw::strip)
                    .collect(Collectors.toMap(Strip::place, Function.identity()));
        }
    }

    @Test
    void what_two_strips_say_scatters_as_the_uncertainty_of_their_mean(@TempDir Path folder) throws IOException {
        Case written = alike(folder);
        Judgement judgement = Shipped.bench().judge().judge(written);
        Dye plum = written.dyes().get(0);
        Eluent eluent = written.strips().get(0).eluent();
        Beliefs beliefs = new Beliefs(judgement, 1);
        StripToRun next = new StripToRun(eluent, StripToRun.Kind.FURTHER);
        double scatter = new StandardDeviation()
                .evaluate(IntStream.range(0, 1000)
                        .mapToDouble(drawing -> beliefs.draw(next, drawing).retardation(plum, eluent))
                        .toArray());
        double uncertainty = judgement
                .measured(plum, eluent)
                .orElseThrow()
                .retardationFactor()
                .uncertainty();
        assertThat(scatter / uncertainty).isCloseTo(1, within(0.1));
    }
}
