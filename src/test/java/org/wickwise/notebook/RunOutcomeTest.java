package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.column.MixingCells;
import org.wickwise.column.Outflow;
import org.wickwise.column.Pour;
import org.wickwise.notebook.DyeOutcome.Bound;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;

/** Runs of which everything is known, cut into fractions: what is reckoned from them gives it back. */
class RunOutcomeTest {

    private static final String COLUMN =
            """
            date: 2026-11-26
            mixture: {load mg: 60, dyes: [red, blue]}
            column: {stationary phase: silica, bore mm: 15, bed mm: 120}
            setting: college
            """;
    /** Nothing but the noise that is put in: the bed is just as large as reckoned. */
    private static final RunTolerances EXACT = new RunTolerances(100, 0.001, 0.001, 0.15, 0.01, 0.001);

    private static final double PEAK = 0.8;

    /** Red leaves in the first eluent; blue stays in it and leaves in the second. */
    private record Truth(
            double redK, double blueK, int plates, double stuck, double poured, double sigmasEach, long seed) {}

    private static double columnVolume() {
        return entry("")
                .column()
                .orElseThrow()
                .column()
                .columnVolumeMillilitres()
                .orElseThrow();
    }

    @Property(tries = 100)
    void a_simulated_run_gives_back_k_plates_and_recovery_within_four_stated_uncertainties(
            @ForAll @DoubleRange(min = 0.8, max = 3) double redK,
            @ForAll @DoubleRange(min = 1.2, max = 3) double blueK,
            @ForAll @IntRange(min = 60, max = 200) int plates,
            @ForAll @DoubleRange(min = 0, max = 0.4) double stuck,
            @ForAll @DoubleRange(min = 0.4, max = 1.2) double sigmasEach,
            @ForAll long seed) {
        double poured = columnVolume() * (1 + redK) * 1.6;
        Truth truth = new Truth(redK, blueK, plates, stuck, poured, sigmasEach, seed);
        RunOutcome outcome = outcome(simulated(truth), truth);
        Dye red = outcome.written().dyes().get(1);
        Dye blue = outcome.written().dyes().get(0);
        assertK(outcome.of(red).held().orElseThrow(), "ethyl acetate", redK, plates);
        assertK(outcome.of(blue).held().orElseThrow(), "ethanol", blueK, plates);
        assertRecovery(outcome.of(red), 1);
        assertRecovery(outcome.of(blue), 1 - stuck);
        RunTeaches teaches = RunTeaches.of(outcome);
        assertThat(teaches.transfer().orElseThrow().seen())
                .isCloseTo(0, within(4 * teaches.transfer().orElseThrow().seenUncertainty()));
        assertThat(teaches.retentions()).hasSize(2);
        assertThat(outcome.of(red).predicted().orElseThrow().band().middleMillilitres())
                .isCloseTo(columnVolume() * (1 + redK), within(1e-6));
    }

    private static void assertK(Held held, String eluent, double k, int plates) {
        assertThat(held.eluent().name()).isEqualTo(eluent);
        assertThat(held.bound()).isEqualTo(Bound.ABOUT);
        assertThat(held.retentionFactor()).isCloseTo(k, within(4 * held.uncertainty()));
        assertThat(held.plates().orElseThrow()).isCloseTo(plates, within(4 * held.platesUncertainty()));
        assertThat(held.platesUncertainty()).isLessThan(0.5 * plates);
    }

    private static void assertRecovery(DyeOutcome dye, double share) {
        assertThat(dye.balance().orElseThrow().recovery().orElseThrow())
                .isCloseTo(share, within(4 * dye.balance().orElseThrow().recoveryUncertainty() + 0.01));
    }

    /** The absorbance in fractions of random widths, with noise, for a peak of about 0.8. */
    private static String simulated(Truth truth) {
        double volume = columnVolume();
        MixingCells cells = new MixingCells(volume, truth.plates());
        Outflow red = cells.elute(List.of(new Pour(1000, truth.redK())));
        Outflow blue =
                cells.elute(List.of(new Pour(truth.poured(), Double.POSITIVE_INFINITY), new Pour(1000, truth.blueK())));
        double redSigma = volume * (1 + truth.redK()) / Math.sqrt(truth.plates());
        double blueSigma = volume * (1 + truth.blueK()) / Math.sqrt(truth.plates());
        double end = volume * (1 + truth.blueK()) + truth.poured() + 5 * blueSigma;
        Random random = new Random(truth.seed());
        List<String> fractions = new ArrayList<>();
        double at = 0;
        while (at < end) {
            double width = Math.min(redSigma, blueSigma) * truth.sigmasEach() * (0.7 + 0.6 * random.nextDouble());
            fractions.add(String.format(
                    Locale.ROOT,
                    "{mL: %.6f, absorbance: {red: %.4f, blue: %.4f}}",
                    width,
                    read(red, at, width, redSigma, 1, random),
                    read(blue, at, width, blueSigma, 1 - truth.stuck(), random)));
            at += width;
        }
        // The load holds as much as the fractions would if nothing stuck, dissolved in 10 mL.
        return String.format(
                        Locale.ROOT,
                        "run:%n  poured: [{eluent: ethyl acetate, mL: %.6f}, {eluent: ethanol, mL: %.6f}]%n  load: {mL: 10,"
                                + " diluted: 10, absorbance: {red: %.6f, blue: %.6f}}%n  fractions:%n",
                        truth.poured(),
                        end - truth.poured(),
                        PEAK / 0.4 * redSigma / 100,
                        PEAK / 0.4 * blueSigma / 100)
                + String.join(
                        "",
                        fractions.stream().map(line -> "    - " + line + "\n").toList());
    }

    private static double read(Outflow dye, double at, double width, double sigma, double share, Random random) {
        double exact = share * (dye.leftBy(at + width) - dye.leftBy(at)) / width * sigma * PEAK / 0.4;
        return Math.max(0, exact + 0.005 * random.nextGaussian());
    }

    private static Entry entry(String run) {
        return EntryReader.parse("run.yaml", COLUMN + run, Shipped.data());
    }

    private static RunOutcome outcome(String run, Truth truth) {
        Entry entry = entry(run);
        return RunOutcome.of(
                entry.column().orElseThrow(),
                entry.run().orElseThrow(),
                EXACT,
                (dye, eluent) -> Optional.of(
                        dye.name().equals("red")
                                ? new RetardationFactor(1 / (1 + truth.redK()), 0.01)
                                : eluent.name().equals("ethanol")
                                        ? new RetardationFactor(1 / (1 + truth.blueK()), 0.01)
                                        : new RetardationFactor(0, 1e-6)));
    }

    private static final Truth EVEN = new Truth(1, 1, 100, 0, 60, 1, 0);

    private static String run(String fractions) {
        return "run:\n  poured: [{eluent: ethyl acetate, mL: 60}, {eluent: ethanol, mL: 60}]\n  load: {mL: 2, absorbance: {red:"
                + " 0.7}, diluted: 10}\n  fractions: [" + fractions + "]\n";
    }

    /** Check value CV-408: V0 10 mL, k 20 then 1 from 30 mL on; the band leaves at 48.5 mL with 15 % of the bed behind it. */
    @Test
    void k_in_a_second_eluent_takes_the_creep_in_the_first_into_account() {
        double bed = 10 / columnVolume() * 120;
        String text = COLUMN.replace("bed mm: 120", String.format(Locale.ROOT, "bed mm: %.9f", bed))
                + "run:\n  poured: [{eluent: ethyl acetate, mL: 30}, {eluent: ethanol, mL: 60}]\n"
                + "  fractions: [{mL: 48.4}, {mL: 0.2, dyes: [blue]}, {mL: 30}]\n";
        Entry entry = EntryReader.parse("run.yaml", text, Shipped.data());
        RunOutcome outcome = RunOutcome.of(
                entry.column().orElseThrow(),
                entry.run().orElseThrow(),
                EXACT,
                (dye, eluent) ->
                        Optional.of(new RetardationFactor(eluent.name().equals("ethanol") ? 0.5 : 1 / 21.0, 0.001)));
        DyeOutcome blue = outcome.dyes().get(0);
        assertThat(blue.predicted().orElseThrow().band().middleMillilitres()).isCloseTo(48.5, within(1e-6));
        assertThat(blue.predicted().orElseThrow().band().sigmaMillilitres()).isCloseTo(1.888, within(0.001));
        assertThat(blue.held().orElseThrow().retentionFactor()).isCloseTo(1, within(1e-6));
    }

    @Test
    void load_is_fractions_and_rest() {
        RunOutcome outcome = outcome(
                run("{mL: 26}, {mL: 7, absorbance: {red: 0.5}}, {mL: 7, absorbance: {red: 0.5}, diluted: 2}, {mL: 60}"),
                EVEN);
        DyeOutcome red = outcome.dyes().get(1);
        assertThat(red.balance().orElseThrow().collected()).isCloseTo(7 * 0.5 + 7 * 0.5 * 2, within(1e-9));
        assertThat(red.balance().orElseThrow().loaded().orElseThrow()).isCloseTo(14, within(1e-9));
        assertThat(red.balance().orElseThrow().recovery().orElseThrow()).isCloseTo(0.75, within(1e-9));
        assertThat(outcome.dyes().get(0).balance()).as("nobody read blue").isEmpty();
    }

    @Test
    void the_shares_of_all_pools_and_of_what_is_left_out_add_up_to_the_recovery() {
        RunOutcome outcome = outcome(
                run("{mL: 26}, {mL: 7, absorbance: {red: 0.5}}, {mL: 7, absorbance: {red: 0.4, blue: 0.3}}, {mL: 9,"
                        + " absorbance: {blue: 0.5}}, {mL: 60}"),
                EVEN);
        DyeOutcome red = outcome.dyes().get(1);
        PooledFractions pool = PooledFractions.of(red, outcome, 0.98).orElseThrow();
        assertThat(pool.first()).isEqualTo(2);
        assertThat(pool.last()).isEqualTo(2);
        assertThat(pool.purity().orElseThrow().value()).isEqualTo(1);
        double leftOut = 7 * 0.4 / 14;
        assertThat(pool.recovery().orElseThrow().value() + leftOut)
                .isCloseTo(red.balance().orElseThrow().recovery().orElseThrow(), within(1e-9));
        PooledFractions lessPure = PooledFractions.of(red, outcome, 0.6).orElseThrow();
        assertThat(lessPure.last()).isEqualTo(3);
        assertThat(lessPure.purity().orElseThrow().value()).isCloseTo(6.3 / (6.3 + 2.1), within(1e-9));
        PooledFractions blue =
                PooledFractions.of(outcome.dyes().get(0), outcome, 0.6).orElseThrow();
        assertThat(blue.first()).as("no fraction is for two dyes").isEqualTo(4);
    }

    @Test
    void what_is_only_seen_gives_ranges_and_pools_that_show_one_dye() {
        RunOutcome outcome = outcome(
                run(
                        "{mL: 20}, {mL: 7, dyes: [red]}, {mL: 7, dyes: [red]}, {mL: 7, dyes: [red]}, {mL: 7, dyes: [red, blue]},"
                                + " {mL: 7, dyes: [blue]}, {mL: 7, dyes: [blue]}, {mL: 60}"),
                EVEN);
        PooledFractions pool =
                PooledFractions.of(outcome.dyes().get(1), outcome, 0.98).orElseThrow();
        assertThat(pool.first()).isEqualTo(2);
        assertThat(pool.last()).isEqualTo(4);
        assertThat(pool.recovery().orElseThrow().byEye()).isTrue();
        assertThat(pool.recovery().orElseThrow().lowest()).isLessThan(0.8);
        assertThat(pool.recovery().orElseThrow().highest()).isGreaterThan(0.9);
    }

    @Test
    void a_dye_in_the_last_fraction_is_held_at_least_so_much() {
        RunOutcome outcome = outcome(run("{mL: 30}, {mL: 3, dyes: [red]}, {mL: 3, dyes: [red]}"), EVEN);
        Held held = outcome.dyes().get(1).held().orElseThrow();
        assertThat(held.bound()).isEqualTo(Bound.AT_LEAST);
        assertThat(held.plates()).isEmpty();
        assertThat(RunTeaches.of(outcome).transfer()).isEmpty();
    }

    @Test
    void a_dye_that_comes_while_eluents_change_tells_k_in_neither() {
        RunOutcome outcome = outcome(run("{mL: 70}, {mL: 7, dyes: [blue]}, {mL: 7, dyes: [blue]}, {mL: 30}"), EVEN);
        assertThat(outcome.dyes().get(0).observed()).isPresent();
        assertThat(outcome.dyes().get(0).held()).isEmpty();
    }
}
