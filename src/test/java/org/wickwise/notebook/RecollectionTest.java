package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** What earlier strips say of the next one. The readings are invented where no source stands beside them. */
class RecollectionTest {

    private static final Scatter USUAL = new Scatter(0.02, 0.1, List.of());
    private static final RunTolerances RUNS = RunTolerances.of(Shipped.bench().judge()::limit);
    private static final LocalDate FIRST = LocalDate.of(2025, 11, 4);

    /** Class readings with one that does not belong, check value CV-113: median 0.355. */
    @Test
    void one_wild_strip_does_not_move_what_is_remembered() {
        Recollection known = remembered(day(0, 0.35, 0.34, 0.36, 0.33, 0.37, 0.62));
        assertThat(known.retardationFactor().value()).isEqualTo(0.355, within(1e-9));
        assertThat(known.highest()).isEqualTo(0.62);
        assertThat(known.strips()).isEqualTo(6);
        assertThat(known.seen())
                .filteredOn(seen -> seen.distance() > 3.5)
                .extracting(Recollection.Seen::retardationFactor)
                .containsExactly(0.62);
    }

    /** Strips that agree better than they usually do leave nothing aside that lies a hundredth off. */
    @Test
    void a_spot_is_not_left_aside_for_less_than_the_usual_scatter() {
        assertThat(remembered(day(0, 0.35, 0.35, 0.35, 0.35, 0.35, 0.39)).seen())
                .allSatisfy(seen -> assertThat(seen.distance()).isLessThan(3.5));
    }

    /** JCGM 100:2008, 4.2, check value CV-109: mean 0.350, s 0.0158; with a robust and shrunken s it may be a little off. */
    @Test
    void sound_replicates_give_their_mean_and_about_their_scatter() {
        Recollection known = remembered(day(0, 0.33, 0.35, 0.36, 0.34, 0.37));
        assertThat(known.retardationFactor().value()).isEqualTo(0.350, within(1e-9));
        double withoutClasses = Recollection.of(
                        dye(), eluent(), day(0, 0.33, 0.35, 0.36, 0.34, 0.37), new Scatter(0.02, 1e-9, List.of()))
                .retardationFactor()
                .uncertainty();
        assertThat(withoutClasses).isBetween(0.0135, 0.0185);
    }

    @Test
    void a_single_strip_is_remembered_with_the_usual_scatter_within_and_between_classes() {
        RetardationFactor known = remembered(day(0, 0.5)).retardationFactor();
        double between = Math.log(10) * 0.25 * 0.1;
        assertThat(known.uncertainty()).isEqualTo(Math.sqrt(0.02 * 0.02 + 2 * between * between), within(1e-9));
    }

    @Test
    void a_dye_at_the_origin_is_no_less_sure_because_classes_differ() {
        assertThat(remembered(day(0, 0, 0, 0)).retardationFactor().highest()).isLessThan(0.03);
    }

    @Property(tries = 200)
    void a_second_class_that_agrees_makes_the_forecast_surer(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double value, @ForAll @IntRange(min = 1, max = 12) int strips) {
        double[] same = DoubleStream.generate(() -> value).limit(strips).toArray();
        List<Memory.RememberedSpot> two = new ArrayList<>(day(0, same));
        two.addAll(day(14, same));
        assertThat(remembered(two).retardationFactor().uncertainty())
                .isLessThan(remembered(day(0, same)).retardationFactor().uncertainty());
    }

    @Property(tries = 200)
    void the_order_of_the_entries_changes_nothing(
            @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 0, max = 1) Double> values, @ForAll long seed) {
        List<Memory.RememberedSpot> spots = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            spots.addAll(day(i % 3, values.get(i)));
        }
        RetardationFactor before = remembered(spots).retardationFactor();
        Collections.shuffle(spots, new Random(seed));
        RetardationFactor after = remembered(spots).retardationFactor();
        assertThat(after.value()).isEqualTo(before.value(), within(1e-12));
        assertThat(after.uncertainty()).isEqualTo(before.uncertainty(), within(1e-12));
    }

    /** Classes drawn about true values with the scatter that is assumed: about 95 in 100 of next strips lie within. */
    @Test
    void the_interval_holds_about_as_many_next_strips_as_it_says() {
        Random random = new Random(20261126);
        int inside = 0;
        int drawn = 2000;
        for (int i = 0; i < drawn; i++) {
            double truth = 0.2 + 0.6 * random.nextDouble();
            List<Memory.RememberedSpot> spots = new ArrayList<>();
            for (int classes = 0; classes < 3; classes++) {
                double ofClass = ofClass(truth, random);
                for (int strip = 0; strip < 6; strip++) {
                    spots.addAll(day(classes, ofClass + 0.02 * random.nextGaussian()));
                }
            }
            RetardationFactor known = remembered(spots).retardationFactor();
            double next = ofClass(truth, random) + 0.02 * random.nextGaussian();
            inside += Math.abs(next - known.value()) <= 2 * known.uncertainty() ? 1 : 0;
        }
        assertThat(100.0 * inside / drawn).isBetween(88.0, 98.0);
    }

    @Test
    void only_sound_spots_are_remembered_and_names_are_found_in_small_letters() {
        Entry entry = EntryReader.parse(
                "invented.yaml",
                """
                date: 2025-11-04
                mixture: {name: ink, dyes: [Straw, rust, teal]}
                strips on: silica
                strips:
                  - {solvent: ethanol, front mm: 70, travel mm: {Straw: 35, rust: 70, teal: 20}, streaked: [teal]}
                  - {solvent: ethanol, front mm: 70, travel mm: {Straw: 70, rust: 70, teal: 20}, went wrong: [origin under the solvent]}
                """,
                Shipped.data());
        Memory memory = Memory.of(List.of(entry), USUAL, RUNS);
        List<Dye> dyes = entry.strips().dyes();
        Eluent ethanol = entry.strips().strips().get(0).eluent();
        assertThat(memory.of(dyes.get(0), ethanol, entry.strips().phase())).hasValueSatisfying(straw -> {
            assertThat(straw.strips()).isEqualTo(1);
            assertThat(straw.retardationFactor().value()).isEqualTo(0.5);
        });
        Dye teal = dyes.stream()
                .filter(dye -> dye.name().equals("teal"))
                .findFirst()
                .orElseThrow();
        assertThat(memory.of(teal, ethanol, entry.strips().phase())).isEmpty();
        Dye small = new Dye("straw".toLowerCase(Locale.ROOT), teal.dyeClass(), "", teal.place());
        assertThat(memory.of(small, ethanol, entry.strips().phase())).isPresent();
    }

    @Test
    void a_finished_column_is_remembered_where_it_tells_k() {
        Entry run = EntryReader.read(Path.of("docs/examples/ferry-ink-run.yaml"), Shipped.data());
        Memory memory = Memory.of(List.of(run), USUAL, RUNS);
        Dye rust = run.strips().dyes().stream()
                .filter(dye -> dye.name().equals("rust"))
                .findFirst()
                .orElseThrow();
        Eluent ethylAcetate =
                Eluent.neat(Shipped.data().solvent("ethyl acetate").orElseThrow());
        Recollection known = memory.of(rust, ethylAcetate, run.strips().phase()).orElseThrow();
        assertThat(known.strips()).isEqualTo(2);
        assertThat(known.highest()).as("k 1.1 on the column is Rf 0.48").isEqualTo(0.48, within(0.02));
        assertThat(known.reason().grounds().toString()).contains("from k on a finished column");
    }

    private static double ofClass(double truth, Random random) {
        double rm = Math.log10(1 / truth - 1) + 0.1 * random.nextGaussian();
        return 1 / (1 + Math.pow(10, rm));
    }

    private static Recollection remembered(List<Memory.RememberedSpot> spots) {
        return Recollection.of(dye(), eluent(), spots, USUAL);
    }

    private static List<Memory.RememberedSpot> day(int later, double... values) {
        return DoubleStream.of(values)
                .mapToObj(value -> new Memory.RememberedSpot(FIRST.plusDays(later), "ink", value, "", dye().place()))
                .toList();
    }

    private static Dye dye() {
        return new Dye(
                "straw", org.wickwise.substance.DyeClass.NEUTRAL, "", org.wickwise.text.Place.wholeFile("invented"));
    }

    private static Eluent eluent() {
        return Eluent.neat(Shipped.data().solvent("ethanol").orElseThrow());
    }
}
