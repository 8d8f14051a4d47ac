package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.plan.Plan;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Basis;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.BlendProposal;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** What is reckoned for blends nobody ran reaches the judgement; the case is invented. */
class ReckoningTest {

    private static final String NAME = "heptane + ethyl acetate 4:1";

    @TempDir
    private Path folder;

    @Test
    void a_proposed_blend_is_considered_and_not_taken_for_tried() throws Exception {
        Judgement judgement = judged("neutral");
        Eluent blend = blend(judgement);
        Dye red = dye(judgement, "red");
        assertThat(judgement.blends()).extracting(BlendProposal::eluent).contains(blend);
        assertThat(judgement.eluents()).contains(blend);
        assertThat(judgement.tried(blend)).isFalse();
        assertThat(judgement.measured(red, blend)).isEmpty();
        assertThat(judgement.retardation(red, blend).orElseThrow().value()).isBetween(0.2, 0.35);
        assertThat(judgement.holds(new Behaves(red, blend, Behaviour.TRAVELS, Basis.ESTIMATED)))
                .isTrue();
        assertThat(judgement.gaps())
                .anyMatch(
                        gap -> gap instanceof Apart.EstimatedGap && gap.eluent().equals(blend));
    }

    @Test
    void the_reason_goes_down_to_the_readings_of_the_strips() throws Exception {
        Judgement judgement = judged("neutral");
        Reason reason = judgement
                .movement(dye(judgement, "red"), blend(judgement))
                .orElseThrow()
                .reason();
        assertThat(((Reason.Calculated) reason).grounds())
                .extracting(Reason::statement)
                .anyMatch(ground -> ground.startsWith("Rf of red in heptane + ethyl acetate 9:1"))
                .anyMatch(ground -> ground.startsWith("the scatter of a retention line is 0.1"));
    }

    @Test
    void charged_dyes_get_no_blend() throws Exception {
        assertThat(judged("anionic").blends()).isEmpty();
    }

    @Test
    void a_solvent_that_is_not_at_hand_is_not_blended() throws Exception {
        assertThat(judged("neutral", "heptane").blends()).isEmpty();
    }

    @Test
    void a_plan_can_still_be_made() throws Exception {
        Plan plan = Shipped.bench().plan(written("neutral", "heptane, ethyl acetate"));
        assertThat(plan.lines()).isNotEmpty();
    }

    @Test
    void other_readings_of_a_warm_case_reckon_anew_and_give_what_a_cold_one_gives() throws Exception {
        Case written = written("neutral", "heptane, ethyl acetate");
        Judge judge = Shipped.bench().judge();
        try (WarmJudging warm = judge.keepWarm(written)) {
            Judgement again = warm.with(written.strips());
            assertThat(again.reasons().keySet())
                    .isEqualTo(judge.judge(written).reasons().keySet());
            assertThat(again.movements()).isEqualTo(warm.first().movements());
        }
    }

    private Judgement judged(String dyeClass) throws Exception {
        return judged(dyeClass, "heptane, ethyl acetate");
    }

    private Judgement judged(String dyeClass, String shelf) throws Exception {
        return Shipped.bench().judge().judge(written(dyeClass, shelf));
    }

    private Case written(String dyeClass, String shelf) throws Exception {
        Path file = folder.resolve("case.yaml");
        Files.writeString(
                file,
                """
                title: Two inks (invented)
                mixture: {dyes: [{name: red, class: %1$s}, {name: blue, class: %1$s}]}
                column: {stationary phase: silica}
                setting: college
                shelf: [%2$s]
                strips:
                  - {solvent: heptane + ethyl acetate 9:1, front mm: 80, travel mm: {red: 8, blue: 40}}
                  - {solvent: heptane + ethyl acetate 1:1, front mm: 80, travel mm: {red: 40, blue: 74}}
                """
                        .formatted(dyeClass, shelf));
        return Shipped.caseIn(file);
    }

    private static Eluent blend(Judgement judgement) {
        return judgement.eluents().stream()
                .filter(eluent -> eluent.name().equals(NAME))
                .findFirst()
                .orElseThrow();
    }

    private static Dye dye(Judgement judgement, String name) {
        return judgement.judged().dyes().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
