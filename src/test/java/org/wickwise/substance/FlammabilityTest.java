package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.substance.FlammabilityScheme.LiquidClass;

/** How liquids are sorted; the limits of the two standards stand in the table of check values. */
class FlammabilityTest {

    @Test
    void both_standards_are_shipped_and_others_are_unknown() {
        assertThat(Shipped.data().flammability("UN GHS")).isPresent();
        assertThat(Shipped.data().flammability("NFPA 30")).isPresent();
        assertThat(Shipped.data().flammability("NFPA 31")).isEmpty();
    }

    @Test
    void a_liquid_belongs_to_the_first_class_it_fits_or_to_none() {
        LiquidClass cold = new LiquidClass(
                "cold",
                Optional.of("H225"),
                OptionalDouble.of(23),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        LiquidClass warm = new LiquidClass(
                "warm",
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(60),
                OptionalDouble.of(200),
                OptionalDouble.of(200));
        FlammabilityScheme scheme = new FlammabilityScheme("invented", List.of(cold, warm), "invented");
        assertThat(scheme.of(22.9, 300)).contains(cold);
        assertThat(scheme.of(23, 100)).contains(warm);
        assertThat(scheme.of(60, 199.9)).contains(warm);
        assertThat(scheme.of(60, 200)).isEmpty();
        assertThat(scheme.of(60.1, 100)).isEmpty();
        assertThat(scheme.hazardCodes()).containsExactly("H225");
    }

    @Test
    void what_is_no_number_is_refused() {
        FlammabilityScheme scheme = Shipped.data().flammability("UN GHS").orElseThrow();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> scheme.of(Double.NaN, 80))
                .withMessageContaining("expected two numbers");
        assertThatIllegalArgumentException().isThrownBy(() -> scheme.of(10, Double.POSITIVE_INFINITY));
    }
}
