package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tests for outliers, where the table of check values does not reach: equal readings, few readings, either side. */
class OutliersTest {

    private static final double RULER = 0.02;

    /** Most strips on one division of the ruler: the MAD is 0, and a distance of 0.07 is 3.5 times u. */
    @Test
    void whereMostReadingsAreEqualTheRulerSaysHowFarIsFar() {
        Outliers.Robust robust = Outliers.robust(List.of(0.3, 0.3, 0.3, 0.3, 0.37), RULER);
        assertThat(robust.medianDeviation()).isZero();
        assertThat(robust.modifiedZ(0.37)).isCloseTo(3.5, within(1e-9));
        assertThat(robust.modifiedZ(0.23)).isCloseTo(-3.5, within(1e-9));
    }

    /** Readings that happen to agree better than the ruler can tell do not make a good reading an outlier. */
    @Test
    void scatterIsNeverNarrowerThanTheRuler() {
        Outliers.Robust robust = Outliers.robust(List.of(0.300, 0.301, 0.300, 0.301, 0.320), RULER);
        assertThat(robust.scatter()).isEqualTo(RULER);
        assertThat(robust.modifiedZ(0.320)).isLessThan(1);
    }

    @Test
    void twoOutliersDoNotHideEachOtherFromTheMedian() {
        List<Double> values = List.of(0.30, 0.31, 0.29, 0.32, 0.30, 0.60, 0.61);
        Outliers.Robust robust = Outliers.robust(values, RULER);
        assertThat(values.stream().filter(value -> Math.abs(robust.modifiedZ(value)) > 3.5))
                .containsExactly(0.60, 0.61);
        assertThat(Outliers.grubbs(values).isOutlier(0.05)).isFalse();
    }

    @Test
    void grubbsFindsTheValueFurthestOutOnEitherSide() {
        assertThat(Outliers.grubbs(List.of(0.5, 0.1, 0.51, 0.52)).index()).isEqualTo(1);
        assertThat(Outliers.grubbs(List.of(0.5, 0.51, 0.9, 0.52)).index()).isEqualTo(2);
    }

    /** Two equal readings and a third always reach 2/sqrt(3) = 1.1547, so without the ruler any third is suspect. */
    @Test
    void twoEqualReadingsDoNotMakeAThirdSuspectWithinTheRulersUncertainty() {
        List<Double> values = List.of(0.30, 0.30, 0.31);
        assertThat(Outliers.grubbs(values).statistic()).isCloseTo(2 / Math.sqrt(3), within(1e-9));
        assertThat(Outliers.grubbsStatistics(values, RULER).get(2)).isLessThan(0.5);
    }

    @Test
    void valuesThatDoNotScatterAreRefusedUnlessTheRulerSpeaks() {
        List<Double> equal = Collections.nCopies(5, 0.3);
        assertThatThrownBy(() -> Outliers.robust(equal, 0)).hasMessageContaining("do not scatter");
        assertThatThrownBy(() -> Outliers.grubbs(equal)).hasMessageContaining("do not scatter");
        assertThatThrownBy(() -> Dixon.of(equal)).hasMessageContaining("all values are equal");
        assertThat(Outliers.robust(equal, RULER).modifiedZ(0.3)).isZero();
    }

    @Test
    void twoValuesHaveNoOutlier() {
        assertThatThrownBy(() -> Outliers.grubbs(List.of(0.1, 0.9))).hasMessageContaining("expected 3 or more");
        assertThatThrownBy(() -> Outliers.criticalTwoSided(2, 0.05)).hasMessageContaining("expected 3 or more");
        assertThatThrownBy(() -> Dixon.of(List.of(0.1, 0.9))).hasMessageContaining("expected 3 to 10");
        assertThatThrownBy(() -> Dixon.of(Collections.nCopies(11, 0.1))).hasMessageContaining("expected 3 to 10");
        assertThatThrownBy(() -> Repeats.of(List.of(0.1))).hasMessageContaining("expected 2 or more");
    }

    /**
     * Quantiles of r10 of 2 million normal samples for each number of values agree with the remembered table to 0.004; the
     * ends of the table and its 95 % column as printed for 3 to 7 values (Rorabacher 1991, from memory).
     */
    @ParameterizedTest
    @CsvSource({"3, 0.941, 0.970", "4, 0.765, 0.829", "5, 0.642, 0.710", "6, 0.560, 0.625", "7, 0.507, 0.568"})
    void dixonsCriticalValuesAreThoseOfTheTable(int count, double at90, double at95) {
        Dixon dixon = new Dixon(0.5, count, 0.6);
        assertThat(dixon.critical90()).isEqualTo(at90);
        assertThat(dixon.critical95()).isEqualTo(at95);
    }

    @Test
    void dixonSuspectsTheEndWithTheWiderGap() {
        assertThat(Dixon.of(List.of(0.5, 0.1, 0.51, 0.55)).suspect()).isEqualTo(0.1);
        assertThat(Dixon.of(List.of(0.5, 0.52, 0.51, 0.9)).suspect()).isEqualTo(0.9);
    }
}
