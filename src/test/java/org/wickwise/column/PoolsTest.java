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
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Cut points against sums over small volumes, other cuts, and the profile of mixing cells. */
class PoolsTest {

    /** A band and how much of the dye there is. */
    record Loaded(Band band, double amount) {}

    @Test
    void bands_far_apart_are_parted_by_one_cut_and_recovered_whole() {
        List<Pool> pools = Pools.best(List.of(new Band(20, 2), new Band(60, 3)), List.of(1.0, 1.0), 0.99);
        assertThat(pools).allSatisfy(pool -> assertThat(pool.recovery()).isGreaterThan(0.999));
        assertThat(pools).allSatisfy(pool -> assertThat(pool.purity()).isGreaterThan(0.999));
        assertThat(pools.get(0).toMillilitres()).isBetween(26.0, 48.0);
    }

    /** Resolution 1.5, equal amounts: 99.87 % of each lies on its side of the middle, Phi(3). */
    @Test
    void bands_parted_to_the_base_line_meet_in_the_middle() {
        List<Pool> pools = Pools.best(List.of(new Band(20, 1), new Band(26, 1)), List.of(1.0, 1.0), 0.998);
        Between between = Pools.between(pools).get(0);
        assertThat(between.isOneCut()).isTrue();
        assertThat(between.fromMillilitres()).isCloseTo(23, within(0.021));
        assertThat(pools.get(0).recovery()).isCloseTo(0.99865, within(1e-4));
    }

    /** Resolution 0.75: one cut gives Phi(1.5) = 93.3 %, so 98 % needs a fraction in between. */
    @Test
    void what_overlaps_too_much_leaves_a_fraction_in_between() {
        List<Pool> pools = Pools.best(List.of(new Band(23, 1), new Band(20, 1)), List.of(1.0, 1.0), 0.98);
        assertThat(pools).extracting(Pool::band).containsExactly(1, 0);
        Between between = Pools.between(pools).get(0);
        assertThat(between.millilitres()).isGreaterThan(0.5);
        assertThat(between.fromMillilitres() - 20).isCloseTo(23 - between.toMillilitres(), within(0.021));
        assertThat(pools).allSatisfy(pool -> assertThat(pool.purity()).isBetween(0.98, 0.9815));
    }

    @Test
    void a_band_hidden_under_another_has_an_empty_pool() {
        List<Pool> pools = Pools.best(List.of(new Band(20, 2), new Band(20.2, 2)), List.of(100.0, 1.0), 0.9);
        assertThat(pools.get(0).isEmpty()).isFalse();
        assertThat(pools.get(1).isEmpty()).isTrue();
        assertThat(pools.get(1).purity()).isBetween(0.0, 0.9);
        assertThat(Pools.between(pools)).isEmpty();
    }

    @Test
    void all_other_bands_count_as_impurity() {
        Band middle = new Band(20, 1);
        double alone = recovery(List.of(middle, new Band(23, 1)), 0.97);
        double betweenTwo = recovery(List.of(middle, new Band(23, 1), new Band(17, 1)), 0.97);
        assertThat(betweenTwo).isLessThan(alone - 0.05);
    }

    private static double recovery(List<Band> bands, double purity) {
        List<Double> amounts = bands.stream().map(band -> 1.0).toList();
        return Pools.best(bands, amounts, purity).stream()
                .filter(pool -> pool.band() == 0)
                .findFirst()
                .orElseThrow()
                .recovery();
    }

    @Property(tries = 100)
    void purity_and_recovery_are_what_small_volumes_add_up_to(
            @ForAll("loads") @Size(min = 1, max = 5) List<Loaded> loads,
            @ForAll @DoubleRange(min = 0.6, max = 0.99) double wanted) {
        for (Pool pool : Pools.best(bands(loads), amounts(loads), wanted)) {
            if (!pool.isEmpty()) {
                double[] amount = summed(loads, pool.fromMillilitres(), pool.toMillilitres());
                double all = 0;
                for (double of : amount) {
                    all += of;
                }
                double own = amount[pool.band()];
                assertThat(pool.purity()).isCloseTo(own / all, within(1e-4)).isGreaterThanOrEqualTo(wanted - 1e-9);
                assertThat(pool.recovery())
                        .isCloseTo(own / loads.get(pool.band()).amount(), within(1e-4));
            }
        }
    }

    @Property(tries = 200)
    void pools_do_not_overlap(
            @ForAll("loads") @Size(min = 1, max = 6) List<Loaded> loads,
            @ForAll @DoubleRange(min = 0.55, max = 0.95) double wanted) {
        List<Pool> filled = Pools.best(bands(loads), amounts(loads), wanted).stream()
                .filter(pool -> !pool.isEmpty())
                .toList();
        for (int i = 1; i < filled.size(); i++) {
            assertThat(filled.get(i).fromMillilitres())
                    .isGreaterThanOrEqualTo(filled.get(i - 1).toMillilitres());
        }
    }

    /** Of two like bands; unlike ones may trade one pool for the other. */
    @Property(tries = 200)
    void of_two_like_bands_a_purer_wish_recovers_no_more(
            @ForAll @DoubleRange(min = 0.3, max = 6) double apart,
            @ForAll @DoubleRange(min = 0.55, max = 0.95) double wanted) {
        List<Loaded> loads = List.of(new Loaded(new Band(30, 1), 1), new Loaded(new Band(30 + apart, 1), 1));
        assertThat(recovered(loads, wanted + 0.04)).isLessThanOrEqualTo(recovered(loads, wanted) + 1e-9);
    }

    private static double recovered(List<Loaded> loads, double wanted) {
        return Pools.best(bands(loads), amounts(loads), wanted).stream()
                .mapToDouble(Pool::recovery)
                .sum();
    }

    /** No other stretch of the grid's fineness has the purity and more of the first of two dyes. */
    @Property(tries = 30)
    void no_other_stretch_is_better(
            @ForAll @DoubleRange(min = 0.3, max = 4) double apart,
            @ForAll @DoubleRange(min = 0.3, max = 3) double sigma,
            @ForAll @DoubleRange(min = 0.1, max = 10) double amount) {
        List<Loaded> loads = List.of(new Loaded(new Band(30, 1), 1), new Loaded(new Band(30 + apart, sigma), amount));
        double found = 0;
        for (Pool pool : Pools.best(bands(loads), amounts(loads), 0.95)) {
            found = pool.band() == 0 ? pool.recovery() : found;
        }
        for (double from = 26; from < 34; from += 0.1) {
            for (double to = from + 0.1; to < 34; to += 0.1) {
                double own = share(loads.get(0).band(), from, to);
                double other = amount * share(loads.get(1).band(), from, to);
                if (own / (own + other) >= 0.95) {
                    assertThat(found).isGreaterThan(own - 0.02);
                }
            }
        }
    }

    private static double share(Band band, double from, double to) {
        return summed(List.of(new Loaded(band, 1)), from, to, 40)[0];
    }

    /** Skew of the real profile costs little: what the mixing cells give between the cuts is nearly as pure. */
    @Test
    void the_profile_of_mixing_cells_gives_nearly_the_same_pools() {
        MixingCells cells = new MixingCells(10, 400);
        List<Outflow> outflows = List.of(
                cells.elute(List.of(new Pour(30, 20), new Pour(1, 1.0))),
                cells.elute(List.of(new Pour(30, 20), new Pour(1, 1.3))));
        List<Band> bands = outflows.stream().map(o -> o.band().orElseThrow()).toList();
        for (Pool pool : Pools.best(bands, List.of(2.0, 1.0), 0.95)) {
            double own = 0;
            double all = 0;
            for (int i = 0; i < 2; i++) {
                double share = outflows.get(i).leftBy(pool.toMillilitres())
                        - outflows.get(i).leftBy(pool.fromMillilitres());
                double amount = share * (2 - i);
                all += amount;
                if (i == pool.band()) {
                    own = amount;
                    assertThat(share).isCloseTo(pool.recovery(), within(0.01));
                }
            }
            assertThat(own / all).isCloseTo(pool.purity(), within(0.01));
        }
    }

    @Test
    void impossible_wishes_are_refused() {
        List<Band> bands = List.of(new Band(20, 1));
        assertThatThrownBy(() -> Pools.best(bands, List.of(1.0), 1)).hasMessageContaining("wanted purity is 1.0");
        assertThatThrownBy(() -> Pools.best(bands, List.of(), 0.9)).hasMessageContaining("1 bands and 0 amounts");
        assertThatThrownBy(() -> Pools.best(bands, List.of(-1.0), 0.9)).hasMessageContaining("amount of a dye is -1.0");
        assertThatThrownBy(() -> Pools.best(List.of(new Band(20, 0)), List.of(1.0), 0.9))
                .hasMessageContaining("standard deviation");
        assertThat(Pools.best(List.of(), List.of(), 0.9)).isEmpty();
    }

    @Provide
    Arbitrary<List<Loaded>> loads() {
        Arbitrary<Double> middle = Arbitraries.doubles().between(30, 60);
        Arbitrary<Double> sigma = Arbitraries.doubles().between(0.3, 5);
        Arbitrary<Double> amount = Arbitraries.doubles().between(0.05, 5);
        return Combinators.combine(middle, sigma, amount)
                .as((m, s, a) -> new Loaded(new Band(m, s), a))
                .list();
    }

    private static List<Band> bands(List<Loaded> loads) {
        return loads.stream().map(Loaded::band).toList();
    }

    private static List<Double> amounts(List<Loaded> loads) {
        return new ArrayList<>(loads.stream().map(Loaded::amount).toList());
    }

    private static double[] summed(List<Loaded> loads, double from, double to) {
        return summed(loads, from, to, 4000);
    }

    /** Amounts between two volumes, summed over the middles of small steps. */
    private static double[] summed(List<Loaded> loads, double from, double to, int steps) {
        double[] amount = new double[loads.size()];
        double step = (to - from) / steps;
        for (int dye = 0; dye < amount.length; dye++) {
            Band band = loads.get(dye).band();
            for (int i = 0; i < steps; i++) {
                double off = (from + (i + 0.5) * step - band.middleMillilitres()) / band.sigmaMillilitres();
                amount[dye] += loads.get(dye).amount()
                        * step
                        * Math.exp(-off * off / 2)
                        / (band.sigmaMillilitres() * Math.sqrt(2 * Math.PI));
            }
        }
        return amount;
    }
}
