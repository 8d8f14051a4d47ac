package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wickwise.PublishedPlans.order;
import static org.wickwise.PublishedPlans.percent;
import static org.wickwise.PublishedPlans.plan;
import static org.wickwise.PublishedPlans.planOfVariant;
import static org.wickwise.PublishedPlans.poured;
import static org.wickwise.PublishedPlans.steps;
import static org.wickwise.PublishedPlans.text;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Movement.Measured;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * More published separations as executable cases, most of them about the choice of the bed. Where a source shows too
 * few readings for a plan, the answer is a refusal with advice, and the boxes are about the advice.
 */
class MorePublishedCasesTest {

    private static List<Behaviour> behaviours(Plan plan, String eluent) {
        return plan.judgement().all(Conclusion.Behaves.class).stream()
                .filter(behaves -> behaves.eluent().name().equals(eluent))
                .map(Conclusion.Behaves::behaviour)
                .toList();
    }

    private static Measured measured(Plan plan, String dye, Eluent eluent) {
        Dye known = plan.judged().dyes().stream()
                .filter(one -> one.name().equals(dye))
                .findFirst()
                .orElseThrow();
        return plan.judgement().measured(known, eluent).orElseThrow();
    }

    /** KIMIKA 1997, 13(1), 35-36. */
    @Nested
    class ChilliPigmentsOnSilica {

        private final Plan plan = plan("d06-chilli-silica");

        @Test
        void itStartsWithHexaneAndYellowComesFirst() {
            assertThat(poured(plan, 0).name()).isEqualTo("hexane");
            assertThat(steps(plan).get(0).leaving()).extracting(Dye::name).containsExactly("yellow");
        }

        @Test
        void itStepsUpThroughDichloromethaneForOrangeAndRed() {
            assertThat(poured(plan, 1).name()).isEqualTo("dichloromethane");
            assertThat(steps(plan).get(1).leaving()).extracting(Dye::name).containsExactly("light orange", "red");
        }

        @Test
        void methanolIsASmallLateAdditionForTheLastBrownBandOnly() {
            assertThat(percent(poured(plan, 2), "methanol")).isBetween(1.0, 10.0);
            assertThat(steps(plan).get(2).leaving()).extracting(Dye::name).containsExactly("light brown");
            assertThat(steps(plan).subList(0, 2)).allMatch(step -> percent(step.eluent(), "methanol") == 0);
            assertThat(text(plan, Section.FITNESS)).contains("Methanol may enter as the last step only");
        }

        @Test
        void theRedBandIsTheMainOneAndComesAfterYellow() {
            assertThat(order(plan))
                    .containsExactly(
                            List.of("yellow"), List.of("light orange"), List.of("red"), List.of("light brown"));
            assertThat(plan.line("step-2").orElseThrow().reason().toString()).contains("red is neutral (the main band");
        }
    }

    /** J. Chem. Educ. 1997, 74, 311; doi 10.1186/2193-8865-3-45. */
    @Nested
    class FullerenesOnPlainSilica {

        private final Plan plan = plan("d09-fullerenes-silica");

        @Test
        void silicaWithPolarEluentsHasNoHandleOnThePair() {
            assertThat(plan.isRefusal()).isTrue();
            assertThat(text(plan, Section.NEXT)).contains("Silica with polar eluents has no handle on such a pair");
        }

        @Test
        void itSuggestsAnotherBedRatherThanAStrongerSolvent() {
            assertThat(text(plan, Section.NEXT))
                    .contains(
                            "a stronger solvent only moves both faster",
                            "another bed",
                            "charcoal on silica",
                            "alumina",
                            "C18");
        }

        @Test
        void apolarEluentsOnly() {
            assertThat(text(plan, Section.NEXT))
                    .contains("with apolar eluents only")
                    .doesNotContain("ester", "alcohol", "ethanol", "acetone", "another family");
        }
    }

    /** Isolation of the anthocyanins of blackcurrant fruit, abstract. */
    @Nested
    class AnthocyaninsOfBlackcurrant {

        private static final String FILE = "d10-anthocyanins-cellulose";
        private static final String COLUMN = "column: {stationary phase: cellulose}";

        private final Plan plan = plan(FILE);

        @Test
        void celluloseOrPolyamideAndNotBareAlumina() {
            for (String bare : List.of("alumina", "acidic alumina", "basic alumina", "silica")) {
                assertThat(text(on(bare), Section.NEXT)).as(bare).contains("on cellulose or polyamide instead");
            }
            for (String suitable : List.of("cellulose", "polyamide")) {
                assertThat(text(on(suitable), Section.NEXT)).as(suitable).doesNotContain("instead", "alumina");
            }
        }

        @Test
        void theEluentsAreAqueousAcidifiedAndHoldAlcohol() {
            assertThat(text(plan, Section.NEXT))
                    .contains("alcohol and water with 1 % of acetic or formic acid", "1-butanol + acetic acid + water");
            assertThat(text(on("polyamide"), Section.NEXT))
                    .contains("water with 1 % of acetic or formic acid", "more alcohol");
            assertThat(text(plan, Section.NEXT)).doesNotContain("ammonia");
        }

        @Test
        void itWarnsThatAcidityChangesColourAndMovement() {
            assertThat(text(plan, Section.SAFETY))
                    .contains("Acid or base may change the colour of a charged dye as well as its speed");
            assertThat(text(plan, Section.NEXT)).contains("changes its colour and its speed", "acid throughout");
        }

        private static Plan on(String phase) {
            return planOfVariant(FILE, COLUMN, "column: {stationary phase: " + phase + "}");
        }
    }

    /** J. Anal. Methods Chem. 2017, 9528472. */
    @Nested
    class SulfonatedFoodDyesOnSilicaAndAminoSilica {

        private static final String CARTRIDGE = "d11-food-dyes-amino-silica";

        private final Plan plates = plan("d11-food-dyes-silica");
        private final Plan cartridge = plan(CARTRIDGE);

        @Test
        void esterAndAlkaneLeaveAllAtTheStartAndThePlateNeedsWaterAndAmmonia() {
            assertThat(behaviours(plates, "heptane")).hasSize(5).containsOnly(Behaviour.STAYS);
            assertThat(behaviours(plates, "ethyl acetate")).hasSize(5).containsOnly(Behaviour.STAYS);
            assertThat(text(plates, Section.NEXT))
                    .contains("Tartrazine needs water to move", "with water and 1 % of ammonia")
                    .doesNotContain("more ester");
        }

        @Test
        void baseOrSaltReleasesThemAndNotAMorePolarOrganicSolvent() {
            assertThat(behaviours(cartridge, "water with sodium hydroxide"))
                    .hasSize(5)
                    .containsOnly(Behaviour.TRAVELS);
            assertThat(text(cartridge, Section.SAFETY))
                    .contains("It is the base, or a salt, that releases them; a more polar organic solvent does not");
            Plan stuck = planOfVariant(CARTRIDGE, "travels", "stays");
            assertThat(text(stuck, Section.NEXT))
                    .contains("a base or a salt releases it; a more polar organic solvent does not")
                    .doesNotContain("more ester", "acetone", "more alcohol");
        }

        @Test
        void theCartridgePromisesNoDyeAfterAnother() {
            assertThat(cartridge.isRefusal()).isTrue();
            assertThat(cartridge.judgement().all(Conclusion.LeavesBefore.class)).isEmpty();
            assertThat(text(cartridge, Section.SAFETY)).contains("expect one fraction, not one dye after another");
            assertThat(text(cartridge, Section.NEXT)).contains("lets go of all of them together", "on another bed");
        }
    }

    /** Microchem. J. 1997, 55, 145-150. */
    @Nested
    class TwoTriosOnAlumina {

        private final Plan good = plan("d12-oil-red-trio-alumina");
        private final Plan failed = plan("d12-failed-trio-alumina");

        @Test
        void threeStepsOfRisingStrengthWeakOrganicThenAlcoholThenWaterWithBase() {
            assertThat(steps(good)).hasSize(3);
            assertThat(percent(poured(good, 0), "heptane")).isGreaterThan(50);
            assertThat(poured(good, 1).parts())
                    .allMatch(part -> part.solvent().family().equals("alcohol"));
            assertThat(percent(poured(good, 2), "water")).isGreaterThan(50);
            assertThat(poured(good, 2).additions())
                    .extracting(addition -> addition.additive().kind())
                    .containsExactly("base");
        }

        @Test
        void fluoresceinComesLast() {
            assertThat(order(good))
                    .containsExactly(List.of("Oil Red O"), List.of("Victoria Blue R"), List.of("fluorescein"));
            assertThat(order(failed)).last().isEqualTo(List.of("fluorescein"));
        }

        @Test
        void theFailedTrioHasTwoCationsThatAreAPoorPairAndMayStayOnTheBed() {
            assertThat(text(failed, Section.SAFETY))
                    .contains(
                            "Victoria Blue R and methylene blue are both cationic",
                            "a poor pair",
                            "may stay on the bed for good");
            assertThat(text(good, Section.SAFETY)).doesNotContain("a poor pair");
        }
    }

    /** koreascience JAKO200411922635546, 2004. */
    @Nested
    class MadderOnSilica {

        private final Plan plan = plan("d16-madder-silica");

        @Test
        void theBlendIsInTheColumnWindowForRedAndRedComesFirst() {
            assertThat(poured(plan, 0).name()).isEqualTo("toluene + ethyl acetate 9:1");
            assertThat(measured(plan, "red", poured(plan, 0)).value()).isBetween(0.2, 0.4);
            assertThat(order(plan)).containsExactly(List.of("red"), List.of("yellow"));
        }

        @Test
        void aStrongerStepBringsYellow() {
            assertThat(percent(poured(plan, 1), "ethyl acetate")).isGreaterThan(10);
            assertThat(text(plan, Section.NEXT)).contains("more ester, then acetone or ethanol");
        }

        @Test
        void theSpreadFromPlateToPlateIsCarriedIntoThePlan() {
            assertThat(measured(plan, "red", poured(plan, 0))
                            .retardationFactor()
                            .uncertainty())
                    .isGreaterThan(0.05);
            assertThat(text(plan, Section.STRIPS)).contains("red travels (Rf 0.38 ± 0.11)");
        }
    }

    /** D. Chen, Z. Wu, J. Agric. Sci. (CCSE), article 4512: petroleum ether with 90 % ethanol 2:1 on silica. */
    @Nested
    class CapsicumRedOnSilica {

        private static final String BLEND = "petroleum ether + ethanol + water 20:9:1";
        private final Plan plan = plan("d08-capsicum-red-silica");

        @Test
        void anAlkaneWithAnAlcoholIsTakenAsWorkableAndReleasesThePigment() {
            Eluent blend = plan.judged().strips().get(0).eluent();
            assertThat(blend.name()).isEqualTo(BLEND);
            assertThat(plan.judgement().holds(new Conclusion.Fitness(blend, Fit.UNFIT)))
                    .isFalse();
            assertThat(text(plan, Section.STRIPS)).contains("It releases red pigment");
        }

        @Test
        void theWaterOfTheEthanolAndTheNearLimitOfMixingAreFlagged() {
            assertThat(percent(plan.judged().strips().get(0).eluent(), "water")).isCloseTo(3.3, within(0.1));
            assertThat(text(plan, Section.SAFETY))
                    .contains("may stand near the share at which it parts into two layers");
        }

        @Test
        void aPlateIsAskedForBeforeTheRealLoad() {
            assertThat(text(plan, Section.NEXT)).contains("red pigment should lie at an Rf of 0.2 to 0.35");
        }
    }

    /** E. Stahl, Thin-Layer Chromatography, 2nd ed., Springer 1969, from memory. */
    @Nested
    class StahlTestDyesOnSilica {

        private final Plan plan = plan("d17-stahl-test-dyes-silica");

        @Test
        void hexaneLoadsAndNothingMovesInIt() {
            assertThat(plan.packing().orElseThrow().name()).isEqualTo("hexane");
            assertThat(text(plan, Section.PACKING)).contains("every dye stays in it");
        }

        @Test
        void tolueneMovesButterYellowFirst() {
            assertThat(poured(plan, 0).name()).isEqualTo("toluene");
            assertThat(order(plan).get(0)).containsExactly("butter yellow");
        }

        @Test
        void sudanRedThenIndophenolComeWithAStrongerStepOfAnEsterOrAChlorinatedSolvent() {
            assertThat(order(plan))
                    .containsExactly(List.of("butter yellow"), List.of("Sudan red G"), List.of("indophenol"));
            assertThat(poured(plan, 1).name()).isIn("ethyl acetate", "dichloromethane");
            assertThat(text(plan, Section.NEXT))
                    .contains("Run a strip in " + poured(plan, 1).name());
        }
    }
}
