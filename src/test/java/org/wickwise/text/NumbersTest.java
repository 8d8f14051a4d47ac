package org.wickwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as people see them, where a machine's fractions would show. */
class NumbersTest {

    @ParameterizedTest
    @CsvSource({
        "0.30000000000000004, 0.3",
        "0.301, 0.31",
        "0.31, 0.31",
        "7.41, 7.5",
        "0, 0",
        "0.0000000001, 0",
        "10000000, 10000000",
        "10000001, 11000000",
        "-0.301, -0.31"
    })
    void what_is_kept_ready_is_rounded_up_and_no_further(double value, String shown) {
        assertThat(Numbers.ready(value)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "0.145, 2, 0.15",
        "2.5, 0, 3",
        "1.005, 2, 1.01",
        "-0.145, 2, -0.15",
        "0, 2, 0.00",
        "10000000, 0, 10000000"
    })
    void a_tie_is_rounded_away_from_zero(double value, int decimals, String shown) {
        assertThat(Numbers.fixed(value, decimals)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"1.10, 3, 1.1", "-0.0004, 3, 0", "100, 0, 100", "0.0005, 3, 0.001"})
    void trailing_zeros_and_the_sign_of_nothing_are_left_out(double value, int decimals, String shown) {
        assertThat(Numbers.plain(value, decimals)).isEqualTo(shown);
    }
}
