package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Scatter within groups parted from scatter between them. */
class VarianceComponentsTest {

    /**
     * Yield of a dyestuff from five preparations of each of six batches: O. L. Davies and P. L. Goldsmith, Statistical Methods in
     * Research and Production, 4th ed. 1972, section 6.4; the data read in published code.
     */
    private static final List<double[]> DYESTUFF = List.of(
            new double[] {1545, 1440, 1440, 1520, 1580},
            new double[] {1540, 1555, 1490, 1560, 1495},
            new double[] {1595, 1550, 1605, 1510, 1560},
            new double[] {1445, 1440, 1595, 1465, 1545},
            new double[] {1595, 1630, 1515, 1635, 1625},
            new double[] {1520, 1455, 1450, 1480, 1445});

    /** Within 2451.25 and mean 1527.5 read in the pages of a statistics library; between 1764.05 from memory. */
    @Test
    void six_batches_of_a_dyestuff_give_their_published_components() {
        VarianceComponents found = VarianceComponents.of(DYESTUFF);
        assertThat(found.mean()).isEqualTo(1527.5, within(1e-9));
        assertThat(found.withinVariance()).isEqualTo(2451.25, within(1e-6));
        assertThat(found.betweenVariance()).isEqualTo(1764.05, within(0.005));
        assertThat(found.degreesOfFreedomWithin()).isEqualTo(24);
    }

    /** The same pages print 1388.3333 by greatest likelihood, which divides the mean square between by 6 and not by 5. */
    @Test
    void the_component_between_agrees_with_the_printed_one_of_greatest_likelihood() {
        VarianceComponents found = VarianceComponents.of(DYESTUFF);
        double meanSquareBetween = 5 * found.betweenVariance() + found.withinVariance();
        assertThat((meanSquareBetween * 5 / 6 - found.withinVariance()) / 5).isEqualTo(1388.3333, within(1e-4));
    }

    /** With equal uncertainties and groups of one size both methods say the same of the batches' means. */
    @Test
    void both_ways_of_reckoning_agree_where_groups_are_alike() {
        VarianceComponents found = VarianceComponents.of(DYESTUFF);
        double[] means = DYESTUFF.stream()
                .mapToDouble(values -> java.util.Arrays.stream(values).average().orElseThrow())
                .toArray();
        double[] uncertainties = new double[means.length];
        java.util.Arrays.fill(uncertainties, Math.sqrt(found.withinVariance() / 5));
        RandomEffects effects = RandomEffects.of(means, uncertainties);
        assertThat(effects.between() * effects.between()).isEqualTo(found.betweenVariance(), within(1e-6));
        assertThat(effects.mean()).isEqualTo(1527.5, within(1e-9));
    }

    @Test
    void groups_that_differ_less_than_their_repeats_do_not_scatter_between() {
        VarianceComponents found = VarianceComponents.of(List.of(new double[] {0.3, 0.5}, new double[] {0.31, 0.49}));
        assertThat(found.betweenVariance()).isZero();
    }

    @Test
    void without_a_repeat_nothing_can_be_parted() {
        assertThatThrownBy(() -> VarianceComponents.of(List.of(new double[] {0.3}, new double[] {0.4})))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one with a repeat");
    }

    /** Five repeats of one strip set, row CV-109 of the check values: their scatter is what lies within. */
    @Test
    void repeats_of_one_class_scatter_as_their_standard_deviation_says() {
        double[] repeats = {0.33, 0.35, 0.36, 0.34, 0.37};
        VarianceComponents found = VarianceComponents.of(List.of(repeats, new double[] {0.35}));
        assertThat(Math.sqrt(found.withinVariance())).isEqualTo(0.0158114, within(1e-6));
    }
}
