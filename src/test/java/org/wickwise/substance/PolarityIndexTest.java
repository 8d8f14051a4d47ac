package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PolarityIndexTest {

    @Property(tries = 100)
    void the_share_for_an_index_gives_that_index(
            @ForAll @DoubleRange(min = 0, max = 3) double weak,
            @ForAll @DoubleRange(min = 4, max = 10) double strong,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double index = PolarityIndex.ofBlend(new double[] {1 - share, share}, new double[] {weak, strong});
        double clamped = Math.min(Math.max(index, weak), strong);
        assertThat(PolarityIndex.shareForPolarityIndex(clamped, weak, strong)).isCloseTo(share, within(1e-9));
    }

    @Test
    void a_more_polar_eluent_holds_less_on_an_adsorbent_and_more_on_a_reversed_phase() {
        assertThat(PolarityIndex.retentionRatioNormalPhase(1, 3)).isCloseTo(0.1, within(1e-12));
        assertThat(PolarityIndex.retentionRatioReversedPhase(1, 3)).isCloseTo(10, within(1e-12));
    }

    @Test
    void an_index_outside_the_two_is_refused_with_what_was_expected() {
        assertThatThrownBy(() -> PolarityIndex.shareForPolarityIndex(6, 0.1, 4.4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected one between the two");
        assertThatThrownBy(() -> PolarityIndex.ofBlend(new double[] {1}, new double[] {0.1, 4.4}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected one for each");
    }
}
