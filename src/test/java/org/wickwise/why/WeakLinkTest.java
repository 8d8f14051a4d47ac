package org.wickwise.why;

import static org.wickwise.TriedLimit.fallsAsTheTableTells;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.TriesLimit;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Strip;

/** The limit from which on a reading is told as a weak link. */
class WeakLinkTest {

    private static final String LIMIT = "leaning of a weak link";

    @Test
    @TriesLimit(limit = LIMIT, in = "why/FirmLines")
    void a_reading_is_a_weak_link_from_the_limit_on() {
        for (double leaning : new double[] {0.3, -0.3}) {
            fallsAsTheTableTells(LIMIT, "why/FirmLines", 0.3, limit -> FirmLines.of(firmness(limit, leaning)).stream()
                    .anyMatch(line -> line.text().startsWith("The weakest link is the reading of")));
        }
    }

    /** Two redraws of the demo, in one of which something else came out. */
    private static Firmness firmness(double limit, double leaning) {
        Judge judge = Shipped.bench().judge();
        Case demo = Shipped.caseIn(Shipped.DEMO);
        Map<String, Limit> limits = new HashMap<>(judge.rulebook().limits());
        limits.computeIfPresent(LIMIT, (any, shipped) -> shipped.supposed(limit, shipped.place()));
        Strip strip = demo.strips().get(0);
        return new Firmness(
                judge.judge(demo, limits),
                List.of(),
                "the plan",
                2,
                1,
                1,
                Map.of("another plan", 1),
                List.of(new Firmness.Link(strip, strip.spots().get(0), leaning)));
    }
}
