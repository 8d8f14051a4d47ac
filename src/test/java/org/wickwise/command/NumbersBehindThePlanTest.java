package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.WarmJudging;
import org.wickwise.strip.Redraw;
import org.wickwise.strip.Strip;

/** What the plan promises in numbers, through the command line. */
class NumbersBehindThePlanTest {

    private static final Path TAG_DYE = Path.of("docs/examples/tag-dye.yaml");
    private static final Path CONFIRMED = Path.of("docs/examples/tag-dye-confirmed.yaml");
    private static final Pattern SAME = Pattern.compile("the same in (\\d+) of (\\d+)");

    @Test
    void where_no_bottle_parts_the_dyes_a_blend_is_named_with_its_chance_and_the_strip_that_would_confirm_it() {
        CommandLineRun run = CommandLineRun.of("plan", TAG_DYE.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(words(run))
                .contains(
                        "[refusal]",
                        "For moss try toluene + ethyl acetate 9:1",
                        "the chance that it lies between 0.2 and 0.35 is")
                .contains("run a strip in it, write it down, and plan again");
    }

    @Test
    void once_the_confirming_strip_is_in_the_blend_is_poured() {
        CommandLineRun run = CommandLineRun.of("plan", CONFIRMED.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(words(run)).contains("then pour toluene + ethyl acetate 9:1", "each of the 2 dyes comes off alone");
    }

    @Test
    void a_gap_of_six_hundredths_is_not_safely_parted_and_what_would_settle_it_is_said(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("near.yaml");
        Files.writeString(
                file,
                """
                title: near pair (invented)
                mixture: {dyes: [{name: moss, class: neutral}, {name: brick, class: neutral}]}
                column: {stationary phase: silica}
                setting: college
                shelf: [heptane, ethyl acetate]
                strips:
                  - {solvent: heptane, front mm: 80, travel mm: {moss: 0, brick: 0}}
                  - {solvent: ethyl acetate, front mm: 80, travel mm: {moss: 35, brick: 30}}
                """);
        CommandLineRun run = CommandLineRun.of("plan", file.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(words(run))
                .contains("moss and brick are not safely parted")
                .contains("a longer run cannot make a true gap wider", "another family");
        assertThat(words(CommandLineRun.of("why", file.toString(), "pair-ethyl-acetate-moss-brick")))
                .contains("by 0.06 ± 0.03 of Rf", "the parting gap is 0.1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"bed", "size", "fractions", "flow", "time", "volume-1", "keep-1", "volume-2", "keep-3", "apart"})
    void why_reaches_the_formula_its_inputs_and_the_reference_of_every_number(String label) {
        PlanLine line = Shipped.planOf(Shipped.DEMO).line(label).orElseThrow();
        assertThat(line.reason()).isInstanceOf(Reason.Calculated.class);
        Reason.Calculated calculated = (Reason.Calculated) line.reason();
        assertThat(calculated.formula()).isNotBlank();
        assertThat(calculated.reference()).isNotBlank();
        assertThat(calculated.grounds()).isNotEmpty();
        assertThat(words(CommandLineRun.of("why", Shipped.DEMO.toString(), label)))
                .contains("reckoned: ");
    }

    /** From a draw or two nobody can say that testing may stop. */
    @ParameterizedTest
    @CsvSource({"next, --draws", "firm, --redraws"})
    void too_few_draws_are_refused(String command, String option) {
        CommandLineRun run = CommandLineRun.of(command, CONFIRMED.toString(), option, "29");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains(option + " is 29; expected 30 to ");
        assertThat(CommandLineRun.of("firm", CONFIRMED.toString(), "--redraws", "30")
                        .code())
                .isEqualTo(ExitCodes.PLANNED);
    }

    @Test
    void firm_gives_the_same_answer_for_the_same_seed_and_another_for_another() {
        String once = CommandLineRun.of("firm", CONFIRMED.toString(), "--redraws", "300")
                .out();
        assertThat(CommandLineRun.of("firm", CONFIRMED.toString(), "--redraws", "300")
                        .out())
                .isEqualTo(once);
        assertThat(CommandLineRun.of("firm", CONFIRMED.toString(), "--redraws", "300", "--seed", "2")
                        .out())
                .isNotEqualTo(once);
    }

    @Test
    void a_plan_that_hangs_on_a_borderline_reading_is_less_firm_than_the_demo() {
        assertThat(share(CONFIRMED)).isGreaterThan(0.5).isLessThan(share(Shipped.DEMO));
        assertThat(words(CommandLineRun.of("firm", CONFIRMED.toString(), "--redraws", "300")))
                .contains("The weakest link is the reading of brick on the strip in toluene + ethyl acetate 9:1");
    }

    private static double share(Path file) {
        Matcher same = SAME.matcher(words(CommandLineRun.of("firm", file.toString(), "--redraws", "300")));
        assertThat(same.find()).isTrue();
        return Double.parseDouble(same.group(1)) / Double.parseDouble(same.group(2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "docs/examples/ferry-ink.yaml",
                "docs/examples/tag-dye-confirmed.yaml",
                "docs/published/d04-spinach-alumina.yaml",
                "docs/published/d07-four-dyes-silica.yaml"
            })
    void redrawn_readings_are_judged_warm_as_they_are_judged_afresh(String file) {
        Case written = Shipped.caseIn(Path.of(file));
        try (WarmJudging warm = Shipped.bench().judge().keepWarm(written)) {
            for (int drawing = 0; drawing < 40; drawing++) {
                List<Strip> strips =
                        warm.redraw(1, drawing).stream().map(Redraw::strip).toList();
                Judgement afresh = Shipped.bench().judge().judge(written.with(strips));
                Judgement again = warm.with(strips);
                // Blends are proposed from the readings as written; the redraw keeps considering these.
                Set<Object> known = Set.copyOf(again.eluents());
                assertThat(ofTheReadings(again, known)).as("draw %d", drawing).isEqualTo(ofTheReadings(afresh, known));
            }
        }
    }

    /** What is concluded from readings, as text; strips differ by their readings, so their verdicts are left out. */
    private static Set<String> ofTheReadings(Judgement judgement, Set<Object> known) {
        return Stream.of(
                        judgement.all(Conclusion.Behaves.class).stream()
                                .filter(one -> known.contains(one.eluent()) && judgement.tried(one.eluent())),
                        judgement.all(Conclusion.Between.class).stream()
                                .filter(one -> known.contains(one.eluent()) && judgement.tried(one.eluent())),
                        judgement.all(Conclusion.LeavesBefore.class).stream()
                                .filter(one -> known.contains(one.eluent()) && judgement.tried(one.eluent())),
                        judgement.all(Conclusion.Holds.class).stream().filter(one -> judgement.tried(one.eluent())))
                .flatMap(conclusions -> conclusions)
                .map(Object::toString)
                .collect(Collectors.toSet());
    }

    @Test
    void dyes_that_the_strips_part_and_the_bed_does_not_are_not_promised_alone(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("fast.yaml");
        Files.writeString(
                file,
                """
                title: fast pair (invented)
                mixture: {dyes: [{name: plum, class: neutral}, {name: teal, class: neutral}]}
                column: {stationary phase: C18, bore mm: 10, bed mm: 50, plates: 60}
                setting: college
                shelf: [water, methanol]
                strips:
                  - {solvent: water, Rf: {plum: 0.01, teal: 0}}
                  - {solvent: water + methanol 3:7, Rf: {plum: 0.6, teal: 0.5}}
                  - {solvent: methanol, Rf: {plum: 0.9, teal: 0.85}}
                """);
        String plan = words(CommandLineRun.of("plan", file.toString()));
        assertThat(plan)
                .contains("0 of 2 dyes come off alone", "plum nowhere as pure as wanted")
                .contains("[overlap] The strips part plum and teal, but a bed of so few plates")
                .contains("For plum try methanol + water 1:1")
                .doesNotContain("None is needed for this plan");
        String finer = Files.readString(file).replace("plates: 60", "plates: 2000");
        Files.writeString(file, finer);
        assertThat(words(CommandLineRun.of("plan", file.toString())))
                .contains("each of the 2 dyes comes off alone")
                .doesNotContain("[overlap]");
    }

    @Test
    void an_impossible_column_is_refused_with_its_place_and_the_way_out() {
        CommandLineRun run = CommandLineRun.of("plan", "src/test/resources/broken/a-bed-longer-than-its-tube.yaml");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("a-bed-longer-than-its-tube.yaml:", "pack a shorter bed");
    }

    @Test
    void no_plan_prints_a_number_that_is_none() throws IOException {
        try (Stream<Path> published = Files.list(Shipped.PUBLISHED)) {
            for (Path file : Stream.concat(Stream.of(Shipped.DEMO, TAG_DYE, CONFIRMED), published)
                    .toList()) {
                Plan plan = Shipped.planOf(file);
                assertThat(plan.lines()).allSatisfy(line -> assertThat(line.text())
                        .as(file + " " + line.label())
                        .doesNotContain("NaN", "Infinity", "null"));
            }
        }
    }

    /** What was printed on standard output, line breaks taken as blanks. */
    private static String words(CommandLineRun run) {
        return run.out().replaceAll("\\s+", " ");
    }
}
