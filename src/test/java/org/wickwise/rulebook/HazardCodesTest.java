package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.substance.Solvent;

/** No hazard code of the table goes without a caution. */
class HazardCodesTest {

    /** Liquids that catch fire at room temperature: the rules ask for the flash point and not for these codes. */
    private static final Set<String> TOLD_BY_FLASH_POINT = Set.of("H224", "H225");

    /** The limit of UN GHS chapter 2.6, also between H225 and H226. */
    private static final double FLASH_POINT_CELSIUS = 23;

    @Test
    void every_code_that_a_solvent_carries_is_what_some_caution_asks_for() {
        Set<String> asked = Shipped.rulebook().rules().stream()
                .filter(rule -> rule.layer().equals("cautions"))
                .flatMap(rule -> rule.when().stream())
                .flatMap(said -> said.slots().stream())
                .collect(Collectors.toSet());
        Set<String> untold = new TreeSet<>();
        Shipped.data().solvents().forEach(solvent -> untold.addAll(codes(solvent)));

        assertThat(untold).hasSizeGreaterThan(20);
        untold.removeAll(asked);
        assertThat(untold).isSubsetOf(TOLD_BY_FLASH_POINT);
    }

    @Test
    void a_liquid_with_a_code_of_catching_fire_has_a_flash_point_that_the_rules_hear_of() {
        assertThat(Shipped.rulebook().limits().get("warm flash point").value()).isEqualTo(FLASH_POINT_CELSIUS);
        assertThat(Shipped.data().solvents())
                .filteredOn(solvent -> codes(solvent).stream().anyMatch(TOLD_BY_FLASH_POINT::contains))
                .hasSizeGreaterThan(20)
                .allSatisfy(solvent ->
                        assertThat(solvent.number("flash point").orElseThrow()).isLessThan(FLASH_POINT_CELSIUS));
    }

    private static Set<String> codes(Solvent solvent) {
        return solvent.value("hazard codes").stream()
                .flatMap(value -> value.texts().stream())
                .filter(text -> text.matches("H\\d{3}.*"))
                .collect(Collectors.toSet());
    }
}
