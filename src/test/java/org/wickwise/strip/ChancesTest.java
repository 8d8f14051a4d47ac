package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

/** How likely a reading lies on one side of a limit; Gaussian quantiles as every table of them prints. */
class ChancesTest {

    private static final double AS_PRINTED = 5e-5;

    @Property
    void aReadingOnTheLimitIsAsLikelyOnEitherSide(
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double limit,
            @ForAll @Scale(4) @DoubleRange(min = 0.0005, max = 0.5) double uncertainty) {
        assertThat(new RetardationFactor(limit, uncertainty).chanceAtMost(limit))
                .isCloseTo(0.5, within(1e-6));
    }

    @Test
    void aReadingOnTheLimitInDecimalsHasExactlyOneHalf() {
        assertThat(new RetardationFactor(0.35 - 0.25, 0.01).chanceAtMost(0.1)).isEqualTo(0.5);
    }

    @Test
    void chancesFollowTheGaussianTable() {
        RetardationFactor factor = new RetardationFactor(0.30, 0.02);
        assertThat(factor.chanceAtMost(0.32)).isCloseTo(0.8413, within(AS_PRINTED));
        assertThat(factor.chanceAtMost(0.26)).isCloseTo(0.0228, within(AS_PRINTED));
        assertThat(factor.chanceBetween(0.26, 0.34)).isCloseTo(0.9545, within(AS_PRINTED));
    }

    @Test
    void theWholeStripAndWhatLiesBeyondItMakeOne() {
        RetardationFactor nearTheOrigin = new RetardationFactor(0.01, 0.02);
        assertThat(nearTheOrigin.chanceAtMost(0) + nearTheOrigin.chanceBetween(0, 1))
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void aGapOnTheLimitIsAsLikelyAboveItAsBelow() {
        Apart.MeasuredGap gap = gap(0.1, 0.03);
        assertThat(gap.chanceAbove(0.1)).isEqualTo(0.5);
        assertThat(gap.chanceAbove(0.07)).isCloseTo(0.8413, within(AS_PRINTED));
        assertThat(gap.chanceAbove(0.13)).isCloseTo(0.1587, within(AS_PRINTED));
    }

    private static Apart.MeasuredGap gap(double gap, double uncertainty) {
        Place nowhere = Place.wholeFile("invented");
        Dye ahead = new Dye("ahead", DyeClass.NEUTRAL, "", nowhere);
        Dye behind = new Dye("behind", DyeClass.NEUTRAL, "", nowhere);
        Eluent eluent = Eluent.neat(Shipped.data().solvents().iterator().next());
        return new Apart.MeasuredGap(eluent, ahead, behind, gap, uncertainty, new Reason.Observed("invented", nowhere));
    }
}
