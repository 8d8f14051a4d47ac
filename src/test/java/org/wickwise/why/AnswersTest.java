package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Levels;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Calculated;
import org.wickwise.report.Heading;
import org.wickwise.report.LessonText;
import org.wickwise.report.ReasonText;
import org.wickwise.substance.Solvent;
import org.wickwise.text.ProblemsFound;

/** Questions in plain words, and what every answer comes down to. */
class AnswersTest {

    private static final String FILE = "case.yaml";
    private static final Plan DEMO = Shipped.planOf(Shipped.DEMO);
    private static final Answers ANSWERS = new Answers(DEMO, Shipped.bench().judge(), Shipped.planner());

    /** What no student should meet; a word of its own, since a dye or a place may contain the letters. */
    private static final Pattern ENGINE_WORDS = Pattern.compile(
            "(?i)\\b(drools|kie|rule engine|salience|insertLogical|Optional|null|NaN|Infinity)\\b|org\\.wickwise|@[0-9a-f]|\\.java"
                    + "|\\b(Concluded|Calculated|Observed|Behaves|Fitness|Movement|Eluent)\\[");

    static List<Path> cases() {
        return Shipped.cases();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyReasonComesDownToWhatCanBeChecked(Path file) {
        List<String> hanging = new ArrayList<>();
        for (PlanLine line : everything(Shipped.planOf(file))) {
            for (Reason reason : Levels.of(line.reason()).keySet()) {
                if (reason.grounds().isEmpty() && !canBeChecked(reason)) {
                    hanging.add(line.label() + ": " + reason);
                }
            }
        }
        assertThat(hanging).isEmpty();
    }

    /**
     * Rules that conclude because nothing speaks against it, or that hold for every case: there is nothing to point at but
     * the rule's own line.
     */
    private static final Set<String> RULES_WITHOUT_FACTS = Set.of("fit-eluent", "usable-strip", "who-decides");

    private static boolean canBeChecked(Reason reason) {
        if (reason instanceof Reason.Concluded concluded) {
            return !concluded.arguments().isEmpty()
                    && concluded.arguments().stream()
                            .allMatch(argument -> RULES_WITHOUT_FACTS.contains(argument.ruleId())
                                    && argument.place().line() > 0);
        }
        return reason instanceof Reason.Observed
                || reason instanceof Reason.Stated
                || reason instanceof Reason.Tabled
                || reason instanceof Reason.Limited
                || reason instanceof Calculated calculated
                        && !calculated.formula().isBlank()
                        && !calculated.reference().isBlank();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noReasonAndNoLessonSpeaksOfTheProgramItself(Path file) {
        Plan plan = Shipped.planOf(file);
        for (PlanLine line : everything(plan)) {
            Lesson lesson = Lesson.of(line, plan.judgement(), Shipped.lessons());
            String told = LessonText.of(lesson, Heading.plain());
            assertThat(ReasonText.of(line, Heading.plain()) + told)
                    .as(line.label())
                    .doesNotContainPattern(ENGINE_WORDS);
            assertThat(told).as(line.label()).doesNotContain(".yaml");
            assertThat(lesson.ideas()).as(line.label()).hasSizeBetween(1, 3);
            assertThat(lesson.because()).as(line.label()).doesNotHaveDuplicates();
            assertThat(told.split("\\s+"))
                    .as("lesson of %s:\n%s", line.label(), told)
                    .hasSizeLessThan(190);
        }
    }

    /** Words and shapes of a program, on top of those of the engine. */
    private static final Pattern PROGRAM_WORDS =
            Pattern.compile("(?i:\\b(facts?|session|insert(ed|s)?|working memory|agenda|java|boolean|enum|tuple)\\b)"
                    + "|\\b[A-Z][a-z]+[A-Z][a-z]\\w*|\\[\\w+=");

    @Test
    void aStudentWhoAsksEveryLineOfTheDemoThreeLevelsDeepMeetsOnlyChemistry() {
        List<String> strange = new ArrayList<>();
        for (PlanLine line : DEMO.lines()) {
            PlanLine answer = ANSWERS.to(line.label(), FILE).get(0);
            Levels.of(answer.reason()).forEach((reason, depth) -> {
                boolean leaf = reason.grounds().isEmpty();
                List<String> texts = new ArrayList<>(List.of(answer.text(), reason.statement()));
                if (reason instanceof Reason.Concluded concluded) {
                    concluded.arguments().forEach(argument -> {
                        texts.add(argument.because());
                        texts.addAll(argument.sentences());
                    });
                }
                texts.stream()
                        .filter(text -> depth <= 3)
                        .filter(text -> PROGRAM_WORDS.matcher(text).find()
                                || ENGINE_WORDS.matcher(text).find())
                        .forEach(text -> strange.add(line.label() + ": " + text));
                if (leaf && !canBeChecked(reason)) {
                    strange.add(line.label() + " ends in: " + reason.statement());
                }
            });
        }
        assertThat(strange).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whatIsListedCanBeAskedAndTheLabelOfAnAnswerAsksItAgain(Path file) {
        Plan plan = Shipped.planOf(file);
        Answers answers = new Answers(plan, Shipped.bench().judge(), Shipped.planner());
        for (String name : answers.names()) {
            List<PlanLine> found = answers.to(name, FILE);
            assertThat(found).as(name).hasSize(1);
            assertThat(found.get(0).label()).as(name).isEqualTo(name);
            assertThat(answers.to(found.get(0).label(), FILE)).isEqualTo(found);
        }
    }

    @Test
    void everyOtherNameOfASolventAsksTheSame() {
        for (Solvent solvent : Shipped.data().solvents()) {
            List<PlanLine> answer = ANSWERS.to(solvent.name(), FILE);
            for (String other : solvent.also()) {
                assertThat(ANSWERS.to(other, FILE)).as(other).isEqualTo(answer);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ethyl acetate | EtOAc",
                "ethyl acetate | ETHYL  acetate?",
                "heptane + ethyl acetate 9:1 | ethyl acetate 10 % + heptane 90 %",
                "heptane + ethyl acetate 9:1 | 10 % EtOAc in heptane",
                "rust and straw | straw / rust",
                "rust and straw | straw and rust",
                "rust and straw | Straw, Rust",
                "harbour blue and straw | straw + harbour blue",
                "the strip in ethyl acetate | strip in EtOAc",
                "the strip in ethyl acetate | strip 1 in ethyl acetate",
                "step-1 | Step-1"
            })
    void theSameThingMayBeNamedInSeveralWays(String label, String asked) {
        assertThat(ANSWERS.to(asked, FILE)).extracting(PlanLine::label).containsExactly(label);
    }

    @Test
    void aSolventIsAnsweredWithWhatItDoesWhetherItMayEnterItsRolesAndThePlan() {
        assertThat(text("ethyl acetate"))
                .contains("rust travels (Rf 0.39 ± 0.03)", "harbour blue stays")
                .contains("It may enter this column.", "It releases rust and straw.")
                .contains("The plan pours it as step 2 and brings rust off with it. Chosen over");
        assertThat(text("heptane")).contains("It holds every dye.", "The plan packs and loads with it.");
        assertThat(text("water")).contains("It may not enter this column. On a polar adsorbent water is stronger");
        assertThat(text("acetone"))
                .contains("The plan does not pour it; it brings off straw with heptane + ethyl acetate 9:1; rust with"
                        + " ethyl acetate; harbour blue with ethanol.")
                .contains(
                        "With it the best plan would be heptane + ethyl acetate 9:1, then ethyl acetate, then acetone, which"
                                + " counts more steps resting on a doubtful reading (1 against 0).");
        assertThat(text("water")).contains("No sound order of eluents pours it.");
        assertThat(text("methanol")).contains("probably travels (estimated)", "as the last step only");
    }

    @Test
    void aDyeIsAnsweredWithWhatItDoesInEachEluentAndWhereItLeaves() {
        assertThat(text("rust"))
                .contains("stays (Rf 0.00 ± 0.03) in heptane", "runs ahead (Rf 0.92 ± 0.03) in ethanol")
                .contains("In the plan it leaves in step 2, with ethyl acetate, alone.");
    }

    @Test
    void aDyeThatComesOffInNothingIsToldSo() {
        Plan refused = Shipped.planOf(Shipped.PUBLISHED.resolve("d13-rhodamine-amaranth-silica.yaml"));
        Answers answers = new Answers(refused, Shipped.bench().judge(), Shipped.planner());
        List<String> texts = refused.judged().dyes().stream()
                .map(dye -> answers.to(dye.name(), FILE).get(0).text())
                .toList();
        assertThat(texts).allMatch(text -> text.contains("no plan"));
    }

    @Test
    void aPairIsAnsweredWithWhereItPartsAndWhereItChangesPlaces() {
        assertThat(text("straw and rust"))
                .contains("Parted in acetone (straw ahead)", "water (rust ahead)")
                .contains("Touching in ethanol (straw ahead).", "Together in heptane.")
                .contains("They change places between acetone and water")
                .contains("On a column straw leaves first, cleanly, in");
    }

    @Test
    void aVoidStripSaysThatItIsVoidAndWhy() {
        PlanLine answer =
                ANSWERS.to("the strip in ethyl acetate + heptane 1:1", FILE).get(0);
        assertThat(answer.text())
                .startsWith("The strip in ethyl acetate + heptane 1:1 is void: The spots of")
                .contains("stood in the liquid", "Written down, and not used", "Run the strip");
        assertThat(ReasonText.of(answer, Heading.plain())).contains("rule origin-under-solvent", "ferry-ink.yaml:");
        assertThat(text("ethyl acetate + heptane 1:1")).contains("is void");
    }

    @Test
    void aTopicListsItsCautionsAndABlendWithoutSharesItsRatios() {
        assertThat(ANSWERS.to("ignition", FILE))
                .extracting(PlanLine::label)
                .containsExactlyInAnyOrder("no-hair-dryer", "vapour-burns-at-room-temperature");
        assertThat(ANSWERS.to("heptane + ethyl acetate", FILE))
                .extracting(PlanLine::label)
                .containsExactlyInAnyOrder("ethyl acetate + heptane 1:1", "heptane + ethyl acetate 9:1");
    }

    @Test
    void aSolventThatTheCaseKnowsNothingOfIsNotTakenForAnUnknownWord() {
        Plan evening = Shipped.planOf(Path.of("docs/examples/ferry-ink-evening.yaml"));
        Answers answers = new Answers(evening, Shipped.bench().judge(), Shipped.planner());
        assertThat(answers.to("pyridine", FILE)).singleElement().satisfies(answer -> assertThat(answer.text())
                .startsWith("Nothing was judged about pyridine"));
        assertThat(answers.to("Window Spirit", FILE))
                .as("a household bottle by its own name")
                .isEqualTo(answers.to("ethanol 96 % + water 4 %", FILE))
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rsut", "stepp-1", "ethil acetate", "ignitoin", "the strip in aceton", "straw and rsut"})
    void anUnknownNameIsAnsweredWithTheNearestThatCanBeAsked(String asked) {
        ProblemsFound unknown = catchThrowableOfType(ProblemsFound.class, () -> ANSWERS.to(asked, FILE));
        assertThat(unknown).hasMessageStartingWith(FILE + ": ").hasMessageContaining("did you mean `");
    }

    @Test
    void aBlendWithAnUnknownPartIsAnsweredWithThatPart() {
        ProblemsFound unknown =
                catchThrowableOfType(ProblemsFound.class, () -> ANSWERS.to("hexan + ethyl acetate 1:1", FILE));
        assertThat(unknown).hasMessageContaining("the solvent `hexan` is not in the table");
    }

    private static String text(String asked) {
        List<PlanLine> found = ANSWERS.to(asked, FILE);
        assertThat(found).as(asked).hasSize(1);
        return found.get(0).text();
    }

    /** Every line of a plan and the answer to everything that can be asked beside them. */
    private static List<PlanLine> everything(Plan plan) {
        List<PlanLine> all = new ArrayList<>(plan.lines());
        Answers answers = new Answers(plan, Shipped.bench().judge(), Shipped.planner());
        answers.names().forEach(name -> all.addAll(answers.to(name, FILE)));
        return all;
    }
}
