package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Period;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

/** How long a bottle has been open, in words. */
class OpenBottlesTest {

    @ParameterizedTest
    @CsvSource({
        "P1M, 1 month",
        "P2M, 2 months",
        "P1M1D, 1 month and 1 day",
        "P1Y1M2D, 13 months and 2 days",
        "P5D, 5 days",
        "P0D, 0 days"
    })
    void one_month_and_one_day_are_told_in_the_singular(String open, String words) {
        Eluent eluent = Eluent.neat(Shipped.data().solvent("diethyl ether").orElseThrow());
        Fact.OpenFor bottle = new Fact.OpenFor(eluent, "the ether", Period.parse(open), new Place("test", 1));
        assertThat(bottle.reason().statement()).isEqualTo("the ether has been open for " + words);
    }
}
