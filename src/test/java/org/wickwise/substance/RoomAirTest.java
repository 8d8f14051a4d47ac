package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;

/** Vapour in the air of a room; worked numbers stand in the table of check values. */
class RoomAirTest {

    private static final MolarVolume WARM = MolarVolume.at(25);
    private static final RoomAir ROOM = new RoomAir(200);

    private static VapourShare ppm(double partsPerMillion) {
        return new VapourShare(partsPerMillion);
    }

    @Test
    void a_mole_takes_the_printed_litres() {
        assertThat(MolarVolume.at(25).litresPerMole()).isCloseTo(24.45, within(0.02));
        assertThat(MolarVolume.at(20).litresPerMole()).isCloseTo(24.06, within(0.01));
    }

    @Test
    void so_much_of_a_solvent_takes_density_and_molar_mass_from_the_table() {
        EvaporatedLiquid acetone = EvaporatedLiquid.of(
                        Shipped.data().solvent("acetone").orElseThrow(), 100)
                .orElseThrow();
        assertThat(ROOM.with(acetone, WARM).partsPerMillion()).isCloseTo(165.2, within(1.0));
        assertThat(EvaporatedLiquid.of(Shipped.data().solvent("petroleum ether").orElseThrow(), 100))
                .isEmpty();
    }

    @Test
    void a_box_holds_no_more_than_vapour_alone() {
        EvaporatedLiquid much = new EvaporatedLiquid(1000, 0.8, 50);
        assertThat(new RoomAir(0.01).with(much, WARM).volumePercent()).isEqualTo(100);
        assertThat(ROOM.with(new EvaporatedLiquid(0, 0.8, 50), WARM).partsPerMillion())
                .isZero();
    }

    /** The table has no Antoine constants of it, and a vapour pressure at 20 degC only. */
    @Test
    void a_vapour_pressure_does_not_cap_what_a_warmer_liquid_gives_off() {
        Solvent ammonia = Shipped.data().solvent("aqueous ammonia").orElseThrow();
        assertThat(ammonia.value("vapour pressure").orElseThrow().celsius()).hasValue(20);
        assertThat(Saturation.over(ammonia, 20)).isPresent();
        assertThat(Saturation.over(ammonia, 15)).isPresent();
        assertThat(Saturation.over(ammonia, 20.1)).isEmpty();
    }

    @Test
    void antoine_constants_reach_warmer_rooms() {
        Solvent acetone = Shipped.data().solvent("acetone").orElseThrow();
        double at20 = Saturation.over(acetone, 20).orElseThrow().share().partsPerMillion();
        assertThat(Saturation.over(acetone, 30).orElseThrow().share().partsPerMillion())
                .isGreaterThan(1.3 * at20);
    }

    @Test
    void a_limit_itself_is_kept() {
        assertThat(ppm(1000).exceeds(ppm(1000))).isFalse();
        assertThat(ppm(1000.1).exceeds(ppm(1000))).isTrue();
        assertThat(new VapourMixture(List.of(
                                new VapourMixture.Part(ppm(200), ppm(400)), new VapourMixture.Part(ppm(25), ppm(50))))
                        .isWithinLimits())
                .isTrue();
        assertThat(new VapourMixture(List.of(
                                new VapourMixture.Part(ppm(201), ppm(400)), new VapourMixture.Part(ppm(25), ppm(50))))
                        .isWithinLimits())
                .isFalse();
    }

    @Property
    void the_limit_of_a_mixture_lies_between_those_of_its_parts(
            @ForAll @DoubleRange(min = 1, max = 1000) double one,
            @ForAll @DoubleRange(min = 1, max = 1000) double other) {
        VapourMixture mixture = new VapourMixture(List.of(
                new VapourMixture.Part(ppm(one), VapourShare.ofVolumePercent(1.1)),
                new VapourMixture.Part(ppm(other), VapourShare.ofVolumePercent(2.5))));
        assertThat(mixture.limit().volumePercent()).isBetween(1.1 - 1e-9, 2.5 + 1e-9);
    }

    @Property
    void a_room_has_fallen_to_a_share_after_the_time_that_takes(
            @ForAll @DoubleRange(min = 1, max = 799) double end,
            @ForAll @DoubleRange(min = 1, max = 10) double mixing) {
        DilutionVentilation ventilation = new DilutionVentilation(1200, mixing);
        double hours = ventilation.hoursToFall(ppm(800), ppm(end), ROOM);
        assertThat(ventilation.after(hours, ppm(800), ROOM).partsPerMillion()).isCloseTo(end, within(1e-6));
    }

    @Test
    void a_steady_source_builds_up_to_the_share_its_ventilation_keeps() {
        DilutionVentilation ventilation = DilutionVentilation.toKeep(ppm(350), 0.5, 3);
        assertThat(ventilation.builtUp(0, 0.5, ROOM).partsPerMillion()).isZero();
        assertThat(ventilation.builtUp(1000, 0.5, ROOM).partsPerMillion()).isCloseTo(350, within(1e-6));
        assertThat(ventilation.builtUp(1, 0.5, ROOM).partsPerMillion()).isLessThan(350);
    }

    @Test
    void what_cannot_be_is_refused_with_what_was_expected() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RoomAir(0))
                .withMessage("the room is 0.0 m3; expected a number above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> MolarVolume.at(-300));
        assertThatIllegalArgumentException().isThrownBy(() -> ppm(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> ppm(1_000_001));
        assertThatIllegalArgumentException().isThrownBy(() -> VapourShare.saturated(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> VapourShare.saturated(102));
        assertThatIllegalArgumentException().isThrownBy(() -> ppm(1).percentOf(ppm(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> ppm(1).percent(101));
        assertThatIllegalArgumentException().isThrownBy(() -> ppm(1).milligramsPerCubicMetre(0, WARM));
        assertThatIllegalArgumentException().isThrownBy(() -> new VapourMixture.Part(ppm(1), ppm(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> new VapourMixture(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new VapourMixture(List.of(new VapourMixture.Part(ppm(0), ppm(5)))).limit());
        assertThatIllegalArgumentException().isThrownBy(() -> new EvaporatedLiquid(-1, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new EvaporatedLiquid(1, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new EvaporatedLiquid(1, 1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> ROOM.gramsToReach(-1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DilutionVentilation(100, 0.5))
                .withMessageContaining("expected 1 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> DilutionVentilation.toKeep(ppm(0), 1, 3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DilutionVentilation(100, 3).hoursToFall(ppm(100), ppm(200), ROOM));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DilutionVentilation(100, 3).hoursToFall(ppm(100), ppm(0), ROOM));
        assertThatIllegalArgumentException().isThrownBy(() -> MineralDust.milligramsPerCubicMetre(80, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> MineralDust.milligramsPerCubicMetre(80, 101));
    }
}
