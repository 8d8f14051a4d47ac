package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Strip;

/** The limit from which on a reading is told as a weak link. */
class WeakLinkTest {

    private static final String LIMIT = "leaning of a weak link";

    @ParameterizedTest
    @CsvSource({"0.3, 0.29, false", "0.3, 0.3, true", "0.3, -0.31, true", "0.5, 0.49, false", "0.5, -0.5, true"})
    void a_reading_is_a_weak_link_from_the_limit_on(double limit, double leaning, boolean isLink) {
        String text = FirmLines.of(firmness(limit, leaning)).stream()
                .filter(line -> line.label().equals("weakest"))
                .findFirst()
                .orElseThrow()
                .text();
        assertThat(text)
                .startsWith(isLink ? "The weakest link is the reading of" : "No single reading is the weak link");
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
