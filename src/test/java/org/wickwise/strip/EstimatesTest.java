package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wickwise.strip.Written.blend;
import static org.wickwise.strip.Written.neat;
import static org.wickwise.strip.Written.neutral;
import static org.wickwise.strip.Written.on;
import static org.wickwise.strip.Written.reading;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Estimate.AtLeast;
import org.wickwise.strip.Estimate.AtMost;
import org.wickwise.strip.Estimate.NotReckoned;
import org.wickwise.strip.Estimate.Reckoned;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;

class EstimatesTest {

    private static final Dye RED = neutral("red");
    private static final Dye BLUE = neutral("blue");

    /** k 9 at 10 % and 1.732 at 30 % (check value CV-206, n 1.5): at 20 % k is 9 / 2^1.5. */
    @Test
    void blends_of_one_pair_follow_the_logarithm_of_the_share() {
        Reckoned reckoned = (Reckoned) on(
                        "silica",
                        reading(RED, hexaneAcetone(10), "silica", 0.1),
                        reading(RED, hexaneAcetone(30), "silica", 0.366025))
                .estimate(RED, hexaneAcetone(20));
        assertThat(reckoned.retardationFactor().retentionFactor()).isCloseTo(9 / Math.pow(2, 1.5), within(1e-3));
        assertThat(reckoned.retardationFactor().uncertainty()).isBetween(0.04, 0.08);
    }

    @Test
    void the_reason_shows_the_numbers_the_law_and_the_readings() {
        Reckoned reckoned = (Reckoned) on(
                        "silica",
                        reading(RED, hexaneAcetone(10), "silica", 0.1),
                        reading(RED, hexaneAcetone(30), "silica", 0.36))
                .estimate(RED, hexaneAcetone(20));
        Reason.Calculated reason = (Reason.Calculated) reckoned.reason();
        assertThat(reason.statement()).startsWith("Rf of red in hexane + acetone 4:1 is reckoned as 0.2");
        assertThat(reason.formula()).contains("log10 of the share of acetone").contains("RM = ");
        assertThat(reason.reference()).contains("Soczewinski");
        assertThat(reason.grounds())
                .extracting(Reason::statement)
                .contains("red is neutral", "the scatter")
                .anyMatch(ground -> ground.startsWith("red at Rf 0.1 in"))
                .anyMatch(ground -> ground.startsWith("red at Rf 0.36 in"));
    }

    /** By table strengths: toluene 0.22 and dichloromethane 0.30 enclose chloroform 0.26. */
    @Test
    void different_solvents_follow_their_strengths_less_surely() {
        Reckoned reckoned = (Reckoned) on(
                        "silica",
                        reading(RED, neat("toluene"), "silica", 0.15),
                        reading(RED, neat("dichloromethane"), "silica", 0.45))
                .estimate(RED, neat("chloroform"));
        assertThat(reckoned.retardationFactor().value()).isCloseTo(0.2753, within(1e-3));
        assertThat(reckoned.retardationFactor().uncertainty()).isGreaterThan(0.1);
        assertThat(((Reason.Calculated) reckoned.reason()).grounds())
                .extracting(Reason::statement)
                .anyMatch(ground -> ground.startsWith("eluent strength on silica of chloroform: 0.26"));
    }

    /** log10 k = 2 - 4 share (check value CV-207): k 2.512 at 40 %. */
    @Test
    void on_a_reversed_phase_the_logarithm_of_k_falls_with_the_share() {
        Reckoned reckoned = (Reckoned) on(
                        "C18",
                        reading(RED, blend("water", "methanol", 30), "C18", 1 / (1 + Math.pow(10, 0.8))),
                        reading(RED, blend("water", "methanol", 60), "C18", 1 / (1 + Math.pow(10, -0.4))))
                .estimate(RED, blend("water", "methanol", 40));
        assertThat(reckoned.retardationFactor().retentionFactor()).isCloseTo(2.512, within(0.01));
    }

    @Test
    void one_strip_fixes_no_line() {
        assertThat(why(on("silica", reading(RED, hexaneAcetone(10), "silica", 0.1)), RED, hexaneAcetone(20)))
                .isEqualTo("one strip fixes no line");
    }

    @Test
    void nothing_is_reckoned_beyond_the_strips() {
        Estimates estimates = on(
                "C18",
                reading(RED, blend("water", "methanol", 30), "C18", 0.2),
                reading(RED, blend("water", "methanol", 60), "C18", 0.6));
        assertThat(why(estimates, RED, blend("water", "methanol", 80))).contains("outside what the strips cover");
        assertThat(estimates.estimate(RED, blend("water", "methanol", 62))).isInstanceOf(Reckoned.class);
        assertThat(why(estimates, RED, blend("water", "acetonitrile", 40))).contains("no strip shows red");
    }

    @ParameterizedTest
    @EnumSource(
            value = DyeClass.class,
            names = {"CATIONIC", "ANIONIC", "AMPHOTERIC"})
    void charge_decides_more_than_strength(DyeClass charged) {
        Dye dye = new Dye("red", charged, "", Written.HERE);
        Estimates estimates = on(
                "silica",
                reading(dye, hexaneAcetone(10), "silica", 0.1),
                reading(dye, hexaneAcetone(30), "silica", 0.4));
        assertThat(why(estimates, dye, hexaneAcetone(20))).contains("charge decides");
    }

    @Test
    void an_additive_is_not_reckoned_with() {
        Estimates estimates = on(
                "silica",
                reading(RED, hexaneAcetone(10), "silica", 0.1),
                reading(RED, hexaneAcetone(30), "silica", 0.4));
        assertThat(why(estimates, RED, Written.withAdditive(hexaneAcetone(20)))).contains("additive");
    }

    @Test
    void a_pair_that_changes_places_is_not_interpolated_and_others_are() {
        Dye third = neutral("third");
        Estimates estimates = on(
                "silica",
                reading(RED, hexaneAcetone(10), "silica", 0.1),
                reading(RED, hexaneAcetone(30), "silica", 0.7),
                reading(BLUE, hexaneAcetone(10), "silica", 0.3),
                reading(BLUE, hexaneAcetone(30), "silica", 0.4),
                reading(third, hexaneAcetone(10), "silica", 0.05),
                reading(third, hexaneAcetone(30), "silica", 0.2));
        assertThat(why(estimates, RED, hexaneAcetone(20))).contains("red and blue change places");
        assertThat(why(estimates, BLUE, hexaneAcetone(20))).contains("blue and red change places");
        assertThat(estimates.estimate(third, hexaneAcetone(20))).isInstanceOf(Reckoned.class);
    }

    @Test
    void a_strip_on_another_phase_says_nothing() {
        Estimates estimates = on(
                "silica",
                reading(RED, hexaneAcetone(10), "alumina", 0.1),
                reading(RED, hexaneAcetone(30), "alumina", 0.4));
        assertThat(why(estimates, RED, hexaneAcetone(20))).contains("no strip shows red");
    }

    @Test
    void a_phase_that_follows_no_law_reckons_nothing() {
        Estimates estimates = on(
                "cellulose",
                reading(RED, blend("water", "ethanol", 30), "cellulose", 0.3),
                reading(RED, blend("water", "ethanol", 60), "cellulose", 0.6));
        assertThat(why(estimates, RED, blend("water", "ethanol", 50))).contains("no law of retention");
    }

    @Test
    void a_dye_that_moves_less_in_the_stronger_eluent_is_on_no_line() {
        Estimates estimates = on(
                "silica",
                reading(RED, hexaneAcetone(10), "silica", 0.7),
                reading(RED, hexaneAcetone(30), "silica", 0.2));
        assertThat(why(estimates, RED, hexaneAcetone(20))).contains("moves less in the stronger eluents");
    }

    /** At the origin in the weaker blend, RM is at least log10(1/0.02 - 1) = 1.69 there, so the line is at least as steep. */
    @Test
    void a_spot_at_the_origin_bounds_the_slope_on_one_side() {
        AtMost most = (AtMost) on(
                        "silica",
                        reading(RED, hexaneAcetone(10), "silica", 0),
                        reading(RED, hexaneAcetone(40), "silica", 0.4))
                .estimate(RED, hexaneAcetone(20));
        double chord = 0.1761 + (1.6902 - 0.1761) / 2;
        assertThat(most.retardation()).isBetween(1 / (1 + Math.pow(10, chord)), 0.4);
    }

    @Test
    void a_spot_at_the_front_bounds_the_slope_on_the_other() {
        AtLeast least = (AtLeast) on(
                        "silica",
                        reading(RED, hexaneAcetone(10), "silica", 0.3),
                        reading(RED, hexaneAcetone(40), "silica", 1))
                .estimate(RED, hexaneAcetone(20));
        double chord = 0.3680 + (-1.6902 - 0.3680) / 2;
        assertThat(least.retardation()).isBetween(0.3, 1 / (1 + Math.pow(10, chord)));
    }

    @Test
    void a_dye_at_the_origin_on_both_sides_stays_between_them() {
        AtMost most = (AtMost)
                on("silica", reading(RED, hexaneAcetone(10), "silica", 0), reading(RED, hexaneAcetone(40), "silica", 0))
                        .estimate(RED, hexaneAcetone(20));
        assertThat(most.retardation()).isCloseTo(0.02, within(1e-9));
    }

    @Test
    void from_the_origin_to_the_front_anything_may_lie_between() {
        assertThat(why(
                        on(
                                "silica",
                                reading(RED, hexaneAcetone(10), "silica", 0),
                                reading(RED, hexaneAcetone(40), "silica", 1)),
                        RED,
                        hexaneAcetone(20)))
                .contains("fix no line");
    }

    @Test
    void readings_at_the_ends_are_no_points_of_the_line() {
        Estimate withoutEnd = on(
                        "silica",
                        reading(RED, hexaneAcetone(20), "silica", 0.15),
                        reading(RED, hexaneAcetone(60), "silica", 0.6))
                .estimate(RED, hexaneAcetone(40));
        Estimate withEnd = on(
                        "silica",
                        reading(RED, hexaneAcetone(5), "silica", 0),
                        reading(RED, hexaneAcetone(20), "silica", 0.15),
                        reading(RED, hexaneAcetone(60), "silica", 0.6))
                .estimate(RED, hexaneAcetone(40));
        assertThat(((Reckoned) withEnd).retardationFactor()).isEqualTo(((Reckoned) withoutEnd).retardationFactor());
    }

    @Test
    void a_spot_at_the_origin_that_the_line_puts_elsewhere_stops_the_reckoning() {
        assertThat(why(
                        on(
                                "silica",
                                reading(RED, hexaneAcetone(15), "silica", 0),
                                reading(RED, hexaneAcetone(20), "silica", 0.5),
                                reading(RED, hexaneAcetone(60), "silica", 0.6)),
                        RED,
                        hexaneAcetone(40)))
                .contains("does not lie on the line");
    }

    @Test
    void what_a_strip_shows_is_not_reckoned() {
        assertThat(why(
                        on(
                                "silica",
                                reading(RED, hexaneAcetone(10), "silica", 0.1),
                                reading(RED, hexaneAcetone(30), "silica", 0.4)),
                        RED,
                        hexaneAcetone(30)))
                .contains("a strip in");
    }

    private static Eluent hexaneAcetone(double percent) {
        return blend("hexane", "acetone", percent);
    }

    private static String why(Estimates estimates, Dye dye, Eluent eluent) {
        return Optional.of(estimates.estimate(dye, eluent))
                .map(estimate -> ((NotReckoned) estimate).why())
                .orElseThrow();
    }
}
