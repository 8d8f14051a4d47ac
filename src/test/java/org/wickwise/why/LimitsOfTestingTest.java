package org.wickwise.why;

import static org.wickwise.TriedLimit.fallsAsTheTableTells;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.TriedLimit;
import org.wickwise.TriesLimit;
import org.wickwise.plan.Advantage;
import org.wickwise.plan.Plan;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.text.Numbers;

/** When testing may stop, which strip is worth running and which reading another dye, tried at the limits. */
class LimitsOfTestingTest {

    private static final Plan PLAN = Shipped.planOf(Shipped.DEMO);
    private static final Strip STRIP = PLAN.judged().strips().get(0);
    private static final String NEXT_STRIPS = "why/NextStrips";
    private static final int DRAWS = 100;

    /** A hundred times 0.29 is a little less than 29 to a computer, and 29 to everybody else. */
    @Test
    @TriesLimit(limit = "firm enough to stop testing", in = NEXT_STRIPS)
    void a_plan_that_stays_just_often_enough_is_firm() {
        fallsAsTheTableTells(
                "firm enough to stop testing", NEXT_STRIPS, 29, limit -> next("firm enough to stop testing", limit)
                        .isFirm());
    }

    @Test
    @TriesLimit(limit = "chance worth a strip", in = NEXT_STRIPS)
    void a_strip_with_just_chance_enough_is_worth_running() {
        fallsAsTheTableTells("chance worth a strip", NEXT_STRIPS, 29, limit -> !next("chance worth a strip", limit)
                .worthRunning()
                .isEmpty());
    }

    /** 0.9 less 0.7 is a little more than 0.2 to a computer, and 0.2 to everybody else. */
    @Test
    @TriesLimit(limit = "saving worth a strip", in = NEXT_STRIPS)
    void a_plan_that_saves_just_enough_is_a_better_one() {
        Advantage byCost = new Advantage("cost", 0.7, 0.9, true);
        fallsAsTheTableTells("saving worth a strip", NEXT_STRIPS, 0.2, byCost::isBetterBy);
    }

    @Test
    @TriesLimit(limit = "another dye limit", in = "why/NeededLines")
    void a_reading_just_as_far_off_as_the_limit_may_be_the_same_dye() {
        Change.OfReading change =
                new Change.OfReading(STRIP, PLAN.judged().dyes().get(0), new RetardationFactor(0.3, 0.02), 41, 100);
        fallsAsTheTableTells(
                "another dye limit", "why/NeededLines", Numbers.steady(change.size()), change::isFurtherOffThan);
    }

    /** Of a hundred redraws 29 are the same, and of a hundred draws 29 better. */
    private static NextStrips next(String limit, double value) {
        Plan plan = new Plan(TriedLimit.under(PLAN.judgement(), limit, value), PLAN.route(), PLAN.lines());
        Firmness firmness =
                new Firmness(plan.judgement(), List.of(), "the plan", DRAWS, 1, 29, Map.of("another", 71), List.of());
        List<Prospect.Draw> draws = IntStream.range(0, DRAWS)
                .mapToObj(i -> new Prospect.Draw(
                        "the plan",
                        i < 29,
                        i < 29 ? Optional.of(new Prospect.Better(Optional.empty(), 0)) : Optional.empty(),
                        Optional.empty(),
                        Collections.nCopies(3, 0.5)))
                .toList();
        Prospect prospect = new Prospect(new StripToRun(STRIP.eluent(), StripToRun.Kind.FIRST), draws);
        return new NextStrips(plan, firmness, List.of(prospect), DRAWS, 1);
    }
}
