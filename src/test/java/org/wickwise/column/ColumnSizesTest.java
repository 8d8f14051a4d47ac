package org.wickwise.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;

/** The shipped table against the print: W. C. Still, M. Kahn, A. Mitra, J. Org. Chem. 1978, 43, 2923, Table 1. */
class ColumnSizesTest {

    private static final ColumnSizes TABLE = Shipped.bench().judge().rulebook().columnSizes();

    @ParameterizedTest
    @CsvSource({
        "10, 100, 100, 40, 5",
        "20, 200, 400, 160, 10",
        "30, 400, 900, 360, 20",
        "40, 600, 1600, 600, 30",
        "50, 1000, 2500, 1000, 50"
    })
    void every_row_of_the_printed_table_comes_out(
            double bore, double eluent, double easyLoad, double narrowLoad, double fraction) {
        assertThat(TABLE.capacityMilligrams(bore, 150, 0.2)).hasValue(easyLoad);
        assertThat(TABLE.capacityMilligrams(bore, 150, 0.1)).hasValue(narrowLoad);
        assertThat(TABLE.fractionMillilitres(bore)).hasValue(fraction);
        assertThat(TABLE.eluentMillilitres(bore)).hasValue(eluent);
        assertThat(TABLE.smallestFor(easyLoad, 0.2).orElseThrow().boreMillimetres())
                .isEqualTo(bore);
        assertThat(TABLE.smallestFor(narrowLoad, 0.1).orElseThrow().eluentMillilitres())
                .isEqualTo(eluent);
        assertThat(TABLE.boreMillimetresFor(easyLoad, 0.3).orElseThrow()).isCloseTo(bore, within(1e-9));
    }

    @Test
    void below_a_gap_of_a_tenth_and_outside_the_table_there_is_no_answer() {
        assertThat(TABLE.capacityMilligrams(20, 150, 0.09)).isEmpty();
        assertThat(TABLE.boreMillimetresFor(10, 0.09)).isEmpty();
        assertThat(TABLE.capacityMilligrams(8, 150, 0.3)).isEmpty();
        assertThat(TABLE.capacityMilligrams(60, 150, 0.3)).isEmpty();
        assertThat(TABLE.boreMillimetresFor(2501, 0.3)).isEmpty();
    }

    @Test
    void a_gap_of_a_tenth_is_a_tenth_however_it_was_subtracted() {
        assertThat(0.35 - 0.25).isLessThan(0.1);
        assertThat(0.35 - 0.15).isLessThan(0.2);
        assertThat(TABLE.capacityMilligrams(20, 150, 0.35 - 0.25)).hasValue(160);
        assertThat(TABLE.capacityMilligrams(20, 150, 0.35 - 0.15)).hasValue(400);
    }

    @Test
    void between_two_rows_eluent_and_fraction_follow_the_square_of_the_bore() {
        double halfway = Math.sqrt((10 * 10 + 20 * 20) / 2.0);
        assertThat(TABLE.eluentMillilitres(halfway).orElseThrow()).isCloseTo(150, within(1e-9));
        assertThat(TABLE.fractionMillilitres(halfway).orElseThrow()).isCloseTo(7.5, within(1e-9));
    }

    @Test
    void the_table_says_what_it_was_made_on_and_how_fast_it_is_run() {
        assertThat(TABLE.phaseName()).isEqualTo("silica");
        assertThat(TABLE.grains()).isEqualTo(new Setup.Particles(40, 63));
        assertThat(TABLE.wantedRf()).isEqualTo(0.35);
        assertThat(TABLE.flowMillilitresPerMinute(20)).isCloseTo(15.9593, within(1e-4));
    }

    @Test
    void half_a_bed_takes_half_the_load() {
        assertThat(TABLE.capacityMilligrams(20, 75, 0.2)).hasValue(200);
    }

    @Property
    void the_bore_found_for_a_load_takes_that_load(@ForAll @DoubleRange(min = 100, max = 2500) double load) {
        double bore = TABLE.boreMillimetresFor(load, 0.25).orElseThrow();
        assertThat(TABLE.capacityMilligrams(bore, 150, 0.25).orElseThrow()).isCloseTo(load, within(1e-6));
    }
}
