package org.wickwise.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.wickwise.column.CollectedBand.Portion;

/** Bands reckoned from fractions, against bands of which everything is known. */
class CollectedBandTest {

    private static final double COLUMN_VOLUME = 16.4;

    /** A band of mixing cells, cut into fractions of random widths and read with noise, gives its middle and its width back. */
    @Property(tries = 300)
    void a_known_band_comes_back_within_four_stated_uncertainties(
            @ForAll @DoubleRange(min = 0.5, max = 8) double k,
            @ForAll @IntRange(min = 40, max = 250) int plates,
            @ForAll @DoubleRange(min = 0.3, max = 1.6) double sigmasEach,
            @ForAll long seed) {
        Collected collected = collected(k, plates, sigmasEach, 0.01, new Random(seed));
        CollectedBand band = CollectedBand.ofAmounts(collected.portions()).orElseThrow();
        double middle = COLUMN_VOLUME * (1 + k);
        assertThat(band.middleMillilitres()).isCloseTo(middle, within(4 * band.middleUncertainty()));
        if (surelyFilled(collected.portions()) < 3) {
            assertThat(band.sigmaMillilitres())
                    .as("two fractions do not tell how wide a band is")
                    .isEmpty();
        } else {
            assertThat(band.sigmaMillilitres().orElseThrow())
                    .isCloseTo(middle / Math.sqrt(plates), within(4 * band.sigmaUncertainty()));
        }
    }

    private static long surelyFilled(List<Portion> portions) {
        return portions.stream()
                .filter(portion -> portion.amount() > 3 * portion.uncertainty())
                .count();
    }

    @Test
    void two_stated_uncertainties_hold_the_truth_about_as_often_as_they_say() {
        Random random = new Random(20261126);
        int middles = 0;
        int widths = 0;
        int tries = 500;
        for (int i = 0; i < tries; i++) {
            double k = 0.5 + 7 * random.nextDouble();
            int plates = 40 + random.nextInt(200);
            Collected collected = collected(k, plates, 0.3 + 1.3 * random.nextDouble(), 0.01, random);
            CollectedBand band = CollectedBand.ofAmounts(collected.portions()).orElseThrow();
            double middle = COLUMN_VOLUME * (1 + k);
            double sigma = middle / Math.sqrt(plates);
            middles += Math.abs(band.middleMillilitres() - middle) < 2 * band.middleUncertainty() ? 1 : 0;
            widths += Math.abs(band.sigmaMillilitres().orElseThrow() - sigma) < 2 * band.sigmaUncertainty() ? 1 : 0;
        }
        assertThat(middles / (double) tries).isGreaterThan(0.93);
        assertThat(widths / (double) tries).isGreaterThan(0.93);
    }

    private record Collected(List<Portion> portions) {}

    private static Collected collected(double k, int plates, double sigmasEach, double noise, Random random) {
        Outflow outflow = new MixingCells(COLUMN_VOLUME, plates).elute(List.of(new Pour(1000, k)));
        double sigma = COLUMN_VOLUME * (1 + k) / Math.sqrt(plates);
        double end = COLUMN_VOLUME * (1 + k) + 6 * sigma;
        List<Portion> portions = new ArrayList<>();
        double at = 0;
        double peak = 0.4 / sigma;
        while (at < end) {
            double width = sigma * sigmasEach * (0.6 + 0.8 * random.nextDouble());
            double share = outflow.leftBy(at + width) - outflow.leftBy(at);
            double read = Math.max(0, share / width / peak + noise * random.nextGaussian());
            portions.add(new Portion(at, at + width, read * width, noise * width));
            at += width;
        }
        return new Collected(portions);
    }

    /** The printed band of check value CV-314: 105.7 mL and 100 plates, in fractions of 10 mL. */
    @Test
    void a_gaussian_band_in_fractions_of_the_usual_size_keeps_its_width() {
        Band band = new Band(105.7, 10.57);
        List<Portion> portions = new ArrayList<>();
        for (int from = 0; from < 200; from += 10) {
            portions.add(new Portion(from, from + 10, band.shareBetween(from, from + 10), 0.003));
        }
        CollectedBand collected = CollectedBand.ofAmounts(portions).orElseThrow();
        assertThat(collected.middleMillilitres()).isCloseTo(105.7, within(0.1));
        assertThat(collected.sigmaMillilitres().orElseThrow()).isCloseTo(10.57, within(0.3));
        assertThat(collected.isCut()).isFalse();
        assertThat(Plates.fromSigma(
                        collected.middleMillilitres(),
                        collected.sigmaMillilitres().orElseThrow()))
                .isCloseTo(100, within(6.0));
    }

    /** Chart distances of a printed problem: A at 22 cm, 8 cm wide, B at 34 cm, 6 cm wide (brainmass.com 604848, seen). */
    @Test
    void a_printed_pair_cut_into_fractions_keeps_its_plates_and_its_resolution() {
        CollectedBand a = cut(new Band(22, 8.0 / 4), 0.7);
        CollectedBand b = cut(new Band(34, 6.0 / 4), 0.7);
        assertThat(a.band().orElseThrow().resolutionTo(b.band().orElseThrow())).isCloseTo(1.71, within(0.03));
        assertThat(Plates.fromSigma(b.middleMillilitres(), b.sigmaMillilitres().orElseThrow()))
                .isCloseTo(514, within(20.0));
        assertThat((a.middleMillilitres() - 4) / 4).as("k of A").isCloseTo(4.5, within(0.02));
    }

    /** Peak C of Skoog's problem 26-14 has 2364 plates; a band of 1.16 min is cut into fractions of a fifth of a minute. */
    @Test
    void a_printed_peak_cut_into_fractions_keeps_its_plates() {
        CollectedBand c = cut(new Band(14.1, 1.16 / 4), 0.2);
        assertThat(Plates.fromSigma(c.middleMillilitres(), c.sigmaMillilitres().orElseThrow()))
                .isCloseTo(2364, within(100.0));
    }

    private static CollectedBand cut(Band band, double width) {
        List<Portion> portions = new ArrayList<>();
        for (int i = 0; i * width < band.middleMillilitres() + 6 * band.sigmaMillilitres(); i++) {
            double share = band.shareBetween(i * width, (i + 1) * width);
            portions.add(new Portion(i * width, (i + 1) * width, share, 0.0005));
        }
        return CollectedBand.ofAmounts(portions).orElseThrow();
    }

    @Test
    void a_band_in_the_first_or_last_fraction_is_cut() {
        CollectedBand first = CollectedBand.ofAmounts(List.of(new Portion(0, 10, 1, 0), new Portion(10, 20, 0, 0)))
                .orElseThrow();
        assertThat(first.inTheFirst()).isTrue();
        assertThat(first.inTheLast()).isFalse();
        CollectedBand last = CollectedBand.ofAmounts(List.of(new Portion(0, 10, 0, 0), new Portion(10, 20, 1, 0)))
                .orElseThrow();
        assertThat(last.inTheLast()).isTrue();
        assertThat(last.sigmaMillilitres()).isEmpty();
    }

    @Test
    void what_is_seen_only_begins_and_ends_somewhere_within_its_fractions() {
        CollectedBand band = CollectedBand.seen(new Portion(20, 26, 0, 0), new Portion(38, 44, 0, 0), false, false);
        assertThat(band.middleMillilitres()).isEqualTo(32);
        assertThat(band.sigmaMillilitres().orElseThrow()).isEqualTo(4.5);
        assertThat(band.middleUncertainty()).isCloseTo(6 / Math.sqrt(24), within(1e-9));
        CollectedBand one = CollectedBand.seen(new Portion(20, 26, 0, 0), new Portion(20, 26, 0, 0), false, false);
        assertThat(one.sigmaMillilitres()).isEmpty();
        assertThat(one.middleUncertainty()).isCloseTo(6 / Math.sqrt(12), within(1e-9));
    }

    @Test
    void nothing_surely_there_is_no_band_and_a_fraction_without_volume_is_refused() {
        assertThat(CollectedBand.ofAmounts(List.of(new Portion(0, 10, 0.01, 0.02))))
                .isEmpty();
        assertThatThrownBy(() -> new Portion(10, 10, 1, 0))
                .hasMessageContaining("expected an end behind its beginning");
        assertThatThrownBy(() -> new Portion(0, 10, -1, 0)).hasMessageContaining("expected 0 or more");
    }
}
