package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Salt and acidity; worked numbers stand in the table of check values. */
class IonicRetentionTest {

    @Test
    void salt_and_its_removal_cancel() {
        assertThat(IonicRetention.retentionChange(2, 1, 10) * IonicRetention.retentionChange(2, 1, 0.1))
                .isCloseTo(1, within(1e-12));
        assertThat(IonicRetention.retentionChange(3, 2, 1)).isEqualTo(1);
    }

    @Test
    void at_its_pKa_half_of_a_dye_is_ionised() {
        assertThat(new IonisableDye(8, 0.5, 4.8).ionisedShare(4.8)).isEqualTo(0.5);
        assertThat(new IonisableDye(8, 0.5, 4.8).retentionFactor(4.8)).isCloseTo(4.25, within(1e-12));
    }

    @Property
    void k_lies_between_that_of_the_acid_and_that_of_the_ion(
            @ForAll @DoubleRange(min = -500, max = 500) double pH, @ForAll @DoubleRange(max = 50) double acid) {
        assertThat(new IonisableDye(acid, 0.5, 4.8).retentionFactor(pH))
                .isBetween(Math.min(acid, 0.5) - 1e-9, Math.max(acid, 0.5) + 1e-9);
    }

    @Test
    void what_cannot_be_is_refused_with_what_was_expected() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IonicRetention.retentionChange(0, 1, 10))
                .withMessageContaining("the dye has 0 charges", "expected 1 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> IonicRetention.retentionChange(1, -1, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> IonicRetention.retentionChange(1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> IonicRetention.debyeNanometres(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IonicRetention.molality(100, 58.44))
                .withMessageContaining("below 100 %");
        assertThatIllegalArgumentException().isThrownBy(() -> IonicRetention.molality(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new IonisableDye(-1, 0, 4));
        assertThatIllegalArgumentException().isThrownBy(() -> new IonisableDye(1, 0, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new IonisableDye(1, 0, 4).ionisedShare(Double.NaN));
    }
}
