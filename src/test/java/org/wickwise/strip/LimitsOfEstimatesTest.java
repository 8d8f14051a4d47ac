package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wickwise.TriedLimit.fallsAsTheTableTells;
import static org.wickwise.strip.Written.blend;
import static org.wickwise.strip.Written.neutral;
import static org.wickwise.strip.Written.reading;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.wickwise.TriesLimit;
import org.wickwise.strip.Estimate.NotReckoned;
import org.wickwise.strip.Estimate.Reckoned;
import org.wickwise.strip.Estimates.Allowances;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** What is reckoned from strips and what is not, tried at the limits. */
class LimitsOfEstimatesTest {

    private static final String RECKONING = "rulebook/Reckoning";
    private static final Dye RED = neutral("red");
    private static final Dye BLUE = neutral("blue");

    /** 0.35 less 0.25 is a little less than 0.1 to a computer, and 0.1 to everybody else. */
    @Test
    @TriesLimit(limit = "parting gap", in = RECKONING)
    void a_pair_that_is_parted_by_just_the_parting_gap_changes_places() {
        fallsAsTheTableTells("parting gap", RECKONING, 0.1, limit -> changePlaces(limit, 0.95));
    }

    @Test
    @TriesLimit(limit = "sureness of parting", in = RECKONING)
    void a_pair_that_is_parted_just_surely_enough_changes_places() {
        double uncertainty = Math.hypot(0.01, 0.01);
        double chance = Numbers.steady(
                1 - new NormalDistribution(0.1, uncertainty).cumulativeProbability(Written.ALLOWANCES.touchingGap()));
        assertThat(chance).isStrictlyBetween(0.9, 1.0);
        fallsAsTheTableTells("sureness of parting", RECKONING, chance, limit -> changePlaces(0.1, limit));
    }

    /** From 30 to 60 % water is replaced; 63 % lies a tenth of the span beyond. */
    @Test
    @TriesLimit(limit = "reach beyond the strips", in = RECKONING)
    void a_blend_just_as_far_beyond_the_strips_as_the_reach_is_reckoned() {
        fallsAsTheTableTells(
                "reach beyond the strips",
                RECKONING,
                0.1,
                limit -> Estimates.of(
                                        List.of(
                                                reading(RED, waterMethanol(30), "C18", 0.2),
                                                reading(RED, waterMethanol(60), "C18", 0.6)),
                                        Written.phase("C18"),
                                        allowances(limit, 0.1, 0.95))
                                .estimate(RED, waterMethanol(63))
                        instanceof Reckoned);
    }

    private static boolean changePlaces(double partingGap, double sureness) {
        Estimates estimates = Estimates.of(
                List.of(
                        reading(RED, waterMethanol(30), "C18", 0.25),
                        reading(RED, waterMethanol(60), "C18", 0.7),
                        reading(BLUE, waterMethanol(30), "C18", 0.35),
                        reading(BLUE, waterMethanol(60), "C18", 0.5)),
                Written.phase("C18"),
                allowances(0.1, partingGap, sureness));
        return estimates.estimate(RED, waterMethanol(40)) instanceof NotReckoned why
                && why.why().contains("change places");
    }

    private static Eluent waterMethanol(double percent) {
        return blend("water", "methanol", percent);
    }

    private static Allowances allowances(double reach, double partingGap, double sureness) {
        Allowances usual = Written.ALLOWANCES;
        return new Allowances(
                usual.scatterOfOnePair(),
                usual.scatterAcrossSolvents(),
                reach,
                partingGap,
                usual.touchingGap(),
                sureness,
                usual.reasons());
    }
}
