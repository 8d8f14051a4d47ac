package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;

/** How fast a front climbs; worked numbers stand in the table of check values. */
class FrontTest {

    private static FrontLiquid liquid(String solvent) {
        return FrontLiquid.of(Shipped.data().solvent(solvent).orElseThrow()).orElseThrow();
    }

    @Test
    void twice_as_far_takes_four_times_as_long() {
        FrontConstant constant = new FrontConstant(150);
        assertThat(constant.minutesTo(80)).isEqualTo(4 * constant.minutesTo(40), within(1e-9));
    }

    @Property
    void a_height_reached_after_a_time_takes_that_time(
            @ForAll @DoubleRange(min = 1, max = 2000) double constant,
            @ForAll @DoubleRange(min = 0.1, max = 300) double minutes) {
        FrontConstant front = new FrontConstant(constant);
        assertThat(front.minutesTo(front.millimetresAfter(minutes))).isCloseTo(minutes, within(1e-9 * minutes));
    }

    @Property
    void a_late_start_of_the_clock_does_not_change_the_forecast(@ForAll @DoubleRange(min = 0, max = 30) double late) {
        FrontForecast forecast = new FrontForecast(new FrontReading(2 + late, 20), new FrontReading(10 + late, 40));
        assertThat(forecast.constant().squareMillimetresPerMinute()).isCloseTo(150, within(1e-9));
        assertThat(forecast.minutesLeftTo(90)).isCloseTo(43.3333, within(1e-4));
    }

    @Test
    void a_second_look_has_to_be_later_and_higher() {
        FrontReading look = new FrontReading(10, 40);
        for (FrontReading second :
                List.of(new FrontReading(10, 50), new FrontReading(9, 50), new FrontReading(20, 40), look)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new FrontForecast(look, second))
                    .withMessageContaining("expected a second look that is later and higher");
        }
    }

    @Test
    void a_height_that_is_passed_already_is_no_forecast() {
        FrontForecast forecast = new FrontForecast(new FrontReading(2, 20), new FrontReading(10, 40));
        assertThat(forecast.minutesLeftTo(40)).isZero();
        for (double height : new double[] {39.9, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> forecast.minutesAt(height))
                    .withMessageContaining(height + " mm", "expected a height it has not passed");
        }
    }

    @Test
    void solvents_of_the_table_climb_in_the_order_of_their_draw() {
        List<Double> draws = Stream.of("1-butanol", "2-propanol", "ethanol", "methanol", "toluene", "hexane", "acetone")
                .map(FrontTest::liquid)
                .map(FrontLiquid::drawMetresPerSecond)
                .toList();
        assertThat(draws).isSorted();
    }

    @Test
    void a_solvent_without_a_surface_tension_has_no_draw() {
        assertThat(FrontLiquid.of(Shipped.data().solvent("pyridine").orElseThrow()))
                .isEmpty();
    }

    @Property
    void without_much_loss_an_evaporating_front_climbs_like_any_other(
            @ForAll @DoubleRange(min = 1, max = 60) double minutes) {
        FrontConstant constant = new FrontConstant(150);
        assertThat(new EvaporatingFront(constant, 1e-9).millimetresAfter(minutes))
                .isCloseTo(constant.millimetresAfter(minutes), within(1e-5));
    }

    @Test
    void an_evaporating_front_never_passes_the_height_where_it_stalls() {
        EvaporatingFront front = new EvaporatingFront(new FrontConstant(300), 0.012);
        double stall = front.stallsAtMillimetres();
        assertThat(front.millimetresAfter(1e6)).isCloseTo(stall, within(1e-9));
        assertThat(front.minutesTo(stall)).isEmpty();
        assertThat(front.minutesTo(front.millimetresAfter(20)).orElseThrow()).isCloseTo(20, within(1e-9));
    }

    @Test
    void what_cannot_be_is_refused_with_what_was_expected() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FrontConstant(0))
                .withMessage("the front constant is 0.0 mm2/min; expected a number above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new FrontConstant(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> FrontConstant.of(new FrontReading(0, 10)));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrontReading(-1, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrontReading(1, Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> FrontLiquid.wetting(0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> FrontLiquid.wetting(20, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FrontLiquid(20, 1, 0))
                .withMessageContaining("expected above 0 and at most 1");
        assertThatIllegalArgumentException().isThrownBy(() -> FrontConstant.ofLayer(0, 10, FrontLiquid.wetting(20, 1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FrontConstant.ofLayer(0.008, Double.NaN, FrontLiquid.wetting(20, 1)));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrontConstant(1).minutesTo(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrontConstant(1).millimetresAfter(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new EvaporatingFront(new FrontConstant(1), 0));
    }
}
