package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.plan.NeverParted;
import org.wickwise.plan.PlanLine;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.text.Place;

class NextStripsTest {

    private static final Judge JUDGE = Shipped.bench().judge();
    private static final Path EVENING = Path.of("docs/examples/ferry-ink-evening.yaml");

    @TempDir
    private Path folder;

    /** Two invented dyes on silica; the given shelf and strips. */
    private Case invented(String shelf, String strips) throws IOException {
        Path file = folder.resolve("invented.yaml");
        Files.writeString(
                file,
                """
                title: Invented
                mixture: {name: invented, dyes: [{name: plum, class: neutral}, {name: sand, class: neutral}]}
                column: {stationary phase: silica, bore mm: 15, bed mm: 120}
                setting: college
                shelf: [%s]
                strips:
                %s
                """
                        .formatted(shelf, strips));
        return Shipped.caseIn(file);
    }

    private Case withOneUntriedBottle() throws IOException {
        return invented(
                "heptane, ethyl acetate", "  - {solvent: heptane, front mm: 80, travel mm: {plum: 0, sand: 0}}");
    }

    private static NextStrips next(Case written, int draws) {
        return NextStrips.of(JUDGE, Shipped.planner(), written, draws, 1, all -> done -> {});
    }

    @Test
    void without_a_plan_the_one_bottle_that_nobody_tried_is_named() throws IOException {
        NextStrips next = next(withOneUntriedBottle(), 40);
        assertThat(next.advice()).isEqualTo(NextStrips.Advice.RUN);
        assertThat(next.worthRunning())
                .extracting(prospect -> prospect.strip().words())
                .containsExactly("a first strip in ethyl acetate");
        assertThat(NextLines.of(next).get(0).text()).startsWith("Run a first strip in ethyl acetate");
    }

    private Case together(String sandInEthylAcetate) throws IOException {
        return invented(
                "heptane, ethyl acetate, acetone, ethanol",
                """
                  - {solvent: heptane, front mm: 60, travel mm: {plum: 0, sand: 0}}
                  - {solvent: ethyl acetate, front mm: 60, travel mm: {plum: 30, sand: %s}}
                  - {solvent: heptane + ethyl acetate 1:1, front mm: 60, travel mm: {plum: 15, sand: 14}}
                  - {solvent: acetone, front mm: 60, travel mm: {plum + sand: 54}}
                """
                        .formatted(sandInEthylAcetate));
    }

    /** In as many draws as two dyes are not alike they may come apart, and in hardly any of the others. */
    @Test
    void dyes_that_lie_together_wherever_they_move_hardly_come_apart_in_a_draw() throws IOException {
        Case written = together("30");
        NextStrips next = next(written, 60);
        double notAlike = 1 - NeverParted.all(JUDGE.judge(written)).get(0).chanceAlike(0.7);
        assertThat(notAlike).isCloseTo(0.09, within(1e-9));
        assertThat(next.prospects()).allSatisfy(prospect -> assertThat(prospect.chance())
                .as(prospect.strip().words())
                .isLessThan(notAlike + 0.1));
        assertThat(NextLines.of(next))
                .extracting(PlanLine::text)
                .contains(
                        "Plum and sand lie together in all 3 eluents tried that move them: perhaps one dye, or two that"
                                + " share what they do; with a chance of 91 % a draw takes them to be alike in what nobody ran.");
        assertThat(next.plan().line("alike-plum-sand").orElseThrow().text())
                .isEqualTo(
                        "Plum and sand lie together in all 3 eluents tried that move them: perhaps one dye, or two that"
                                + " share what they do.");
    }

    @Test
    void no_draw_sends_for_a_stronger_eluent_before_a_weaker_of_the_ladder() throws IOException {
        Case written = invented(
                "heptane, ethyl acetate, methanol",
                """
                  - {solvent: heptane, front mm: 60, travel mm: {plum: 0, sand: 0}}
                  - {solvent: ethyl acetate, front mm: 60, travel mm: {plum: 30, sand: 26}}
                """);
        assertThat(next(written, 100).prospects())
                .flatMap(Prospect::draws)
                .extracting(Prospect.Draw::outcome)
                .anyMatch(outcome -> outcome.contains("methanol"))
                .noneMatch(outcome -> outcome.contains("methanol, then ethyl acetate"));
    }

    @Test
    void dyes_that_were_apart_once_or_together_once_are_not_called_alike() throws IOException {
        assertThat(NeverParted.all(JUDGE.judge(together("24")))).isEmpty();
        assertThat(NeverParted.all(JUDGE.judge(withOneUntriedBottle()))).isEmpty();
    }

    @Test
    void the_chance_of_a_first_strip_is_that_of_a_grid_over_all_that_may_come_out() throws IOException {
        Case written = withOneUntriedBottle();
        Prospect drawn = next(written, 400).prospects().get(0);
        double onTheGrid = chanceOnAGrid(written, drawn, 16);
        assertThat(onTheGrid).isBetween(0.05, 0.95);
        assertThat(drawn.chance()).isCloseTo(onTheGrid, within(3 * drawn.chanceUncertainty() + 0.03));
    }

    /**
     * Both dyes scatter about one common RM, which is as likely anywhere between its limits; every cell of the grid, cut so
     * that all are as likely, is judged by itself, without error.
     */
    private static double chanceOnAGrid(Case written, Prospect drawn, int cells) {
        double lowest = limit("least RM to be expected");
        double highest = limit("greatest RM to be expected");
        double scatter = limit("scatter of unknown dyes");
        int across = cells / 2;
        int plans = 0;
        try (LaidOutCase laidOut = JUDGE.layOut(written)) {
            for (int level = 0; level < cells; level++) {
                double common = lowest + (highest - lowest) * (level + 0.5) / cells;
                for (int i = 0; i < across; i++) {
                    for (int j = 0; j < across; j++) {
                        double plum = rf(common + scatter * gaussian(i, across), lowest, highest);
                        double sand = rf(common + scatter * gaussian(j, across), lowest, highest);
                        List<Strip> strips = new ArrayList<>(written.strips());
                        strips.add(strip(written, drawn, plum, sand));
                        boolean isPlanned = Shipped.planner()
                                .route(laidOut.suppose(
                                        written.with(strips), JUDGE.rulebook().limits()))
                                .isPresent();
                        plans += isPlanned ? 1 : 0;
                    }
                }
            }
        }
        return (double) plans / (cells * across * across);
    }

    private static double limit(String name) {
        return JUDGE.rulebook().limits().get(name).value();
    }

    private static double gaussian(int cell, int cells) {
        return new NormalDistribution().inverseCumulativeProbability((cell + 0.5) / cells);
    }

    private static double rf(double rm, double lowest, double highest) {
        return 1 / (1 + Math.pow(10, Math.max(lowest, Math.min(highest, rm))));
    }

    @Test
    void a_blend_that_can_be_reckoned_goes_before_a_bottle_of_which_nothing_is_known() {
        assertThat(next(Shipped.caseIn(Path.of("docs/examples/tag-dye.yaml")), 100)
                        .prospects())
                .extracting(prospect -> prospect.strip().eluent().name())
                .containsSubsequence("toluene + ethyl acetate 4:1", "ethanol")
                .containsSubsequence("heptane + ethyl acetate 4:1", "ethanol");
    }

    private static Strip strip(Case written, Prospect drawn, double plum, double sand) {
        Place place = Place.wholeFile("grid");
        return new Strip(
                drawn.strip().eluent(),
                written.column().phase(),
                1,
                OptionalDouble.of(80),
                OptionalDouble.empty(),
                List.of(
                        new Spot(List.of(written.dyes().get(0)), new Spot.Travelled(80 * plum), place),
                        new Spot(List.of(written.dyes().get(1)), new Spot.Travelled(80 * sand), place)),
                List.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                place);
    }

    @Test
    void one_doubtful_strip_that_decides_is_named() throws IOException {
        Case written = invented(
                "ethyl acetate, ethanol",
                """
                  - {solvent: ethyl acetate, front mm: 80, travel mm: {plum: 32, sand: 0}, streaked: [plum]}
                  - {solvent: ethanol, front mm: 80, travel mm: {plum: 70, sand: 40}}
                """);
        NextStrips next = next(written, 40);
        assertThat(next.worthRunning().get(0).strip().words()).isEqualTo("the strip in ethyl acetate again");
    }

    @Test
    void a_finished_and_firm_case_needs_no_further_strip() throws IOException {
        Case written = invented(
                "heptane, ethyl acetate",
                """
                  - {solvent: heptane, front mm: 80, travel mm: {plum: 0, sand: 0}}
                  - {solvent: ethyl acetate, front mm: 80, travel mm: {plum: 48, sand: 20}}
                """);
        NextStrips next = next(written, 40);
        assertThat(next.advice()).isEqualTo(NextStrips.Advice.STOP_FIRM);
        assertThat(NextLines.of(next).get(0).text()).startsWith("Stop testing");
    }

    @Test
    void the_order_of_the_strips_in_the_file_changes_nothing() {
        Case written = Shipped.caseIn(EVENING);
        List<Strip> turned = new ArrayList<>(written.strips());
        Collections.reverse(turned);
        assertThat(NextLines.of(next(written.with(turned), 8)))
                .extracting(PlanLine::text)
                .containsExactlyElementsOf(NextLines.of(next(written, 8)).stream()
                        .map(PlanLine::text)
                        .toList());
    }

    @Test
    void what_may_not_enter_the_column_is_never_named() {
        assertThat(next(Shipped.caseIn(EVENING), 4).prospects())
                .extracting(prospect -> prospect.strip().eluent().name())
                .contains("ethyl acetate")
                .doesNotContain("acetone", "water");
    }

    @Test
    void what_the_rules_ask_for_stands_beside_it() {
        assertThat(NextLines.of(next(Shipped.caseIn(EVENING), 8)))
                .filteredOn(line -> line.label().equals("rules-1"))
                .singleElement()
                .satisfies(line -> assertThat(line.text()).contains("(next-1)", "again; it is void", "draws"));
    }
}
