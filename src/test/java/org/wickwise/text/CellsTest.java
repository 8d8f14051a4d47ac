package org.wickwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a spreadsheet program may not reckon with. */
class CellsTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "\tname", "\rname", "="})
    void a_cell_like_a_formula_is_guarded_and_read_back(String cell) {
        assertThat(Cells.guarded(cell)).isEqualTo("'" + cell);
        assertThat(Cells.unguarded(Cells.guarded(cell))).isEqualTo(cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "red", "1=1", "'", "'red", "heptane + ethanol 9:1"})
    void any_other_cell_stays_as_it_is(String cell) {
        assertThat(Cells.guarded(cell)).isEqualTo(cell);
        assertThat(Cells.unguarded(cell)).isEqualTo(cell);
    }
}
