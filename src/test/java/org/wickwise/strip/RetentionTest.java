package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** k and RM from Rf, in numbers and in words, also where the strip gives only a bound. */
class RetentionTest {

    /** By hand from k = (1 - Rf)/Rf; ± is 2 u(Rf)/Rf^2, the ends are those of Rf ± 2 u. */
    @ParameterizedTest(name = "Rf {0} with u {1}: {2}")
    @CsvSource({
        "0.3333, 0.0111, 'k 2.0 ± 0.2'",
        "0.35, 0.00449, 'k 1.86 ± 0.07'",
        "0.10, 0.0099, 'k 9 ± 2'",
        "0.10, 0.01, 'k 7.3 to 12'",
        "0.14, 0.028, 'k 4.1 to 11'",
        "0.9, 0.01, 'k 0.086 to 0.14'",
        "0.01, 0.02, 'k at least 19'",
        "0, 0.00625, 'k at least 79'",
        "0.02, 0.01, 'k at least 24'",
        "0.99, 0.0362, 'k at most 0.09'",
        "1, 0.02, 'k at most 0.042'",
        "0.5, 0.3, 'k not known'"
    })
    void kIsToldNoMoreExactlyThanTheStripShowsIt(double rf, double uncertainty, String words) {
        assertThat(new RetardationFactor(rf, uncertainty).retentionShown()).isEqualTo(words);
    }

    @Property
    void kIsNeverShownAsInfiniteOrNoNumber(
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double rf,
            @ForAll @Scale(4) @DoubleRange(min = 0.0005, max = 0.5) double uncertainty) {
        assertThat(new RetardationFactor(rf, uncertainty).retentionShown())
                .startsWith("k ")
                .doesNotContainIgnoringCase("infinity")
                .doesNotContain("NaN")
                .doesNotContain("-");
    }

    @Property
    void rmAndRfTurnIntoEachOther(
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.999) double rf,
            @ForAll @Scale(4) @DoubleRange(min = 0.0005, max = 0.1) double uncertainty) {
        RetardationFactor factor = new RetardationFactor(rf, uncertainty);
        RetardationFactor again = RetardationFactor.ofRm(factor.rm(), factor.rmUncertainty());
        assertThat(again.value()).isCloseTo(rf, within(1e-9));
        assertThat(again.uncertainty()).isCloseTo(uncertainty, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1})
    void aSpotAtAnEndHasNoRmAndSaysSo(double rf) {
        RetardationFactor factor = new RetardationFactor(rf, 0.01);
        assertThat(factor.isInsideTheStrip()).isFalse();
        assertThatThrownBy(factor::rm).isInstanceOf(IllegalStateException.class).hasMessageContaining("only a bound");
        assertThatThrownBy(factor::rmUncertainty).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(factor::retentionUncertainty).isInstanceOf(IllegalStateException.class);
    }

    @ParameterizedTest(name = "{0} mm of 80 mm: {1}")
    @CsvSource({
        "0, k at least 79",
        "0.9, k at least 79",
        "1, ''",
        "40, ''",
        "79, ''",
        "79.1, k at most 0.013",
        "80, k at most 0.013"
    })
    void withinOneDivisionOfAnEndTheStripGivesABound(double travel, String words) {
        Optional<CensoredReading> reading = CensoredReading.of(travel, 80, new Ruler(1, 0));
        assertThat(reading.map(CensoredReading::retentionShown).orElse("")).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"0, 80", "-1, 80", "80, 80", "1, 0", "NaN, 80"})
    void aShiftThatIsNoPartOfTheRunIsRefused(double shift, double front) {
        assertThatThrownBy(() -> CensoredReading.atOrigin(shift, front))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected a shift above 0 and below the front");
    }

    @Test
    void aStripTakenForTheColumnKeepsItsK() {
        assertThat(PlaneToColumn.ALIKE.retentionOnColumn(0.25)).isEqualTo(3);
    }

    @Test
    void aTransferThatCannotBeIsRefused() {
        assertThatThrownBy(() -> new PlaneToColumn(0.9, 1)).hasMessageContaining("expected 1 or more");
        assertThatThrownBy(() -> new PlaneToColumn(1, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new PlaneToColumn(Double.NaN, 1)).hasMessageContaining("expected 1 or more");
        assertThatThrownBy(() -> new PlaneToColumn(1.2, 1).retentionOnColumn(0.9))
                .hasMessageContaining("at most 1");
        assertThatThrownBy(() -> new PlaneToColumn(1.2, 1).retentionOnColumn(0)).hasMessageContaining("above 0");
    }
}
