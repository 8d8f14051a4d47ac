package org.wickwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {

    @Test
    void sentences_with_which_all_texts_end_are_told_once() {
        assertThat(Words.endingOnce(List.of(
                        "Red runs before blue. Rely on no order. Look.",
                        "Red runs before green. Rely on no order. Look.")))
                .isEqualTo("Red runs before blue. Red runs before green. Rely on no order. Look.");
    }

    @Test
    void sentences_of_one_text_only_or_not_at_the_end_are_told_as_they_stand() {
        assertThat(Words.endingOnce(List.of("Rely on no order. Look.", "Rely on no order. Wait.")))
                .isEqualTo("Rely on no order. Look. Rely on no order. Wait.");
        assertThat(Words.endingOnce(List.of("Look. Look."))).isEqualTo("Look. Look.");
        assertThat(Words.endingOnce(List.of())).isEmpty();
    }

    @Test
    void a_text_that_is_nothing_but_the_ending_of_the_other_is_not_told_twice() {
        assertThat(Words.endingOnce(List.of("Look.", "It is hot, about 2.5 degC. Look.")))
                .isEqualTo("It is hot, about 2.5 degC. Look.");
    }
}
