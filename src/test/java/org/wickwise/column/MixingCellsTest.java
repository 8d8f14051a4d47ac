package org.wickwise.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The row of mixing cells against plate theory, the closed form for steps, gradients and the binomial. */
class MixingCellsTest {

    private static final double V0 = 10;
    private static final MixingCells CELLS = new MixingCells(V0, 100);
    private static final double ON = 1;

    /** CV-408: 48.5 mL within 1 %, 1.888 mL within 5 %; a plain simulation of 100 cells gave 48.63 and 1.879. */
    @Test
    void one_switch_agrees_with_the_closed_form() {
        Band band = band(CELLS.elute(List.of(new Pour(30, 20), new Pour(ON, 1))));
        assertThat(band.middleMillilitres()).isCloseTo(48.5, Percentage.withPercentage(1));
        assertThat(band.sigmaMillilitres()).isCloseTo(1.88822, Percentage.withPercentage(5));
    }

    /** CV-409: 52.8 mL within 1 %, 1.189 mL within 5 %; a plain simulation gave 52.96 and 1.16. */
    @Test
    void two_switches_agree_with_the_closed_form() {
        Band band = band(CELLS.elute(List.of(new Pour(20, 50), new Pour(20, 5), new Pour(ON, 0.5))));
        assertThat(band.middleMillilitres()).isCloseTo(52.8, Percentage.withPercentage(1));
        assertThat(band.sigmaMillilitres()).isCloseTo(1.18929, Percentage.withPercentage(5));
    }

    /** CV-418: narrower by k/(1 + k) in the variance of each step. */
    @Test
    void whole_tubes_give_a_narrower_band_than_mixing_cells() {
        List<Pour> pours = List.of(new Pour(30, 20), new Pour(ON, 1));
        Band band = band(Craig.throughTubes(pours, V0, 100));
        assertThat(band.sigmaMillilitres()).isCloseTo(1.3629, Percentage.withPercentage(0.5));
    }

    /** N (1 + k) transfers on average, standard deviation sqrt(N k (1 + k)): the negative binomial. */
    @Property(tries = 100)
    void whole_tubes_in_one_eluent_leave_as_the_negative_binomial(
            @ForAll @DoubleRange(min = 0.2, max = 20) double k, @ForAll @IntRange(min = 5, max = 120) int tubes) {
        Band band = band(Craig.throughTubes(List.of(new Pour(ON, k)), tubes, tubes));
        Craig craig = Craig.ofRetentionFactor(k);
        assertThat(band.middleMillilitres())
                .isCloseTo(craig.meanTransfersToLeave(tubes), Percentage.withPercentage(0.001));
        assertThat(band.sigmaMillilitres())
                .isCloseTo(craig.sigmaTransfersToLeave(tubes), Percentage.withPercentage(0.001));
    }

    @Test
    void shares_of_the_tubes_are_the_binomial() {
        double[] share = new Craig(0.3).after(7);
        assertThat(share[2]).isCloseTo(21 * 0.09 * Math.pow(0.7, 5), within(1e-12));
        assertThat(new Craig(0.5).after(3000)[1500]).isCloseTo(1 / Math.sqrt(Math.PI * 1500), within(1e-5));
    }

    @Property(tries = 200)
    void one_eluent_gives_the_plate_theory_whatever_k_and_however_many_cells(
            @ForAll @DoubleRange(min = 0, max = 60) double k, @ForAll @IntRange(min = 20, max = 400) int cells) {
        Band band = band(new MixingCells(V0, cells).elute(List.of(new Pour(ON, k))));
        assertThat(band.middleMillilitres()).isCloseTo(V0 * (1 + k), Percentage.withPercentage(0.01));
        assertThat(band.sigmaMillilitres()).isCloseTo(V0 * (1 + k) / Math.sqrt(cells), Percentage.withPercentage(0.6));
    }

    /** A single mixing cell empties as an exponential: mean and standard deviation are both V0 (1 + k). */
    @Test
    void a_single_cell_empties_as_an_exponential() {
        Band band = band(new MixingCells(V0, 1).elute(List.of(new Pour(ON, 3))));
        assertThat(band.middleMillilitres()).isCloseTo(40, Percentage.withPercentage(0.1));
        assertThat(band.sigmaMillilitres()).isCloseTo(40, Percentage.withPercentage(0.1));
    }

    /** The gamma distribution of N exponential cells, summed as a Poisson tail. */
    @Property(tries = 100)
    void the_profile_in_one_eluent_is_the_gamma_distribution(
            @ForAll @DoubleRange(min = 0.3, max = 30) double k, @ForAll @DoubleRange(min = 0.6, max = 1.6) double at) {
        Outflow outflow = CELLS.elute(List.of(new Pour(ON, k)));
        double jumps = 100 * at;
        double term = Math.exp(-jumps);
        double stillOnBed = term;
        for (int i = 1; i < 100; i++) {
            term *= jumps / i;
            stillOnBed += term;
        }
        assertThat(outflow.leftBy(at * V0 * (1 + k))).isCloseTo(1 - stillOnBed, within(0.006));
    }

    /** 16 Rs^2 = N ((alpha - 1)/alpha)^2 (k/(1 + k))^2 holds for close neighbours. */
    @Test
    void close_neighbours_part_as_purnell_says() {
        Band first = band(CELLS.elute(List.of(new Pour(ON, 4))));
        Band second = band(CELLS.elute(List.of(new Pour(ON, 4.2))));
        assertThat(first.resolutionTo(second))
                .isCloseTo(Resolution.purnell(100, 1.05, 4.2), Percentage.withPercentage(3));
        assertThat(first.resolutionTo(second))
                .isCloseTo(Resolution.ofRetardationFactors(100, 1 / 5.0, 1 / 5.2), Percentage.withPercentage(0.5));
    }

    /** The band has moved to x when x (1 + k) column volumes have gone in, x (1 + k)/k times what was poured per k. */
    @Property(tries = 100)
    void a_front_catches_the_band_after_what_was_poured_times_one_plus_k_over_k(
            @ForAll @DoubleRange(min = 3, max = 30) double k, @ForAll @DoubleRange(min = 0.1, max = 0.6) double x) {
        double poured = x * V0 * k;
        BandOnBed caught = BandOnBed.loaded().after(new Pour(poured, k), V0, 1000);
        assertThat(caught.overtakenAtMillilitres(V0)).isCloseTo(poured * (1 + k) / k, within(1e-9));
        Band band = band(new MixingCells(V0, 1000).elute(List.of(new Pour(poured, k), new Pour(ON, 1))));
        assertThat(band.middleMillilitres())
                .isCloseTo(caught.overtakenAtMillilitres(V0) + (1 - x) * V0 * 2, Percentage.withPercentage(0.3));
    }

    @Property(tries = 100)
    void a_switch_to_the_same_eluent_changes_nothing(
            @ForAll @DoubleRange(min = 0.1, max = 30) double k,
            @ForAll @DoubleRange(min = 1, max = 200) double volume) {
        Band switched = band(CELLS.elute(List.of(new Pour(volume, k), new Pour(ON, k))));
        Band single = band(CELLS.elute(List.of(new Pour(ON, k))));
        assertThat(switched.middleMillilitres()).isCloseTo(single.middleMillilitres(), Percentage.withPercentage(0.01));
        assertThat(switched.sigmaMillilitres()).isCloseTo(single.sigmaMillilitres(), Percentage.withPercentage(0.5));
    }

    /** CV-416: the integral gives 66.21 mL. */
    @Test
    void many_small_steps_become_the_power_law_gradient() {
        PowerLawGradient gradient = new PowerLawGradient(0.5, 1.5, 0.05, 0.005);
        double size = 0.1;
        List<Pour> pours = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            pours.add(new Pour(size, gradient.retentionFactor(0.05 + 0.005 * (i + 0.5) * size)));
        }
        assertThat(Band.of(pours, V0, 100).orElseThrow().middleMillilitres())
                .isCloseTo(gradient.elutionMillilitres(V0), Percentage.withPercentage(0.05));
        assertThat(band(new MixingCells(V0, 1000).elute(pours)).middleMillilitres())
                .isCloseTo(gradient.elutionMillilitres(V0), Percentage.withPercentage(0.3));
    }

    /** CV-415: 10.73 min. At constant flow V0 is t0, and each step holds the strength of its middle. */
    @Test
    void many_small_steps_become_the_linear_strength_gradient() {
        LinearStrengthGradient gradient = new LinearStrengthGradient(100, 4, 1, 1.5, 20, 0);
        double size = 0.02;
        List<Pour> pours = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            pours.add(new Pour(size, 100 * Math.pow(10, -4 * (i + 0.5) * size / 20)));
        }
        assertThat(Band.of(pours, 1.5, 100).orElseThrow().middleMillilitres())
                .isCloseTo(gradient.retention(), Percentage.withPercentage(0.05));
        assertThat(band(new MixingCells(1.5, 1000).elute(pours)).middleMillilitres())
                .isCloseTo(gradient.retention(), Percentage.withPercentage(0.3));
    }

    @Property(tries = 300)
    void nothing_is_lost_and_nothing_becomes_negative(
            @ForAll("pours") List<Pour> pours, @ForAll @IntRange(min = 1, max = 150) int cells) {
        Outflow outflow = new MixingCells(V0, cells).pour(pours);
        double out = 0;
        for (int i = 0; i < outflow.portions(); i++) {
            assertThat(outflow.share(i)).isGreaterThanOrEqualTo(0);
            assertThat(outflow.toMillilitres(i)).isGreaterThan(outflow.fromMillilitres(i));
            out += outflow.share(i);
        }
        assertThat(out + outflow.leftOnBed()).isCloseTo(1, within(1e-9));
    }

    @Property(tries = 100)
    void in_one_eluent_and_a_step_the_order_follows_k(
            @ForAll @DoubleRange(min = 0.3, max = 20) double k, @ForAll @DoubleRange(min = 1.05, max = 3) double more) {
        List<Pour> faster = List.of(new Pour(20, 3 * k), new Pour(ON, k));
        List<Pour> slower = List.of(new Pour(20, 3 * k * more), new Pour(ON, k * more));
        assertThat(band(CELLS.elute(slower)).middleMillilitres())
                .isGreaterThan(band(CELLS.elute(faster)).middleMillilitres());
    }

    @Property(tries = 200)
    void a_dye_that_is_held_more_leaves_no_earlier(
            @ForAll("pours") List<Pour> pours, @ForAll @DoubleRange(min = 1.02, max = 3) double more) {
        List<Pour> ending = new ArrayList<>(pours);
        ending.add(new Pour(ON, 2));
        List<Pour> heldMore = ending.stream()
                .map(pour -> new Pour(pour.millilitres(), pour.retentionFactor() * more))
                .toList();
        assertThat(band(CELLS.elute(heldMore)).middleMillilitres())
                .isGreaterThanOrEqualTo(band(CELLS.elute(ending)).middleMillilitres() - 1e-6);
    }

    /** Where both are reliable: the band is caught well before the outlet and leaves held. */
    @Property(tries = 200)
    void steps_agree_with_the_closed_form(
            @ForAll @DoubleRange(min = 5, max = 40) double k1,
            @ForAll @DoubleRange(min = 0.6, max = 4) double k2,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double caughtAt) {
        List<Pour> pours = List.of(new Pour(caughtAt * V0 * k1, k1), new Pour(ON, k2));
        Band closed = Band.of(pours, V0, 100).orElseThrow();
        Band cells = band(CELLS.elute(pours));
        assertThat(cells.middleMillilitres()).isCloseTo(closed.middleMillilitres(), Percentage.withPercentage(1));
        assertThat(cells.sigmaMillilitres()).isCloseTo(closed.sigmaMillilitres(), Percentage.withPercentage(8));
    }

    /** A load focused on the bed: 5 mL at k 30 leaves at k 1 in 0.17 mL beside dispersion (CV-412). */
    @Test
    void a_load_that_is_held_is_focused() {
        List<Pour> pours = List.of(new Pour(ON, 1));
        Band wide = band(CELLS.elute(new Pour(5, 30), pours));
        Band narrow = band(CELLS.elute(pours));
        assertThat(wide.middleMillilitres()).isCloseTo(narrow.middleMillilitres(), within(0.4));
        assertThat(wide.sigmaMillilitres()).isCloseTo(narrow.sigmaMillilitres(), Percentage.withPercentage(3));
    }

    /** The closed form of a plug on the bed beside the same plug sent through mixing cells. */
    @Property(tries = 60)
    void a_plug_on_the_bed_leaves_as_the_cells_let_it_leave(
            @ForAll @DoubleRange(min = 1, max = 8) double load,
            @ForAll @DoubleRange(min = 3, max = 30) double inTheLoad,
            @ForAll @DoubleRange(min = 1, max = 3) double after) {
        Band cells = band(CELLS.elute(new Pour(load, inTheLoad), List.of(new Pour(ON, after))));
        Band closed = Band.of(BandOnBed.loadedIn(load, inTheLoad, V0, 100), List.of(new Pour(ON, after)), V0, 100)
                .orElseThrow();
        assertThat(closed.middleMillilitres()).isCloseTo(cells.middleMillilitres(), Percentage.withPercentage(1));
        assertThat(closed.sigmaMillilitres()).isCloseTo(cells.sigmaMillilitres(), Percentage.withPercentage(4));
    }

    /** A load that is not held keeps its own width: variances add, V^2/12, and its middle is half of it earlier. */
    @Test
    void a_load_in_the_eluent_itself_adds_its_own_width() {
        Band band = band(CELLS.elute(new Pour(12, 3), List.of(new Pour(ON, 3))));
        assertThat(band.middleMillilitres()).isCloseTo(40 - 6, within(0.01));
        assertThat(band.sigmaMillilitres()).isCloseTo(Math.sqrt(16 + 12), Percentage.withPercentage(0.6));
    }

    @Test
    void a_dye_that_never_moves_stays_on_the_bed() {
        Outflow outflow = CELLS.elute(List.of(new Pour(10, Double.POSITIVE_INFINITY)));
        assertThat(outflow.band()).isEmpty();
        assertThat(outflow.leftOnBed()).isCloseTo(1, within(1e-9));
    }

    @Test
    void impossible_columns_and_empty_lists_are_refused() {
        assertThatThrownBy(() -> new MixingCells(0, 100)).hasMessageContaining("column volume is 0.0");
        assertThatThrownBy(() -> new MixingCells(10, 0)).hasMessageContaining("number of cells");
        assertThatThrownBy(() -> CELLS.elute(List.of())).hasMessageContaining("number of pours");
    }

    @Provide
    Arbitrary<List<Pour>> pours() {
        Arbitrary<Double> millilitres = Arbitraries.doubles().between(0.01, 60);
        Arbitrary<Double> k =
                Arbitraries.oneOf(Arbitraries.doubles().between(0, 50), Arbitraries.just(Double.POSITIVE_INFINITY));
        return Combinators.combine(millilitres, k)
                .as(Pour::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    private static Band band(Outflow outflow) {
        return outflow.band().orElseThrow();
    }
}
