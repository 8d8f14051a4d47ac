package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.Plan;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** Which eluents may follow one another, and what may go between those that do not mix. */
class MiscibilityTest {

    private final SolventData data = Shipped.data();

    /** The first four pairs: common practice near 20 degC, no source; the rest follows from the solubility rows. */
    @ParameterizedTest
    @CsvSource({
        "hexane, methanol, false",
        "hexane, ethyl acetate, true",
        "ethyl acetate, methanol, true",
        "dichloromethane, water, false",
        "heptane, acetonitrile, false",
        "acetone, water, true",
        "ethyl acetate, water, false",
        "toluene, ethanol, true"
    })
    void pairsMixOrPart(String one, String other, boolean mix) {
        assertThat(data.miscibility().parting(neat(one), neat(other)).isEmpty()).isEqualTo(mix);
        assertThat(data.miscibility().parting(neat(other), neat(one)).isEmpty()).isEqualTo(mix);
    }

    /**
     * Heptane, ethanol and water: two liquids as soon as there is some water, from memory. The shares themselves are our choice.
     */
    @ParameterizedTest
    @CsvSource({
        "heptane + ethyl acetate 3:1, ethanol + water 4:1, false",
        "heptane + ethyl acetate 3:1, ethanol + water 95:5, true",
        "heptane + ethyl acetate 1:3, ethanol + water 4:1, true",
        "toluene, ethanol + water 4:1, false",
        "toluene, ethanol + water 85:15, true",
        "ethyl acetate, ethanol + water 4:1, true",
        "water, acetone + heptane 9:1, false"
    })
    void theLesserPartCountsFromTheShareOfTheTable(String one, String other, boolean mix) {
        Eluent before = eluent(one);
        Eluent after = eluent(other);
        assertThat(data.miscibility().parting(before, after).isEmpty()).isEqualTo(mix);
        assertThat(data.miscibility().parting(after, before).isEmpty()).isEqualTo(mix);
    }

    @Test
    void aHydrocarbonAndAnAlcoholAreBridgedByAnEsterOrAKetone() {
        assertThat(data.miscibility().between(neat("hexane"), neat("methanol")))
                .extracting(Solvent::name)
                .startsWith("ethyl acetate", "acetone", "2-propanol");
    }

    @Test
    void onTheWayToWaterAnEsterIsNoBridge() {
        assertThat(data.miscibility().between(neat("heptane"), neat("water")))
                .extracting(Solvent::name)
                .doesNotContain("ethyl acetate")
                .contains("acetone", "2-propanol");
    }

    @Test
    void thePlanSaysWhatMayGoBetween() {
        Plan plan = Shipped.bench()
                .plan(CaseReader.parse(
                        "case.yaml",
                        """
                        title: two that do not mix
                        mixture: {dyes: [{name: red, class: neutral}, {name: blue, class: neutral}]}
                        column: {stationary phase: cellulose}
                        setting: college
                        shelf: [heptane, methanol, ethyl acetate]
                        strips:
                          - {solvent: heptane, front mm: 80, travel mm: {red: 30, blue: 0}}
                          - {solvent: methanol, front mm: 80, travel mm: {red: 75, blue: 40}}
                        """,
                        data));
        assertThat(plan.line("unmixed-heptane-methanol").orElseThrow().text())
                .contains("Heptane and methanol do not mix", "one column volume of ethyl acetate");
        assertThat(plan.route().orElseThrow().names()).isEqualTo("methanol");
    }

    private Eluent eluent(String written) {
        return new EluentReader(data, Map.of(), new Problems())
                .read(new Scalar(written, new Place("jar", 1)))
                .orElseThrow();
    }

    private Eluent neat(String name) {
        return Eluent.neat(data.solvent(name).orElseThrow());
    }
}
