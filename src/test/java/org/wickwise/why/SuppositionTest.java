package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.text.ProblemsFound;

class SuppositionTest {

    private static final Judge JUDGE = Shipped.bench().judge();
    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);

    static Stream<Arguments> changes() {
        Path spinach = Shipped.PUBLISHED.resolve("d04-spinach-alumina.yaml");
        return Stream.of(
                Arguments.of(Shipped.DEMO, List.of("rust in ethyl acetate at 60 mm")),
                Arguments.of(Shipped.DEMO, List.of("rust in ethyl acetate at Rf 0.02", "straw stays in ethanol")),
                Arguments.of(Shipped.DEMO, List.of("without the strip in acetone")),
                Arguments.of(Shipped.DEMO, List.of("without the strip in ethyl acetate", "without the bottle ethanol")),
                Arguments.of(
                        Shipped.DEMO, List.of("a strip in toluene: straw at Rf 0.4, rust stays, harbour blue stays")),
                Arguments.of(Shipped.DEMO, List.of("the column is alumina")),
                Arguments.of(Shipped.DEMO, List.of("the setting is secondary school")),
                Arguments.of(Shipped.DEMO, List.of("the parting gap is 0.3", "the staying limit is 0.1")),
                Arguments.of(spinach, List.of("xanthophyll in hexane + acetone 7:3 at Rf 0.3")),
                Arguments.of(spinach, List.of("the column is silica", "without the bottle acetone")));
    }

    private static Supposition supposition(Case written, List<String> changes) {
        return SuppositionReader.read(changes, written, JUDGE.rulebook().limits(), Shipped.data());
    }

    @ParameterizedTest
    @MethodSource("changes")
    void changing_what_is_laid_out_concludes_what_judging_the_changed_case_afresh_does(
            Path file, List<String> changes) {
        Case written = Shipped.caseIn(file);
        Supposition supposed = supposition(written, changes);
        try (LaidOutCase laidOut = JUDGE.layOut(written)) {
            assertThat(laidOut.suppose(supposed.supposed(), supposed.limits())
                            .reasons()
                            .keySet())
                    .containsExactlyInAnyOrderElementsOf(JUDGE.judge(supposed.supposed(), supposed.limits())
                            .reasons()
                            .keySet());
            assertThat(laidOut.suppose(written, JUDGE.rulebook().limits())
                            .reasons()
                            .keySet())
                    .as("and back again")
                    .containsExactlyInAnyOrderElementsOf(
                            JUDGE.judge(written).reasons().keySet());
        }
    }

    @Test
    void a_dye_that_is_read_elsewhere_takes_no_old_look_at_its_gaps_with_it() {
        Case watched = CaseReader.parse(
                "watched.yaml",
                """
                title: watched (invented)
                mixture: {dyes: [{name: red, class: neutral}, {name: blue, class: neutral}]}
                column: {stationary phase: silica}
                setting: college
                strips:
                  - solvent: ethyl acetate
                    Rf: {red: 0.43, blue: 0.4}
                    gaps: [{ahead: red, behind: blue, looks: touching}]
                """,
                Shipped.data());
        Judgement before = JUDGE.judge(watched);
        Supposition apart = supposition(watched, List.of("blue in ethyl acetate at Rf 0.05"));
        Judgement after = JUDGE.judge(apart.supposed(), apart.limits());
        assertThat(before.all(Conclusion.Between.class))
                .extracting(Conclusion.Between::separation)
                .containsExactly(Conclusion.Separation.TOUCHING);
        assertThat(after.all(Conclusion.Between.class))
                .extracting(Conclusion.Between::separation)
                .containsExactly(Conclusion.Separation.PARTED);
    }

    @Test
    void supposing_nothing_changes_nothing() {
        Supposition nothing = supposition(DEMO, List.of());
        Planner planner = new Planner(JUDGE.rulebook());
        Plan before = planner.plan(JUDGE.judge(DEMO));
        Plan after = planner.plan(JUDGE.judge(nothing.supposed(), nothing.limits()));
        List<PlanLine> lines = Comparison.of(before, after, JUDGE.objections(after.judgement()));
        assertThat(lines).extracting(PlanLine::label).containsExactly("plan", "same");
        assertThat(lines.get(0).text()).startsWith("The plan stays");
    }

    private static List<String> compared(String... changes) {
        Supposition supposed = supposition(DEMO, List.of(changes));
        Planner planner = new Planner(JUDGE.rulebook());
        Plan after = planner.plan(JUDGE.judge(supposed.supposed(), supposed.limits()));
        return Comparison.of(planner.plan(JUDGE.judge(DEMO)), after, JUDGE.objections(after.judgement())).stream()
                .map(PlanLine::text)
                .toList();
    }

    @Test
    void a_plan_on_another_bed_is_told_to_be_a_guess_as_the_plan_itself_tells() {
        List<String> lines = compared("the column is cellulose");
        assertThat(lines.get(0))
                .startsWith(
                        "The plan would be: pack with heptane, then pour ethyl acetate, then acetone. A guess: strips"
                                + " were run on another stationary phase than the column's, and an Rf does not carry over. It was:");
        assertThat(compared("without the bottle heptane").get(0)).doesNotContain("A guess");
    }

    @Test
    void what_holds_by_fewer_rules_is_told_without_denying_the_rule_that_still_speaks() {
        assertThat(compared("the column is cellulose"))
                .contains("Still: harbour blue stays in heptane by rule stays-by-rf; rule polar-groups-hold-by-rf falls"
                        + " silent.")
                .noneMatch(line -> line.contains("and not by"));
    }

    @Test
    void a_bottle_taken_away_is_the_cause_of_what_no_longer_holds() {
        assertThat(compared("without the bottle heptane"))
                .contains(
                        "Then: heptane is unfit for this column, because the bottle heptane was taken away (before: heptane"
                                + " is fit for this column).",
                        "No longer: heptane holds every dye, because the bottle heptane was taken away.")
                .noneMatch(line -> line.contains("which is ruled out"));
    }

    @Test
    void what_takes_the_place_of_another_verdict_is_told_once_with_its_reason() {
        List<String> lines = compared("the column is alumina");
        assertThat(lines)
                .anyMatch(line ->
                        line.startsWith("Then: the strip in acetone is doubtful (before: the strip in acetone is"
                                + " usable). The strip in acetone speaks for its own stationary phase"))
                .contains(
                        "Then: the strip in ethanol is doubtful (before: the strip in ethanol is usable). For the same"
                                + " reason as `new-1`.")
                .noneMatch(line -> line.startsWith("No longer: the strip"));
    }

    @Test
    void every_mistake_of_a_supposition_is_told_with_what_can_be_supposed() {
        ProblemsFound found = catchThrowableOfType(
                ProblemsFound.class,
                () -> supposition(
                        DEMO,
                        List.of(
                                "rust flies",
                                "the parting gab is 0.3",
                                "rust in acetone at 80 mm",
                                "rust in acetone at 10 mm",
                                "rust in acetone at 12 mm",
                                "without the bottle gin")));
        assertThat(found.getMessage())
                .contains(
                        "nothing that can be supposed",
                        "did you mean `parting gap`",
                        "at most its front",
                        "supposed twice",
                        "there is no bottle gin");
    }

    @Test
    void every_example_of_the_help_can_be_supposed_of_the_demo() {
        for (String example : SuppositionReader.EXAMPLES) {
            String filled = example.replaceFirst("DYE", "rust")
                    .replaceFirst("DYE", "straw")
                    .replace("PHASE", "alumina")
                    .replace("SOLVENT", "ethyl acetate");
            if (!filled.startsWith("with the bottle")) {
                assertThat(supposition(DEMO, List.of(filled)).changes()).containsExactly(filled);
            }
        }
    }
}
