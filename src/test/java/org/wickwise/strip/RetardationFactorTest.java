package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rf, k and their uncertainty against printed and independently computed numbers; the source stands beside each. */
class RetardationFactorTest {

    private static final Ruler MILLIMETRE_RULER = new Ruler(1, 0);

    @ParameterizedTest(name = "{0} mm of {1} mm is {2} ({4})")
    @CsvSource({
        "35, 50, 0.70, 0.005, 'printed: 3.5 cm / 5 cm, zollege.in'",
        "21, 28, 0.75, 0.005, 'printed: 2.1 cm / 2.8 cm, ukessays.com'",
        "60, 65, 0.92, 0.005, 'printed: chilli pigments, scribd 38163398'",
        "40, 65, 0.61, 0.006, 'printed: chilli pigments (0.615 cut to 0.61), scribd 38163398'",
        "18, 22, 0.82, 0.005, 'printed: hexane plate, studymode.com 66732790'",
        "0, 22, 0.00, 0.005, 'printed: hexane plate, studymode.com 66732790'",
        "20, 38, 0.53, 0.005, 'printed: toluene plate, studymode.com 66732790'",
        "11, 38, 0.29, 0.005, 'printed: toluene plate, studymode.com 66732790'",
        "28, 80, 0.35, 1e-9, 'IUPAC nomenclature, Ettre, Pure Appl. Chem. 1993, 65, 819'"
    })
    void rfIsTravelOverFront(double travel, double front, double printed, double tolerance, String source) {
        assertThat(RetardationFactor.measured(travel, front, MILLIMETRE_RULER).value())
                .as(source)
                .isCloseTo(printed, within(tolerance));
    }

    /** From the definitions k = (1 - Rf)/Rf and V_R/V0 = 1/Rf (IUPAC; standard plate theory), last printed digit. */
    @ParameterizedTest
    @CsvSource({
        "0.10, 9.00, 10.0",
        "0.20, 4.00, 5.00",
        "0.25, 3.00, 4.00",
        "0.35, 1.86, 2.86",
        "0.50, 1.00, 2.00",
        "0.80, 0.25, 1.25"
    })
    void retentionFactorAndColumnVolumesFollowFromRf(double rf, double k, double columnVolumes) {
        RetardationFactor factor = new RetardationFactor(rf, 0.01);
        assertThat(factor.retentionFactor()).isCloseTo(k, within(0.005));
        assertThat(factor.columnVolumes()).isCloseTo(columnVolumes, within(0.005));
    }

    /** JCGM 100:2008, 5.1.2 equation 10, with a 1 mm ruler: 28 mm of 80 mm, u(Rf) 0.00448522. */
    @Test
    void theOriginsErrorIsSharedByBothDistances() {
        assertThat(RetardationFactor.measured(28, 80, MILLIMETRE_RULER).uncertainty())
                .isCloseTo(0.00448522, within(0.00448522 * 2e-3));
    }

    /** The same with the middle of the spot known to 2 mm; a Monte Carlo of 4 million draws gave 0.0151. */
    @Test
    void aBroadSpotMakesTheRfLessCertain() {
        Ruler ruler = new Ruler(1, 2);
        assertThat(ruler.spotMillimetres()).isCloseTo(1.19024, within(1e-4));
        assertThat(RetardationFactor.measured(28, 80, ruler).uncertainty())
                .isCloseTo(0.0151146, within(0.0151146 * 5e-3));
    }

    /** Inverse-variance mean; Birge, Phys. Rev. 1932, 40, 207: 0.34 +- 0.01 and 0.36 +- 0.02 agree. */
    @Test
    void stripsThatAgreeAreWeightedByTheirUncertainty() {
        RetardationFactor mean = RetardationFactor.combined(
                List.of(new RetardationFactor(0.34, 0.01), new RetardationFactor(0.36, 0.02)));
        assertThat(mean.value()).isCloseTo(0.344, within(1e-9));
        assertThat(mean.uncertainty()).isCloseTo(0.00894427, within(1e-7));
    }

    /** Birge ratio by hand: two strips at 0.30 and 0.40, each +- 0.01: chi2 = 50 on 1 degree of freedom. */
    @Test
    void stripsThatScatterWidenTheUncertainty() {
        RetardationFactor mean = RetardationFactor.combined(
                List.of(new RetardationFactor(0.30, 0.01), new RetardationFactor(0.40, 0.01)));
        assertThat(mean.value()).isCloseTo(0.35, within(1e-9));
        assertThat(mean.uncertainty()).isCloseTo(0.01 / Math.sqrt(2) * Math.sqrt(50), within(1e-9));
    }

    @Test
    void theIntervalNeverLeavesTheStrip() {
        assertThat(new RetardationFactor(0.01, 0.02).lowest()).isZero();
        assertThat(new RetardationFactor(0.99, 0.02).highest()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void what_does_not_lie_on_the_strip_is_no_rf(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RetardationFactor(value, 0.01))
                .withMessageContaining("expected 0 to 1");
    }

    @Test
    void a_gap_between_two_rf_may_be_negative_and_is_averaged_like_them() {
        WeightedMean mean = WeightedMean.of(List.of(new Uncertain(-0.1, 0.01), new Uncertain(-0.2, 0.01)));
        assertThat(mean.value()).isCloseTo(-0.15, within(1e-12));
    }

    @Test
    void several_strips_that_end_at_the_front_have_their_mean_there() {
        for (int strips = 1; strips <= 40; strips++) {
            assertThat(RetardationFactor.combined(Collections.nCopies(strips, new RetardationFactor(1, 0.013)))
                            .value())
                    .isCloseTo(1, within(1e-12));
        }
    }
}
