package org.wickwise.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The closed form for steps of eluent against worked numbers and limiting cases; {@link MixingCellsTest} lays mixing cells beside it. */
class BandTest {

    private static final double V0 = 10;
    private static final double PLATES = 100;

    /** One switch, k 20 then 1 at 30 mL: 48.5 mL and 1.888 mL (fundamental equation; Jandera and Churacek 1985). */
    @Test
    void aStrongerEluentOvertakesTheBandAndNarrowsIt() {
        Band band = band(new Pour(30, 20), new Pour(100, 1));
        assertThat(band.middleMillilitres()).isCloseTo(48.5, within(48.5 * 5e-3));
        assertThat(band.sigmaMillilitres()).isCloseTo(1.88822, within(1.88822 * 5e-3));
    }

    /** Two switches, k 50, 5, 0.5 at 20 and 40 mL: 52.8 mL and 1.189 mL (same source). */
    @Test
    void twoSwitchesFollowTheSameEquation() {
        Band band = band(new Pour(20, 50), new Pour(20, 5), new Pour(100, 0.5));
        assertThat(band.middleMillilitres()).isCloseTo(52.8, within(52.8 * 5e-3));
        assertThat(band.sigmaMillilitres()).isCloseTo(1.18929, within(1.18929 * 5e-3));
    }

    /** V_R = V0 (1 + k) and sigma = V_R/sqrt(N), standard plate theory: 37 mL and Rf 0.35 or 0.20 give 105.7 and 185.0 mL. */
    @Test
    void oneEluentGivesThePlateTheory() {
        Band first = Band.of(List.of(new Pour(1, 1 / 0.35 - 1)), 37, PLATES).orElseThrow();
        Band second = Band.of(List.of(new Pour(1, 1 / 0.20 - 1)), 37, PLATES).orElseThrow();
        assertThat(first.middleMillilitres()).isCloseTo(105.714, within(0.11));
        assertThat(first.sigmaMillilitres()).isCloseTo(10.57, within(0.02));
        assertThat(second.middleMillilitres()).isCloseTo(185.0, within(0.19));
    }

    /** Rs = (sqrt N/2)(Rf1 - Rf2)/(Rf1 + Rf2): N 100, 0.45 and 0.25 give 1.43; N 64, 0.5 and 0.3 give 1.00. */
    @Test
    void resolutionFollowsFromTwoRf() {
        assertThat(resolution(0.45, 0.25, 100)).isCloseTo(1.42857, within(1.5e-3));
        assertThat(resolution(0.5, 0.3, 64)).isCloseTo(1.0, within(1e-3));
    }

    @Test
    void aDyeThatLeavesBeforeTheNewFrontReachesItDoesNotFeelIt() {
        assertThat(band(new Pour(60, 2), new Pour(10, 0.1)).middleMillilitres()).isCloseTo(30, within(1e-9));
    }

    @Test
    void aDyeThatNeverMovesHasNoBand() {
        assertThat(Band.of(List.of(new Pour(10, Double.POSITIVE_INFINITY)), V0, PLATES))
                .isEmpty();
    }

    @Test
    void impossiblePoursAreRefused() {
        assertThatThrownBy(() -> new Pour(-1, 1)).hasMessageContaining("poured -1.0 mL");
        assertThatThrownBy(() -> new Pour(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 200)
    void aSwitchToTheSameEluentChangesNothing(
            @ForAll @DoubleRange(min = 0.1, max = 30) double k,
            @ForAll @DoubleRange(min = 1, max = 200) double volume) {
        Band switched = band(new Pour(volume, k), new Pour(1, k));
        Band single = band(new Pour(1, k));
        assertThat(switched.middleMillilitres())
                .isCloseTo(single.middleMillilitres(), within(1e-6 * single.middleMillilitres()));
        assertThat(switched.sigmaMillilitres())
                .isCloseTo(single.sigmaMillilitres(), within(1e-6 * single.sigmaMillilitres()));
    }

    private static Band band(Pour... pours) {
        return Band.of(List.of(pours), V0, PLATES).orElseThrow();
    }

    private static double resolution(double fastRf, double slowRf, double plates) {
        Band fast = Band.of(List.of(new Pour(1, 1 / fastRf - 1)), V0, plates).orElseThrow();
        Band slow = Band.of(List.of(new Pour(1, 1 / slowRf - 1)), V0, plates).orElseThrow();
        return fast.resolutionTo(slow);
    }
}
