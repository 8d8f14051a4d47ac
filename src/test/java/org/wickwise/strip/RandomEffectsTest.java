package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Groups of one class put together, with the scatter between them. */
class RandomEffectsTest {

    /**
     * Thirteen trials, logarithms of risk ratios with their variances: G. A. Colditz and others, J. Am. Med. Assoc. 1994, 271,
     * 698, as reckoned by R. DerSimonian and N. Laird, Control. Clin. Trials 1986, 7, 177: between 0.3088 (variance), mean
     * -0.7141, standard error 0.1787, Q 152.23. Figures from memory.
     */
    @Test
    void thirteen_published_trials_give_their_mean_and_their_scatter_between() {
        double[] values = {
            -0.8893, -1.5854, -1.3481, -1.4416, -0.2175, -0.7861, -1.6209, 0.0120, -0.4694, -1.3713, -0.3394, 0.4459,
            -0.0173
        };
        double[] variances = {
            0.3256, 0.1946, 0.4154, 0.0200, 0.0512, 0.0069, 0.2230, 0.0040, 0.0564, 0.0730, 0.0124, 0.5325, 0.0714
        };
        double[] uncertainties =
                java.util.Arrays.stream(variances).map(Math::sqrt).toArray();
        RandomEffects together = RandomEffects.of(values, uncertainties);
        assertThat(together.between() * together.between()).isEqualTo(0.3088, within(0.002));
        assertThat(together.mean()).isEqualTo(-0.7141, within(0.001));
        assertThat(together.uncertainty()).isEqualTo(0.1787, within(0.0005));
        assertThat(together.heterogeneity()).isEqualTo(152.23, within(1.0));
    }

    @Property(tries = 200)
    void equal_readings_scatter_nothing_between_groups(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double value,
            @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 0.01, max = 0.05) Double> uncertainties) {
        RandomEffects together = RandomEffects.of(uncertainties.stream()
                .map(uncertainty -> new RetardationFactor(value, uncertainty))
                .toList());
        assertThat(together.between()).isZero();
        assertThat(together.mean()).isEqualTo(value, within(1e-9));
    }
}
