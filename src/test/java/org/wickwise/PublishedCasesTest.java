package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wickwise.PublishedPlans.order;
import static org.wickwise.PublishedPlans.plan;
import static org.wickwise.PublishedPlans.poured;
import static org.wickwise.PublishedPlans.solvent;
import static org.wickwise.PublishedPlans.text;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Step;
import org.wickwise.report.Heading;
import org.wickwise.report.ReasonText;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * Published separations as executable cases: the case files in {@code docs/published} name their sources,
 * each test is one box of the checklist drawn up from the source. A plan may differ from the published one; it has to
 * meet the list.
 */
class PublishedCasesTest {

    private static List<Eluent> everythingPoured(Plan plan) {
        List<Eluent> eluents = new java.util.ArrayList<>(
                plan.route().orElseThrow().steps().stream().map(Step::eluent).toList());
        eluents.add(plan.packing().orElseThrow());
        return eluents;
    }

    private static boolean contains(Eluent eluent, String solvent) {
        return eluent.contains(solvent(solvent));
    }

    private static boolean isHydrocarbon(Eluent eluent) {
        return eluent.parts().stream().allMatch(part -> part.solvent().family().equals("hydrocarbon"));
    }

    private static Behaviour behaviour(Plan plan, String dye, String eluent) {
        return plan.judgement().all(Conclusion.Behaves.class).stream()
                .filter(behaves -> behaves.dye().name().equals(dye))
                .filter(behaves -> behaves.eluent().name().equals(eluent))
                .findFirst()
                .orElseThrow()
                .behaviour();
    }

    private static Separation separation(Plan plan, String one, String other) {
        List<String> pair = List.of(one, other);
        return plan.judgement().all(Conclusion.Between.class).stream()
                .filter(between -> pair.contains(between.ahead().name())
                        && pair.contains(between.behind().name()))
                .findFirst()
                .orElseThrow()
                .separation();
    }

    /** J. Chem. Educ., about 1980-82; course reports. */
    @Nested
    class FluoreneAndFluorenoneOnAlumina {

        private final Plan plan = plan("d01-fluorene-fluorenone");

        @Test
        void thePackingAndTheFirstEluentAreAnAlkane() {
            assertThat(plan.packing()).get().matches(PublishedCasesTest::isHydrocarbon);
            assertThat(poured(plan, 0)).matches(PublishedCasesTest::isHydrocarbon);
        }

        @Test
        void fluoreneComesFirstAndTheYellowKetoneIsHeldBack() {
            assertThat(order(plan)).containsExactly(List.of("fluorene"), List.of("9-fluorenone"));
            assertThat(plan.route().orElseThrow().steps().get(0).staying())
                    .extracting(Dye::name)
                    .containsExactly("9-fluorenone");
        }

        @Test
        void theSecondEluentIsStronger() {
            Eluent second = poured(plan, 1);
            boolean stronger = contains(second, "dichloromethane")
                    || contains(second, "acetone")
                    || contains(second, "ethyl acetate");
            assertThat(stronger).as(second.name()).isTrue();
        }

        @Test
        void itWarnsThatNeatAlkaneMayNotDissolveTheLoadAndOffersAWayOut() {
            assertThat(text(plan, Section.SAFETY))
                    .contains("The load may not dissolve", "a few drops of toluene or dichloromethane", "load dry");
        }

        @Test
        void noWaterAndNoMethanolAreNeeded() {
            assertThat(everythingPoured(plan))
                    .noneMatch(eluent -> contains(eluent, "water") || contains(eluent, "methanol"));
        }

        @Test
        void itCautionsThatStripAndColumnDifferAndAsksForAStripOnTheColumnsOwnPhase() {
            assertThat(text(plan, Section.SAFETY)).contains("Strips and column differ in stationary phase");
            assertThat(text(plan, Section.NEXT)).contains("on a strip of the column's own stationary phase");
        }
    }

    /** Laboratory manual; J. Chem. Educ. 1951, 28, 39 for ethanol, then water, on alumina. */
    @Nested
    class MethyleneBlueAndFluoresceinOnAlumina {

        private final Plan plan = plan("d02-methylene-blue-fluorescein");

        @Test
        void thePackingAndTheFirstEluentAreAnAlcohol() {
            assertThat(poured(plan, 0).parts().get(0).solvent().family()).isEqualTo("alcohol");
            assertThat(plan.packing()).contains(poured(plan, 0));
        }

        @Test
        void methyleneBlueComesFirst() {
            assertThat(order(plan)).containsExactly(List.of("methylene blue"), List.of("fluorescein"));
        }

        @Test
        void theSecondEluentContainsWaterAndIsAcceptedForIonicDyesOnAlumina() {
            assertThat(contains(poured(plan, 1), "water")).isTrue();
        }

        @Test
        void noHydrocarbonAndNotOneEluentForBoth() {
            assertThat(everythingPoured(plan)).noneMatch(PublishedCasesTest::isHydrocarbon);
            assertThat(plan.route().orElseThrow().steps()).hasSize(2);
        }
    }

    /** E. Nicol, teacher collection. */
    @Nested
    class GrapeDrinkOnC18 {

        private final Plan plan = plan("d03-grape-drink-c18");

        @Test
        void moreOrganicIsStronger() {
            List<Double> methanol = plan.route().orElseThrow().steps().stream()
                    .map(step -> step.eluent().percentOf(solvent("methanol")))
                    .toList();
            assertThat(methanol).isSorted().doesNotHaveDuplicates();
        }

        @Test
        void theBedIsWettedWithAlcoholThenRinsedWithThePackingSolvent() {
            assertThat(text(plan, Section.PACKING))
                    .containsSubsequence("Wet the bed", "methanol", "then rinse it", "packing solvent");
        }

        @Test
        void itLoadsInWaterAndNothingIsLost() {
            assertThat(plan.packing().orElseThrow().name()).isEqualTo("water");
            assertThat(text(plan, Section.SAFETY)).contains("nothing is lost");
        }

        @Test
        void weakAqueousAlcoholTakesRedOnlyAndStrongAlcoholTakesBlue() {
            assertThat(order(plan)).containsExactly(List.of("red"), List.of("blue"));
            assertThat(poured(plan, 0).percentOf(solvent("methanol"))).isEqualTo(30);
            assertThat(poured(plan, 1).percentOf(solvent("methanol"))).isEqualTo(100);
        }

        @Test
        void nothingThatDoesNotMixWithWaterMayEnterTheWetBed() {
            for (String name : List.of("hexane", "diethyl ether", "toluene", "dichloromethane", "ethyl acetate")) {
                assertThat(plan.judgement()
                                .holds(new Conclusion.Fitness(Eluent.neat(solvent(name)), Conclusion.Fit.UNFIT)))
                        .as(name)
                        .isTrue();
            }
        }
    }

    /** Course manual, Experiment 16. */
    @Nested
    class SpinachOnAlumina {

        private final Plan plan = plan("d04-spinach-alumina");

        @Test
        void itBeginsWithAnAlkaneAndCaroteneComesFirst() {
            assertThat(plan.packing()).get().matches(PublishedCasesTest::isHydrocarbon);
            assertThat(order(plan).get(0)).containsExactly("carotene");
        }

        @Test
        void anAlkaneAcetoneBlendBringsGreenAfterYellow() {
            Eluent blend = poured(plan, 0);
            assertThat(contains(blend, "hexane")).isTrue();
            assertThat(blend.percentOf(solvent("acetone"))).isBetween(20.0, 40.0);
            assertThat(order(plan).get(1)).containsExactly("chlorophyll");
        }

        @Test
        void theSlowestYellowNeedsAStrongerLastStepThatIsMarkedAsAnEstimate() {
            assertThat(order(plan).get(2)).containsExactly("xanthophyll");
            assertThat(plan.line("step-2").orElseThrow().text()).contains("estimated, not tried on a strip");
            assertThat(text(plan, Section.NEXT)).contains("Run a strip in " + poured(plan, 1));
        }

        @Test
        void itProtectsThePigmentsFromLight() {
            assertThat(text(plan, Section.SAFETY)).contains("fades in light", "in the dark");
        }

        @Test
        void noWaterIsPoured() {
            assertThat(everythingPoured(plan)).noneMatch(eluent -> contains(eluent, "water"));
        }
    }

    /** Laboratory report on ortho and para nitrophenol. */
    @Nested
    class NitrophenolsOnSilica {

        private final Plan plan = plan("d05-nitrophenols-silica");

        @Test
        void theFirstEluentIsAlkaneWithDichloromethaneAndOrthoComesFirst() {
            assertThat(contains(poured(plan, 0), "hexane")).isTrue();
            assertThat(contains(poured(plan, 0), "dichloromethane")).isTrue();
            assertThat(order(plan)).containsExactly(List.of("2-nitrophenol"), List.of("4-nitrophenol"));
        }

        @Test
        void theReasonGivenNamesTheInternalHydrogenBond() {
            assertThat(ReasonText.of(plan.line("step-1").orElseThrow(), Heading.plain()))
                    .contains("internal hydrogen bond");
        }

        @Test
        void theSecondEluentContainsEthylAcetate() {
            assertThat(contains(poured(plan, 1), "ethyl acetate")).isTrue();
        }

        @Test
        void fractionsAreConcentratedBeforeABlankPlateIsJudged() {
            assertThat(text(plan, Section.SAFETY)).contains("Before you call a fraction empty, concentrate it");
        }
    }

    /** Korean laboratory report; plates only. */
    @Nested
    class FourDyesOnSilica {

        private final Plan plan = plan("d07-four-dyes-silica");

        @Test
        void ethylAcetateMovesTwoDyesAndLeavesTwo() {
            assertThat(poured(plan, 0).name()).isEqualTo("ethyl acetate");
            assertThat(plan.route().orElseThrow().steps().get(0).leaving())
                    .extracting(Dye::name)
                    .containsExactlyInAnyOrder("Sudan IV", "Bismarck brown");
        }

        @Test
        void itRecommendsSomethingWeakerToPartTheFastPair() {
            assertThat(text(plan, Section.NEXT))
                    .contains("To part Bismarck brown and Sudan IV", "weaker than ethyl acetate", "alkane");
        }

        @Test
        void methanolComesLastWithTheSilicaCaution() {
            assertThat(contains(poured(plan, 1), "methanol")).isTrue();
            assertThat(text(plan, Section.SAFETY)).contains("methanol may carry silica fines");
        }

        @Test
        void itReportsThatRhodamineAndFastGreenMayChangePlacesInsteadOfAFixedOrder() {
            assertThat(text(plan, Section.STRIPS)).contains("Rhodamine B and Fast Green cannot be told apart");
            assertThat(text(plan, Section.SAFETY))
                    .contains(
                            "Fast Green in ethyl acetate + methanol 1:1: It runs before Rhodamine B here and seemed to run"
                                    + " behind it in ethyl acetate",
                            "Rhodamine B and Fast Green may change places");
        }

        @Test
        void twoDyesNearTheFrontAreNoColumnWindow() {
            assertThat(text(plan, Section.SAFETY))
                    .contains("Bismarck brown in ethyl acetate", "no window for parting it from another fast dye");
            assertThat(order(plan)).contains(List.of("Bismarck brown", "Sudan IV"));
        }
    }

    /** Question with plates in water and in ethanol, the latter not visible. */
    @Nested
    class RhodamineAndAmaranthOnSilica {

        private final Plan plan = plan("d13-rhodamine-amaranth-silica");

        @Test
        void waterMovesOneDyeOnlyAndThatDyeRunsWithTheFront() {
            assertThat(behaviour(plan, "amaranth", "water")).isEqualTo(Behaviour.RUNS_AHEAD);
            assertThat(behaviour(plan, "Rhodamine B", "water")).isEqualTo(Behaviour.STAYS);
            assertThat(text(plan, Section.SAFETY)).contains("amaranth in water: It runs with the front");
        }

        @Test
        void itRefusesAndSaysThatRhodamineNeedsAnAlcohol() {
            assertThat(plan.isRefusal()).isTrue();
            assertThat(text(plan, Section.NEXT)).contains("Rhodamine B", "ethanol 80 % + water 20 %");
        }

        @Test
        void itCautionsAboutPlainWaterOnSilicaAndOffersAqueousAlcoholOrAnotherBed() {
            assertThat(text(plan, Section.FITNESS))
                    .contains("swells and re-packs the bed", "aqueous alcohol", "cellulose or C18");
        }
    }

    /** marz-kreations.com, ethanol series on paper. */
    @Nested
    class InkInEthanolAndWaterOnPaper {

        private final Plan plan = plan("d14-ink-ethanol-water-paper");

        @Test
        void itPicksTheMiddleAndNotTheStrongest() {
            assertThat(everythingPoured(plan)).allSatisfy(eluent -> assertThat(eluent.percentOf(solvent("ethanol")))
                    .isBetween(50.0, 60.0));
            assertThat(order(plan)).containsExactly(List.of("violet"), List.of("cyan"));
        }

        @Test
        void eightyPerCentMovesEverythingAndThirtyPerCentStreaks() {
            assertThat(behaviour(plan, "violet", "ethanol + water 4:1")).isEqualTo(Behaviour.RUNS_AHEAD);
            assertThat(behaviour(plan, "cyan", "ethanol + water 4:1")).isEqualTo(Behaviour.RUNS_AHEAD);
            assertThat(text(plan, Section.DOUBTS)).contains("Violet left a streak on the strip in water + ethanol 7:3");
        }

        @Test
        void theOptimumLiesInTheMiddle() {
            List<String> parting = plan.judgement().all(Conclusion.Between.class).stream()
                    .filter(between -> between.separation() == Separation.PARTED)
                    .map(between -> between.eluent().name())
                    .toList();
            assertThat(parting)
                    .contains("ethanol + water 3:2")
                    .doesNotContain("ethanol + water 4:1", "ethanol + water 7:3", "water + ethanol 7:3");
        }
    }

    /** Student laboratory report, 2014, front 40 mm. */
    @Nested
    class SixDyesInSaltWaterOnPaper {

        private final Plan plan = plan("d15-six-dyes-salt-water-paper");

        @Test
        void blueOneAndBlueTwoPartFromTheRest() {
            for (String other : List.of("Red 3", "Red 40", "Yellow 5", "Yellow 6")) {
                assertThat(separation(plan, "Blue 1", other)).as(other).isEqualTo(Separation.PARTED);
                assertThat(separation(plan, "Blue 2", other)).as(other).isEqualTo(Separation.PARTED);
            }
        }

        @Test
        void theTwoYellowsAndTheTwoRedsAreNotSafelyParted() {
            assertThat(separation(plan, "Yellow 5", "Yellow 6")).isEqualTo(Separation.TOUCHING);
            assertThat(separation(plan, "Red 3", "Red 40")).isEqualTo(Separation.TOUCHING);
            assertThat(text(plan, Section.STRIPS).toLowerCase(Locale.ROOT))
                    .contains("yellow 6 and yellow 5 are not safely parted", "red 40 and red 3 are not safely parted");
        }

        @Test
        void anRfOfEightTenthsIsNoColumnWindow() {
            assertThat(behaviour(plan, "Blue 1", "water with salt 0.1 %")).isEqualTo(Behaviour.RUNS_AHEAD);
            assertThat(text(plan, Section.SAFETY)).contains("Blue 1 in water with salt 0.1 %: It runs with the front");
        }
    }
}
