package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.command.CommandLineRun;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Change.OfLimit;
import org.wickwise.why.Change.OfReading;

/** What would have to be different: the smallest change really brings it about, and trying everything finds none smaller. */
class SmallestChangeTest {

    private static final Judge JUDGE = Shipped.bench().judge();
    private static final Planner PLANNER = Shipped.planner();
    private static final int HUNDREDTHS = 100;
    private static final int TENTHS = 10;
    private static final int STEPS_OF_A_LIMIT = 50;

    @TempDir
    private Path folder;

    /** Two invented dyes on two strips, or three where the seed is even, at random places. */
    private Judgement random(long seed) throws IOException {
        Random random = new Random(seed);
        String again = seed % 2 == 0
                ? String.format(
                        Locale.ROOT, "  - {solvent: heptane, replicate: 2, Rf: {ochre: %s, teal: %s}}%n", 0.1, 0.12)
                : "";
        Path file = folder.resolve("random-" + seed + ".yaml");
        Files.writeString(
                file,
                String.format(
                        Locale.ROOT,
                        """
                        title: Two dyes at random (invented)
                        mixture:
                          name: two dyes
                          dyes:
                            - {name: ochre, class: neutral}
                            - {name: teal, class: neutral}
                        column: {stationary phase: silica}
                        setting: college
                        shelf: [heptane, ethyl acetate]
                        strips:
                          - {solvent: heptane, Rf: {ochre: %s, teal: %s}}
                          - {solvent: ethyl acetate, Rf: {ochre: %s, teal: %s}}
                        %s""",
                        random.nextInt(25) / 100.0,
                        random.nextInt(25) / 100.0,
                        random.nextInt(100) / 100.0,
                        random.nextInt(100) / 100.0,
                        again));
        return JUDGE.judge(Shipped.caseIn(file));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 3);
    }

    private static Stream<Aim> unmet(Judgement written, String... wishes) {
        return Stream.of(wishes)
                .map(wish -> AimReader.read(wish, written, Shipped.data()))
                .filter(aim -> !aim.isMet(written, PLANNER));
    }

    private static double sizeOfTheReading(SmallestChange found) {
        return found.single().stream()
                .filter(OfReading.class::isInstance)
                .mapToDouble(Change::size)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double sizeOfTheLimit(SmallestChange found) {
        return found.single().stream()
                .filter(OfLimit.class::isInstance)
                .mapToDouble(Change::size)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_smaller_change_of_one_reading_of_all_hundredths_brings_it_about(long seed) throws IOException {
        Judgement written = random(seed);
        unmet(written, "heptane holds the load", "ethyl acetate releases teal", "ethyl acetate sweeps")
                .forEach(
                        aim -> assertThat(sizeOfTheReading(SmallestChange.of(written, JUDGE, PLANNER, aim, HUNDREDTHS)))
                                .as(aim.words() + " in case " + seed)
                                .isEqualTo(smallest(
                                        written,
                                        aim,
                                        OfReading.all(written, HUNDREDTHS).stream()
                                                .map(List::of)
                                                .toList())));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_smaller_change_of_two_readings_of_all_tenths_brings_it_about(long seed) throws IOException {
        Judgement written = random(seed);
        unmet(
                        written,
                        "heptane holds the load",
                        "ethyl acetate releases teal",
                        "heptane sweeps",
                        "heptane releases teal")
                .forEach(aim -> {
                    SmallestChange found = SmallestChange.of(written, JUDGE, PLANNER, aim, TENTHS);
                    if (sizeOfTheReading(found) == Double.POSITIVE_INFINITY) {
                        double size = found.two().isEmpty()
                                ? Double.POSITIVE_INFINITY
                                : found.two().stream().mapToDouble(Change::size).sum();
                        assertThat(size)
                                .as(aim.words() + " in case " + seed)
                                .isEqualTo(smallest(written, aim, pairs(OfReading.all(written, TENTHS))));
                    }
                });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_smaller_change_of_one_limit_over_its_whole_range_brings_it_about(long seed) throws IOException {
        Judgement written = random(seed);
        List<List<OfLimit>> limits = written.limits().values().stream()
                .flatMap(limit -> OfLimit.all(limit, STEPS_OF_A_LIMIT))
                .map(List::of)
                .toList();
        unmet(written, "heptane holds the load")
                .forEach(aim -> assertThat(sizeOfTheLimit(SmallestChange.of(written, JUDGE, PLANNER, aim, TENTHS)))
                        .as(aim.words() + " in case " + seed)
                        .isEqualTo(smallest(written, aim, limits)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_smaller_change_of_one_reading_makes_a_plan_in_which_a_dye_leaves_alone(long seed) throws IOException {
        Judgement written = random(seed);
        unmet(written, "teal leaves alone", "a plan").forEach(aim -> assertThat(
                        sizeOfTheReading(SmallestChange.of(written, JUDGE, PLANNER, aim, TENTHS)))
                .as(aim.words() + " in case " + seed)
                .isEqualTo(smallest(
                        written,
                        aim,
                        OfReading.all(written, TENTHS).stream().map(List::of).toList())));
    }

    private static List<List<OfReading>> pairs(List<OfReading> all) {
        List<List<OfReading>> pairs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (OfReading other : all.subList(i + 1, all.size())) {
                if (!all.get(i).spot().equals(other.spot())) {
                    pairs.add(List.of(all.get(i), other));
                }
            }
        }
        return pairs;
    }

    /** By trying every one of these in the words of a supposition; infinite where none brings it about. */
    private static double smallest(Judgement written, Aim aim, List<? extends List<? extends Change>> all) {
        double smallest = Double.POSITIVE_INFINITY;
        try (LaidOutCase laidOut = JUDGE.layOut(written.judged())) {
            for (List<? extends Change> changes : all) {
                double size = changes.stream().mapToDouble(Change::size).sum();
                if (size < smallest && isMet(laidOut, written, aim, changes)) {
                    smallest = size;
                }
            }
        }
        return smallest;
    }

    private static boolean isMet(LaidOutCase laidOut, Judgement written, Aim aim, List<? extends Change> changes) {
        Supposition supposition = supposition(written, changes);
        try {
            return aim.isMet(laidOut.suppose(supposition.supposed(), supposition.limits()), PLANNER);
        } catch (ProblemsFound contradiction) {
            return false;
        }
    }

    private static Supposition supposition(Judgement written, List<? extends Change> changes) {
        return SuppositionReader.read(
                changes.stream().map(Change::words).toList(), written.judged(), written.limits(), Shipped.data());
    }

    @ParameterizedTest
    @CsvSource({
        "docs/examples/ferry-ink.yaml, acetone releases harbour blue",
        "docs/examples/ferry-ink.yaml, heptane releases straw",
        "docs/examples/tag-dye.yaml, hexane may enter the column"
    })
    void every_change_that_is_named_brings_it_about_when_the_changed_case_is_judged_afresh(Path file, String wish) {
        Case written = Shipped.caseIn(file);
        Judgement judgement = JUDGE.judge(written);
        Aim aim = AimReader.read(wish, judgement, Shipped.data());
        assertThat(aim.isMet(judgement, PLANNER)).isFalse();
        SmallestChange found = SmallestChange.of(judgement, JUDGE, PLANNER, aim);
        assertThat(found.single()).isNotEmpty().allSatisfy(change -> {
            Supposition supposition = supposition(judgement, List.of(change));
            assertThat(aim.isMet(JUDGE.judge(supposition.supposed(), supposition.limits()), PLANNER))
                    .as(change.words())
                    .isTrue();
        });
    }

    @Test
    void where_nothing_brings_it_about_that_is_said_with_how_much_was_tried() {
        assertThat(asked("water may enter the column"))
                .contains("[none]", "water may enter the column")
                .containsPattern("\\d+ changes were tried");
    }

    /** Water on silica opens nothing; on other beds the same strip gives a plan, which is a guess. */
    @Test
    void another_bed_that_opens_a_plan_is_offered_as_a_guess() throws IOException {
        Path file = folder.resolve("water.yaml");
        Files.writeString(
                file,
                """
                title: Water only (invented)
                mixture: {dyes: [ochre, teal]}
                column: {stationary phase: silica}
                setting: secondary school
                shelf: [water]
                strips:
                  - {solvent: water, front mm: 70, travel mm: {ochre: 60, teal: 20}}
                """);
        assertThat(asked(file, "there is a plan"))
                .contains("[none] No single reading, limit or bottle would bring it about")
                .containsPattern(
                        "\\[bed-1\\] A column of [^:]*cellulose[^:]* instead of silica: then there is a plan\\."
                                + " It would be: pack with water, then pour water\\. A guess: strips were run on another")
                .contains("Try it: suppose CASE \"the column is ")
                .doesNotContain("A guess: strips were run on another stationary phase than the column's, and an Rf does"
                        + " not carry over. It was");
    }

    @Test
    void a_bed_that_lets_an_eluent_in_is_no_guess_for_that_hangs_on_no_strip() {
        assertThat(asked("water may enter the column"))
                .containsPattern(
                        "\\[bed-1\\] A column of [^:]*cellulose[^:]*: then water may enter the column\\. Try it");
    }

    @Test
    void what_is_so_already_needs_nothing_and_a_void_strip_is_not_asked() {
        assertThat(asked("heptane holds the load"))
                .contains("[so] Nothing: heptane holds the load as it is.", "Not asked: The spots of the strip");
    }

    @Test
    void an_unknown_name_or_wish_is_told_with_what_can_be_wished_for() {
        assertThat(asked("acetne holds the load")).contains("called `acetne`", "did you mean `acetone`");
        assertThat(asked("acetone releases rost")).contains("no dye `rost`", "did you mean `rust`");
        assertThat(asked("acetone flies")).contains("nothing that can be wished for", "SOLVENT releases DYE");
    }

    private static String asked(String wish) {
        return asked(Shipped.DEMO, wish);
    }

    private static String asked(Path file, String wish) {
        CommandLineRun run = CommandLineRun.of("needed", file.toString(), wish);
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }
}
