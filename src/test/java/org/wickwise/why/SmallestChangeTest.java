package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.command.CommandLineRun;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.why.Change.OfReading;

/** What would have to be different: the smallest change really brings it about, and no smaller one does. */
class SmallestChangeTest {

    private static final Judge JUDGE = Shipped.bench().judge();
    private static final Planner PLANNER = Shipped.planner();
    private static final int STEPS = 10;

    @TempDir
    private Path folder;

    /** Two invented dyes on two strips, at random places. */
    private Case random(long seed) throws IOException {
        Random random = new Random(seed);
        double[] rf = DoubleStream.generate(() -> random.nextInt(100) / 100.0)
                .limit(4)
                .toArray();
        Path file = folder.resolve("random-" + seed + ".yaml");
        Files.writeString(
                file,
                String.format(
                        Locale.ROOT,
                        """
                        title: Two dyes at random (invented)
                        mixture:
                          dyes:
                            - {name: ochre, class: neutral}
                            - {name: teal, class: neutral}
                        column: {stationary phase: silica}
                        setting: college
                        shelf: [heptane, ethyl acetate, ethanol]
                        strips:
                          - {solvent: heptane, Rf: {ochre: %s, teal: %s}}
                          - {solvent: ethyl acetate, Rf: {ochre: %s, teal: %s}}
                        """,
                        rf[0],
                        rf[1],
                        rf[2],
                        rf[3]));
        return Shipped.caseIn(file);
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    private static List<Aim> aims(Judgement written) {
        return List.of(
                AimReader.read("heptane holds the load", written, Shipped.data()),
                AimReader.read("ethyl acetate releases teal", written, Shipped.data()),
                AimReader.read("teal leaves alone", written, Shipped.data()),
                AimReader.read("there is a plan", written, Shipped.data()));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_smaller_change_of_one_or_two_readings_brings_it_about(long seed) throws IOException {
        Judgement written = JUDGE.judge(random(seed));
        for (Aim aim : aims(written)) {
            if (aim.isMet(written, PLANNER)) {
                continue;
            }
            SmallestChange found = SmallestChange.of(written, JUDGE, PLANNER, aim, STEPS);
            Optional<OfReading> one = found.single().stream()
                    .filter(OfReading.class::isInstance)
                    .map(OfReading.class::cast)
                    .findFirst();
            double best = one.map(OfReading::size)
                    .orElse(found.two().stream().mapToDouble(OfReading::size).sum());
            double smallest = smallestByTrying(
                    written, aim, one.isPresent() || found.two().isEmpty() ? 1 : 2);
            assertThat(found.two().isEmpty() && one.isEmpty() ? Double.POSITIVE_INFINITY : best)
                    .as(aim.words() + " in case " + seed)
                    .isEqualTo(smallest);
        }
    }

    /** Every change of so many readings, tried one after the other; infinite where none serves. */
    private double smallestByTrying(Judgement written, Aim aim, int readings) {
        List<OfReading> all = OfReading.all(written, STEPS);
        List<List<OfReading>> changes = new ArrayList<>();
        for (OfReading one : all) {
            if (readings == 1) {
                changes.add(List.of(one));
            }
            for (OfReading other : readings == 1 ? List.<OfReading>of() : all) {
                boolean isAnother =
                        !one.strip().equals(other.strip()) || one.dye().compareTo(other.dye()) < 0;
                if (isAnother) {
                    changes.add(List.of(one, other));
                }
            }
        }
        double smallest = Double.POSITIVE_INFINITY;
        try (LaidOutCase laidOut = JUDGE.layOut(written.judged())) {
            for (List<OfReading> change : changes) {
                double size = change.stream().mapToDouble(OfReading::size).sum();
                if (size < smallest && isMet(laidOut, written, aim, change)) {
                    smallest = size;
                }
            }
        }
        return smallest;
    }

    private static boolean isMet(LaidOutCase laidOut, Judgement written, Aim aim, List<? extends Change> change) {
        Supposition supposition = SuppositionReader.read(
                change.stream().map(Change::words).toList(), written.judged(), written.limits(), Shipped.data());
        return aim.isMet(laidOut.suppose(supposition.supposed(), supposition.limits()), PLANNER);
    }

    @ParameterizedTest
    @ValueSource(strings = {"there is a plan", "toluene releases brick", "hexane may enter the column"})
    void every_change_that_is_named_brings_it_about_when_the_changed_case_is_judged_afresh(String wish) {
        Judgement written = JUDGE.judge(Shipped.caseIn(Path.of("docs/examples/tag-dye.yaml")));
        Aim aim = AimReader.read(wish, written, Shipped.data());
        assertThat(aim.isMet(written, PLANNER)).isFalse();
        List<Change> found = SmallestChange.of(written, JUDGE, PLANNER, aim).single();
        assertThat(found).isNotEmpty().allSatisfy(change -> {
            Supposition supposition =
                    SuppositionReader.read(List.of(change.words()), written.judged(), written.limits(), Shipped.data());
            assertThat(aim.isMet(JUDGE.judge(supposition.supposed(), supposition.limits()), PLANNER))
                    .as(change.words())
                    .isTrue();
        });
    }

    @Test
    void what_is_so_already_needs_nothing() {
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
        CommandLineRun run = CommandLineRun.of("needed", Shipped.DEMO.toString(), wish);
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }
}
