package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.strip.RetentionLine.Point;

class RetentionLineTest {

    private static final double SCATTER = 0.1;

    /** RM 0.80 at 0.23 and 0.20 at 0.31 give a slope of -7.5 and RM 0.575 at 0.26: check value CV-202. */
    @Test
    void two_strips_fix_a_line() {
        RetentionLine line = line(new Point(0.23, 0.8, 0.03), new Point(0.31, 0.2, 0.03));
        assertThat(line.slope()).isCloseTo(-7.5, within(1e-9));
        assertThat(line.rmAt(0.26)).isCloseTo(0.575, within(1e-9));
    }

    /** Between two strips of equal weight, u^2 = s^2 + (a^2 + b^2)(u1^2 + s^2), a and b the shares of either strip. */
    @Test
    void with_two_strips_the_uncertainty_is_the_propagated_one() {
        RetentionLine line = line(new Point(0, 1, 0.05), new Point(1, 0, 0.05));
        double one = 0.05 * 0.05 + SCATTER * SCATTER;
        assertThat(line.uncertaintyAt(0.25))
                .isCloseTo(Math.sqrt(SCATTER * SCATTER + (0.75 * 0.75 + 0.25 * 0.25) * one), within(1e-12));
    }

    @Test
    void a_prediction_is_never_surer_than_the_scatter_of_the_model() {
        List<Point> many = IntStream.range(0, 200)
                .mapToObj(i -> new Point(i / 200.0, 1 - i / 200.0, 1e-4))
                .toList();
        assertThat(RetentionLine.through(many, SCATTER).orElseThrow().uncertaintyAt(0.5))
                .isGreaterThan(SCATTER);
    }

    @Test
    void strips_that_scatter_more_than_they_may_widen_the_prediction() {
        RetentionLine straight = line(new Point(0, 1, 0.05), new Point(0.5, 0.5, 0.05), new Point(1, 0, 0.05));
        RetentionLine bent = line(new Point(0, 1, 0.05), new Point(0.5, 1.2, 0.05), new Point(1, 0, 0.05));
        assertThat(straight.birgeRatio()).isEqualTo(1);
        assertThat(bent.birgeRatio()).isGreaterThan(2);
        assertThat(bent.uncertaintyAt(0.5)).isGreaterThan(2 * straight.uncertaintyAt(0.5));
    }

    @Test
    void a_surer_strip_weighs_more() {
        RetentionLine line = line(new Point(0, 1, 0.02), new Point(1, 0, 0.02), new Point(1, 1, 1));
        assertThat(line.rmAt(1)).isLessThan(0.1);
    }

    @Test
    void one_strip_or_several_of_one_strength_fix_no_line() {
        assertThat(RetentionLine.through(List.of(new Point(0.3, 0.5, 0.05)), SCATTER))
                .isEmpty();
        assertThat(RetentionLine.through(List.of(new Point(0.3, 0.5, 0.05), new Point(0.3, 0.6, 0.05)), SCATTER))
                .isEmpty();
    }

    @Test
    void a_line_without_scatter_is_refused() {
        assertThatThrownBy(() -> RetentionLine.through(List.of(), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected a number above 0");
    }

    /**
     * A thousand dyes of known law: strips read with their uncertainty and off the line by the model's scatter, and a
     * last strip that the line has to foretell. The 95 % interval must hold between 90 and 99 % of them.
     */
    @ParameterizedTest(name = "{0} strips, predicted at {1}")
    @CsvSource({"2, 0.3", "2, 0.8", "3, 0.5", "4, 0.1", "5, 0.65"})
    void about_95_of_100_predictions_hold(int strips, double wanted) {
        Random random = new Random(20240 + strips);
        int within = 0;
        int draws = 1000;
        for (int draw = 0; draw < draws; draw++) {
            double rmAtZero = 0.6 + 0.6 * random.nextDouble();
            double slope = -1.2 - 0.6 * random.nextDouble();
            List<Point> points = IntStream.range(0, strips)
                    .mapToObj(i -> {
                        double x = i / (strips - 1.0);
                        double uncertainty = 0.03 + 0.05 * random.nextDouble();
                        double rm = rmAtZero + slope * x + random.nextGaussian() * Math.hypot(uncertainty, SCATTER);
                        return new Point(x, rm, uncertainty);
                    })
                    .toList();
            double shown = rmAtZero + slope * wanted + random.nextGaussian() * SCATTER;
            RetardationFactor reckoned =
                    RetentionLine.through(points, SCATTER).orElseThrow().retardationAt(wanted);
            double rf = 1 / (1 + Math.pow(10, shown));
            if (reckoned.lowest() <= rf && rf <= reckoned.highest()) {
                within++;
            }
        }
        assertThat(within / (double) draws).isBetween(0.90, 0.99);
    }

    private static RetentionLine line(Point... points) {
        return RetentionLine.through(List.of(points), SCATTER).orElseThrow();
    }
}
