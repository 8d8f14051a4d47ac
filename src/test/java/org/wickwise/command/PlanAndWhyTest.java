package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.report.Heading;
import org.wickwise.report.ReasonText;

/** The two commands as each of their users starts them. */
class PlanAndWhyTest {

    private static final String DEMO = Shipped.DEMO.toString();
    private static final String REFUSED =
            Shipped.PUBLISHED.resolve("d13-rhodamine-amaranth-silica.yaml").toString();

    @Test
    void aSoundPlanEndsWithZeroAndARefusalWithThree() {
        assertThat(CommandLineRun.of("plan", DEMO).code()).isEqualTo(ExitCodes.PLANNED);
        CommandLineRun refused = CommandLineRun.of("plan", REFUSED);
        assertThat(refused.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(refused.out()).contains("No plan is sound", "Which strip to run next");
    }

    @Test
    void aLessonAndAColumnThatWasRunArePlannedByTheirStrips() {
        CommandLineRun lesson = CommandLineRun.of("plan", "docs/examples/harbour-lesson.yaml");
        assertThat(lesson.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(lesson.out()).contains("each of the 3 dyes comes off alone");
        CommandLineRun run = CommandLineRun.of("why", "docs/examples/ferry-ink-run.yaml", "rust");
        assertThat(run.out()).contains("In the plan it leaves in step 2");
        CommandLineRun without = CommandLineRun.of("plan", "docs/examples/harbour-class.yaml");
        assertThat(without.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(without.err()).contains("there is no strip", "`forecast` plans from a notebook");
    }

    @Test
    void whatPlusMinusMeansIsToldOnceWhereItFirstStands() {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        List<PlanLine> strips = plan.linesIn(PlanLine.Section.STRIPS).stream()
                .filter(line -> line.text().contains("±"))
                .toList();
        assertThat(strips).hasSizeGreaterThan(2);
        assertThat(strips.get(0).text()).endsWith(" Behind ± stands twice the standard uncertainty.");
        assertThat(strips.subList(1, strips.size()))
                .noneMatch(line -> line.text().contains("standard uncertainty"));
    }

    /** What is true of every pair that changes places is told once for all of them. */
    @Test
    void aCautionTellsTheEndingOfItsSentencesOnce() {
        Plan plan = Shipped.bench()
                .plan(CaseReader.parse(
                        "test",
                        """
                title: three dyes that change places
                mixture: {dyes: [grey, pink, sea]}
                column: {stationary phase: cellulose}
                setting: secondary school
                strips:
                  - {solvent: ethanol, front mm: 80, travel mm: {grey: 60, pink: 35, sea: 5}}
                  - {solvent: water, front mm: 80, travel mm: {grey: 5, pink: 35, sea: 60}}
                """,
                        Shipped.data()));
        assertThat(plan.line("order-may-cross").orElseThrow().text())
                .contains("Grey runs before pink in ethanol", "Grey runs before sea in ethanol")
                .containsOnlyOnce("Do not carry an order over")
                .endsWith("Do not carry an order over from one eluent to the other.");
    }

    @Test
    void theDemoPacksWithTheHolderReleasesOneByOneAndSweeps() {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        assertThat(plan.packing().orElseThrow().name()).isEqualTo("heptane");
        assertThat(plan.route().orElseThrow().names())
                .isEqualTo("heptane + ethyl acetate 9:1, then ethyl acetate, then ethanol");
        assertThat(plan.line("step-3").orElseThrow().text()).startsWith("Sweep with ethanol");
    }

    @Test
    void theDemoHasAVoidStripAnUnfitSolventAndADoubtfulReading() {
        CommandLineRun run = CommandLineRun.of("plan", DEMO);
        assertThat(run.out())
                .contains("Void: The spots of the strip in ethyl acetate + heptane 1:1")
                .contains("Water may not enter this column")
                .contains("Doubtful: Harbour blue left a streak on the strip in acetone");
    }

    @Test
    void everyLineOfEveryPlanAnswersWhyDownToALeaf() throws IOException {
        try (Stream<Path> published = Files.list(Shipped.PUBLISHED)) {
            List<Path> cases =
                    Stream.concat(Stream.of(Shipped.DEMO), published.sorted()).toList();
            for (Path file : cases) {
                Plan plan = Shipped.planOf(file);
                Set<String> labels = new HashSet<>();
                for (PlanLine line : plan.lines()) {
                    assertThat(labels.add(line.label()))
                            .as("label %s of %s stands once", line.label(), file)
                            .isTrue();
                    String answer = ReasonText.of(line, Heading.plain());
                    assertThat(answer).contains("[" + line.label() + "]", line.text());
                    if (!line.label().equals("next-none") && line.section() != Section.BASIS) {
                        assertThat(answer)
                                .as("%s of %s", line.label(), file)
                                .containsAnyOf("rule ", "reckoned: ", "<-");
                    }
                }
            }
        }
    }

    @Test
    void whyReachesTheRulerTheRuleAndTheTable() {
        CommandLineRun run = CommandLineRun.of("why", DEMO, "step-1");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("straw travelled 24 mm on the strip in heptane + ethyl acetate 9:1, front at 72 mm")
                .contains(DEMO + ":27")
                .contains("rule travels-by-rf (rules/layers/2-behaviour.yaml:")
                .contains("the creeping limit is 0.15", "rules/limits.yaml:");
        assertThat(CommandLineRun.of("why", DEMO, "vapour-burns-at-room-temperature")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("flash point of heptane", "NFPA 497");
    }

    @Test
    void noEngineWordReachesAReader() {
        for (String label : List.of("plan", "step-1", "choice-1", "fitness-water", "who-decides")) {
            assertThat(CommandLineRun.of("why", DEMO, label).out())
                    .doesNotContainIgnoringCase("drools", "salience", "insertLogical", "null", "org.wickwise", "$");
        }
    }

    @Test
    void aLabelThatIsNotThereIsAnsweredWithTheNearestOnes() {
        CommandLineRun run = CommandLineRun.of("why", DEMO, "stepp-1");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("nothing here is called `stepp-1`", "did you mean `step-1`");
    }

    @Test
    void withoutALabelWhyListsWhatCanBeAsked() {
        assertThat(CommandLineRun.of("why", DEMO).out())
                .contains("can be asked about", "  step-1\n", "  who-decides\n")
                .contains("in plain words", "  rust\n", "  rust and straw\n", "  the strip in acetone\n");
    }

    @Test
    void aQuestionInPlainWordsNeedsNoQuotationMarks() {
        CommandLineRun run = CommandLineRun.of("why", DEMO, "ethyl", "acetate");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("[ethyl acetate] In ethyl acetate:").contains("rule releases");
        assertThat(run.out()).isEqualTo(CommandLineRun.of("why", DEMO, "EtOAc").out());
    }

    @Test
    void severalOfOneNameAreListed() {
        assertThat(CommandLineRun.of("why", DEMO, "ignition").out())
                .contains("Several are called so: ignition", "[no-hair-dryer]", "[vapour-burns-at-room-temperature]");
        CommandLineRun drawn = CommandLineRun.of("why", DEMO, "ignition", "--as", "svg");
        assertThat(drawn.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(drawn.err()).contains("names 2 things", "ask for one of these: `no-hair-dryer`");
    }

    @Test
    void aLessonSaysWhatTheRulesSayWhatWasSeenAndTheIdea() {
        assertThat(CommandLineRun.of("why", DEMO, "step-1", "--as", "lesson")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("Because: Straw travels in heptane + ethyl acetate 9:1 as a band")
                .contains("straw went 24 of 72 mm: Rf 0.33, give or take 0.03.")
                .contains("Adsorption on a polar surface Silica and alumina carry polar groups")
                .doesNotContain("rules/", ".yaml");
    }

    @Test
    void aDrawingTakesALimitOfStepsOfAtLeastOne() {
        assertThat(CommandLineRun.of("why", DEMO, "plan", "--as", "svg", "--levels", "1")
                        .out())
                .startsWith("<svg ")
                .contains("Left out:", "--levels 2");
        CommandLineRun none = CommandLineRun.of("why", DEMO, "plan", "--as", "svg", "--levels", "0");
        assertThat(none.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(none.err()).contains("expected 1 or more");
    }

    @Test
    void jsonCarriesTheWholeReason() throws IOException {
        JsonNode plan = new ObjectMapper()
                .readTree(CommandLineRun.of("plan", DEMO, "--as", "json").out());
        assertThat(plan.get("verdict").asText()).isEqualTo("planned");
        assertThat(plan.get("steps")).hasSize(3);
        assertThat(plan.get("lines"))
                .allSatisfy(line ->
                        assertThat(line.get("reason").get("statement").asText()).isNotBlank());
        JsonNode why = new ObjectMapper()
                .readTree(
                        CommandLineRun.of("why", DEMO, "step-1", "--as", "json").out());
        assertThat(why.findValuesAsText("place")).anyMatch(place -> place.startsWith(DEMO));
    }

    @Test
    void markdownHasTheSectionsAsHeadings() {
        assertThat(CommandLineRun.of("plan", DEMO, "--as", "markdown").out())
                .contains("# Cancelling ink", "## Pour in this order", "- `step-1` Pour heptane");
    }

    @Test
    void aPlanEndsByDeferringToDataSheetsCodesAndThePersonResponsible() {
        for (String file : List.of(DEMO, REFUSED)) {
            assertThat(CommandLineRun.of("plan", file).out().replaceAll("\\s+", " "))
                    .contains("Follow the safety data sheets, the local codes and the person responsible for the room");
        }
    }

    @Test
    void helpTeachesAndWrongUseIsBadInput() {
        assertThat(CommandLineRun.of("plan", "--help").out().replaceAll("\\s+", " "))
                .contains("travel mm", "both from the origin");
        assertThat(CommandLineRun.of("--help").out()).contains("Exit codes", "3");
        assertThat(CommandLineRun.of("plan").code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(CommandLineRun.of("plan", DEMO, "--as", "poem").code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(CommandLineRun.of().out()).contains("plan", "why");
    }

    @Test
    void withoutATerminalNothingIsColoured() {
        assertThat(CommandLineRun.of("plan", DEMO).out()).doesNotContain("\u001B");
    }

    @Test
    void aShelfTakesAwayWhatItDoesNotHold(@TempDir Path folder) throws IOException {
        String demo = Files.readString(Shipped.DEMO);
        Path file = Files.writeString(
                folder.resolve("shelf.yaml"),
                demo.replace("strips:\n", "shelf: [heptane, ethyl acetate, acetone]\nstrips:\n"));
        Plan plan = Shipped.planOf(file);
        assertThat(plan.route().orElseThrow().names())
                .isEqualTo("heptane + ethyl acetate 9:1, then ethyl acetate, then acetone");
        assertThat(plan.line("fitness-ethanol").orElseThrow().text()).contains("not on the shelf");
        assertThat(ReasonText.of(plan.line("fitness-ethanol").orElseThrow(), Heading.plain()))
                .contains("shelf.yaml:");
    }
}
