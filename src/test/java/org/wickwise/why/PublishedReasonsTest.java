package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.wickwise.Shipped;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Levels;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Lessons.Idea;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;
import org.wickwise.text.YamlFile;

/**
 * The answers of why and why-not beside what the sources say: {@code published-reasons.yaml} gives for each published case
 * the readings and the cause of the source, or says that it gives none, or that we are known to disagree.
 */
class PublishedReasonsTest {

    private static final Path EXPECTATIONS = Path.of("src/test/resources/published-reasons.yaml");
    private static final String NO_CAUSE = "none given";
    private static final List<Expected> EXPECTED = expectations();
    private static final Map<String, Asked> ASKED = new HashMap<>();

    /** @param words of one sentence; none where the source names no cause */
    private record Expected(
            String file,
            String how,
            String question,
            List<Reading> readings,
            List<String> words,
            Optional<String> idea,
            Optional<String> disagrees) {}

    /** What a source saw of a dye in an eluent. */
    private record Reading(String dye, String eluent, String seen) {

        boolean isSaidBy(String statement) {
            return statement.contains(dye)
                    && Pattern.compile("in " + Pattern.quote(eluent) + "(?=$|,| looked)")
                            .matcher(statement)
                            .find()
                    && Pattern.compile("(?<![\\d.])" + Pattern.quote(seen) + "(?![\\d.])")
                            .matcher(statement)
                            .find();
        }
    }

    private record Asked(Plan plan, Answers answers, WhyNot whyNot) {

        static Asked about(String file) {
            return ASKED.computeIfAbsent(file, name -> {
                Plan plan = Shipped.planOf(Shipped.PUBLISHED.resolve(name + ".yaml"));
                return new Asked(
                        plan,
                        new Answers(plan, Shipped.bench().judge(), Shipped.planner()),
                        new WhyNot(plan, Shipped.bench().judge(), Shipped.planner()));
            });
        }

        List<PlanLine> to(Expected expected) {
            String file = expected.file() + ".yaml";
            return expected.how().equals("why")
                    ? answers.to(expected.question(), file)
                    : whyNot.to(expected.question(), file);
        }
    }

    @Test
    void every_published_case_and_every_step_of_its_plan_is_asked_about() {
        Set<String> missing = new TreeSet<>();
        for (Path path : Shipped.cases()) {
            if (!path.startsWith(Shipped.PUBLISHED)) {
                continue;
            }
            String file = path.getFileName().toString().replace(".yaml", "");
            Stream.concat(
                            Asked.about(file).plan().lines().stream()
                                    .map(PlanLine::label)
                                    .filter(label -> label.matches("pack|step-\\d+|refusal"))
                                    .map(label -> "why " + label),
                            Stream.of("why-not"))
                    .filter(wanted -> EXPECTED.stream()
                            .filter(expected -> expected.file().equals(file))
                            .noneMatch(expected ->
                                    (expected.how() + " " + expected.question() + " ").startsWith(wanted + " ")))
                    .forEach(wanted -> missing.add(file + ": " + wanted));
        }
        assertThat(missing).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> the_answer_rests_on_the_readings_of_the_source() {
        return tests(expected -> !expected.readings().isEmpty(), expected -> {
            List<String> leaves = reasons(expected)
                    .filter(reason -> reason.grounds().isEmpty())
                    .map(Reason::statement)
                    .distinct()
                    .toList();
            for (Reading reading : expected.readings()) {
                assertThat(leaves)
                        .as("%s: %s %s rests on %s", expected.file(), expected.how(), expected.question(), reading)
                        .anyMatch(reading::isSaidBy);
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> the_answer_names_the_cause_that_the_source_names() {
        return tests(expected -> !expected.words().isEmpty(), expected -> {
            List<String> sentences = sentences(expected);
            if (expected.disagrees().isPresent()) {
                assertThat(sentences)
                        .as("the cause is named: take `disagrees` out of " + EXPECTATIONS)
                        .noneMatch(sentence -> names(expected.words(), sentence));
            } else {
                assertThat(sentences)
                        .as(
                                "%s: one sentence of %s %s with %s",
                                expected.file(), expected.how(), expected.question(), expected.words())
                        .anyMatch(sentence -> names(expected.words(), sentence));
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> the_lesson_ends_with_the_idea_that_the_source_teaches() {
        return tests(expected -> expected.idea().isPresent(), expected -> {
            Plan plan = Asked.about(expected.file()).plan();
            List<String> ideas = Asked.about(expected.file()).to(expected).stream()
                    .flatMap(line -> Lesson.of(line, plan.judgement(), Shipped.lessons()).ideas().stream())
                    .map(Idea::name)
                    .toList();
            String idea = expected.idea().orElseThrow();
            assertThat(ideas.contains(idea))
                    .as(
                            "%s: %s among the ideas of %s %s: %s",
                            expected.file(), idea, expected.how(), expected.question(), ideas)
                    .isEqualTo(expected.disagrees().isEmpty());
        });
    }

    private static Stream<DynamicTest> tests(java.util.function.Predicate<Expected> where, Consumer<Expected> test) {
        return EXPECTED.stream()
                .filter(where)
                .map(expected -> DynamicTest.dynamicTest(
                        expected.file() + ": " + expected.how() + " " + expected.question() + " " + expected.words(),
                        () -> test.accept(expected)));
    }

    private static Stream<Reason> reasons(Expected expected) {
        return Asked.about(expected.file()).to(expected).stream()
                .flatMap(line -> Levels.of(line.reason()).keySet().stream());
    }

    /** Every sentence of the answer, of what it rests on and of the rules behind that. */
    private static List<String> sentences(Expected expected) {
        List<String> told = new ArrayList<>();
        Asked.about(expected.file()).to(expected).forEach(line -> told.add(line.text()));
        reasons(expected).forEach(reason -> {
            told.add(reason.statement());
            if (reason instanceof Reason.Concluded concluded) {
                concluded.arguments().forEach(argument -> told.add(argument.because()));
            }
        });
        return told.stream()
                .flatMap(text -> Stream.of(text.split("(?<=[.!?]) ")))
                .distinct()
                .toList();
    }

    private static boolean names(List<String> words, String sentence) {
        String plain = sentence.toLowerCase(java.util.Locale.ROOT);
        return words.stream().allMatch(word -> Stream.of(
                        word.toLowerCase(java.util.Locale.ROOT).split("/"))
                .anyMatch(plain::contains));
    }

    private static List<Expected> expectations() {
        Problems problems = new Problems();
        List<Expected> all = new ArrayList<>();
        Fields file = Fields.of(YamlFile.read(EXPECTATIONS), "the expectations", Set.of("cases"), problems);
        for (Node node : file.list("cases")) {
            Fields one = Fields.ofNode(node, "a case", Set.of("case", "why", "why-not"), problems);
            for (String how : List.of("why", "why-not")) {
                one.list(how).forEach(asked -> all.add(expected(one.requiredText("case"), how, asked, problems)));
            }
        }
        problems.throwIfAny();
        return List.copyOf(all);
    }

    private static Expected expected(String file, String how, Node node, Problems problems) {
        Set<String> keys = Set.of("ask", "rests on", "cause", "idea", "said by", "disagrees");
        Fields fields = Fields.ofNode(node, "a question", keys, problems);
        Node cause = fields.node("cause").orElseThrow();
        List<String> words = cause instanceof Listing
                ? fields.texts("cause").stream().map(Scalar::text).toList()
                : List.of();
        if (words.isEmpty()) {
            assertThat(((Scalar) cause).text()).isEqualTo(NO_CAUSE);
        } else {
            fields.requiredText("said by");
        }
        List<Reading> readings = fields.list("rests on").stream()
                .map(reading -> Fields.of((Mapping) reading, "a reading", Set.of("dye", "in", "seen"), problems))
                .map(reading -> new Reading(
                        reading.requiredText("dye"), reading.requiredText("in"), reading.requiredText("seen")))
                .toList();
        return new Expected(
                file, how, fields.requiredText("ask"), readings, words, fields.text("idea"), fields.text("disagrees"));
    }
}
