package org.wickwise.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** What a liquid dissolves of a bed at most; worked numbers stand in the table of check values. */
class DissolvedBedTest {

    @Test
    void no_more_than_the_bed_can_go() {
        assertThat(DissolvedBed.by(1000, 115, 23.88).percentOfBed()).isEqualTo(100);
        assertThat(DissolvedBed.by(0, 115, 23.88).percentOfBed()).isZero();
    }

    @Test
    void what_cannot_be_is_refused_with_what_was_expected() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DissolvedBed.by(-1, 115, 20))
                .withMessageContaining("expected a number of 0 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> DissolvedBed.by(1, 115, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> DissolvedBed.by(Double.NaN, 115, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> DissolvedBed.milligramsPerKilogram(-1, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> DissolvedBed.milligramsPerKilogram(1, 0));
    }
}
