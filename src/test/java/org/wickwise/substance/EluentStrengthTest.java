package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason;

/** Snyder's equation for blends: what it must do whatever the numbers, and what it says with those of the table. */
class EluentStrengthTest {

    private static final double EXACT = 1e-9;

    @Property(tries = 200)
    void more_of_the_stronger_part_is_stronger(
            @ForAll @DoubleRange(min = 0, max = 0.4) double weak,
            @ForAll @DoubleRange(min = 0.05, max = 0.6) double gain,
            @ForAll @DoubleRange(min = 0.2, max = 1) double activity,
            @ForAll @DoubleRange(min = 3, max = 9) double area,
            @ForAll @DoubleRange(min = 0, max = 0.98) double fraction) {
        double strong = weak + gain;
        assertThat(EluentStrength.ofBinary(weak, strong, activity, area, fraction + 0.02))
                .isGreaterThan(EluentStrength.ofBinary(weak, strong, activity, area, fraction));
    }

    @Property(tries = 200)
    void it_is_exact_at_both_ends(
            @ForAll @DoubleRange(min = 0, max = 0.4) double weak,
            @ForAll @DoubleRange(min = 0.05, max = 0.6) double gain,
            @ForAll @DoubleRange(min = 0.2, max = 1) double activity,
            @ForAll @DoubleRange(min = 3, max = 9) double area) {
        assertThat(EluentStrength.ofBinary(weak, weak + gain, activity, area, 0))
                .isCloseTo(weak, within(EXACT));
        assertThat(EluentStrength.ofBinary(weak, weak + gain, activity, area, 1))
                .isCloseTo(weak + gain, within(EXACT));
    }

    @Property(tries = 200)
    void the_inverse_inverts(
            @ForAll @DoubleRange(min = 0, max = 0.4) double weak,
            @ForAll @DoubleRange(min = 0.05, max = 0.6) double gain,
            @ForAll @DoubleRange(min = 0.2, max = 1) double activity,
            @ForAll @DoubleRange(min = 3, max = 9) double area,
            @ForAll @DoubleRange(min = 0, max = 1) double fraction) {
        double strength = EluentStrength.ofBinary(weak, weak + gain, activity, area, fraction);
        assertThat(EluentStrength.moleFractionFor(strength, weak, weak + gain, activity, area))
                .isCloseTo(fraction, within(1e-6));
        double share = EluentStrength.volumeShare(fraction, 0.0077, 0.0102);
        assertThat(EluentStrength.moleFraction(share, 0.0077, 0.0102)).isCloseTo(fraction, within(EXACT));
    }

    @Test
    void a_neat_solvent_has_the_strength_of_the_table() {
        assertThat(on("silica").of(eluent("acetone", 100)).orElseThrow().value())
                .isEqualTo(0.53);
    }

    /** Table values: hexane 0.01, 0.655 g/mL, 86.18; ethyl acetate 0.48, 5.7, 0.9003 g/mL, 88.11; activity 0.57. */
    @Test
    void a_blend_shows_its_formula_and_every_table_value_in_it() {
        Reason.Calculated reason = (Reason.Calculated) on("silica")
                .of(eluent("hexane", 80, "ethyl acetate", 20))
                .orElseThrow()
                .reason();
        assertThat(reason.statement()).isEqualTo("eluent strength on silica of hexane + ethyl acetate 4:1: 0.307");
        assertThat(reason.formula()).isEqualTo("0.010 + log10(0.252 x 10^(0.57 x 5.7 x 0.470) + 0.748) / 3.25");
        assertThat(reason.grounds())
                .extracting(Reason::statement)
                .anyMatch(ground -> ground.startsWith("displaced area of ethyl acetate: 5.7"))
                .anyMatch(ground -> ground.startsWith("eluent strength on silica of hexane"))
                .contains("adsorbent activity: 0.57");
    }

    @ParameterizedTest
    @CsvSource({
        "silica, hexane, ethyl acetate",
        "silica, toluene, acetone",
        "alumina, hexane, acetone",
        "alumina, cyclohexane, ethanol"
    })
    void the_share_for_a_wanted_strength_gives_that_strength(String phase, String weak, String strong) {
        for (double percent : new double[] {5, 20, 50, 90}) {
            double strength = on(phase)
                    .of(eluent(weak, 100 - percent, strong, percent))
                    .orElseThrow()
                    .value();
            assertThat(on(phase)
                            .percentFor(strength, solvent(weak), solvent(strong))
                            .orElseThrow())
                    .isCloseTo(percent, within(1e-6));
        }
    }

    @Test
    void a_third_part_in_traces_changes_nothing_and_in_plenty_everything() {
        double two = on("silica")
                .of(eluent("hexane", 50, "dichloromethane", 50))
                .orElseThrow()
                .value();
        assertThat(strengthOfThree(49.9999, 50, 0.0001)).isCloseTo(two, within(1e-4));
        assertThat(strengthOfThree(0.0001, 0.0001, 99.9998)).isCloseTo(0.53, within(1e-4));
        assertThat(strengthOfThree(45, 45, 10)).isBetween(two, 0.53);
    }

    @Test
    void a_value_that_is_missing_leaves_the_strength_unknown() {
        assertThat(on("silica").of(eluent("ethanol", 100))).isEmpty();
        assertThat(on("silica").of(eluent("hexane", 50, "ethanol", 50))).isEmpty();
        assertThat(on("silica").percentFor(0.2, solvent("hexane"), solvent("ethanol")))
                .isEmpty();
        assertThat(on("silica").percentFor(0.9, solvent("hexane"), solvent("acetone")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"C18", "cellulose", "cyano silica"})
    void a_phase_without_strengths_reckons_none(String phase) {
        assertThat(EluentStrength.on(Shipped.data().stationaryPhase(phase).orElseThrow()))
                .isEmpty();
    }

    private static double strengthOfThree(double hexane, double dichloromethane, double acetone) {
        return on("silica")
                .of(Eluent.of(
                        List.of(
                                new Eluent.Part(solvent("hexane"), hexane),
                                new Eluent.Part(solvent("dichloromethane"), dichloromethane),
                                new Eluent.Part(solvent("acetone"), acetone)),
                        List.of()))
                .orElseThrow()
                .value();
    }

    private static EluentStrength on(String phase) {
        return EluentStrength.on(Shipped.data().stationaryPhase(phase).orElseThrow())
                .orElseThrow();
    }

    private static Eluent eluent(String one, double percent) {
        return Eluent.of(List.of(new Eluent.Part(solvent(one), percent)), List.of());
    }

    private static Eluent eluent(String one, double percent, String other, double rest) {
        return Eluent.of(
                List.of(new Eluent.Part(solvent(one), percent), new Eluent.Part(solvent(other), rest)), List.of());
    }

    private static Solvent solvent(String name) {
        return Shipped.data().solvent(name).orElseThrow();
    }
}
