package org.wickwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Numbers of a file, within their bounds. */
class FieldsTest {

    private static final Bounds BORE = Bounds.within(2, 200, "mm");

    private final Problems problems = new Problems();

    @Test
    void a_number_within_its_bounds_is_read() {
        Fields fields = read("{bore: 12, bed: 2, tube: 200}");
        assertThat(fields.numberWithin("bore", BORE, "measure")).hasValue(12);
        assertThat(fields.numberWithin("bed", BORE, "measure")).hasValue(2);
        assertThat(fields.numberWithin("tube", BORE, "measure")).hasValue(200);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void a_number_beyond_its_bounds_is_told_with_the_bounds_and_the_way_out() {
        Fields fields = read("bore: 200.5");
        assertThat(fields.numberWithin("bore", "the tube", BORE, "measure")).isEmpty();
        assertThat(problems.found().problems())
                .extracting(Problem::toString)
                .singleElement()
                .asString()
                .contains("tried.yaml:1", "the tube is 200.5 mm", "2 to 200 mm", "measure");
    }

    @Test
    void above_zero_leaves_zero_out() {
        Fields fields = read("{bore: 0, bed: 0.001, tube: 200.001}");
        assertThat(fields.numberWithin("bore", Bounds.aboveZero(), "")).isEmpty();
        assertThat(fields.numberWithin("bed", Bounds.aboveZeroTo(200, "mm"), ""))
                .hasValue(0.001);
        assertThat(fields.numberWithin("tube", Bounds.aboveZeroTo(200, "mm"), ""))
                .isEmpty();
        assertThat(problems.found().problems())
                .extracting(Problem::found)
                .containsExactly("`bore` is 0", "`tube` is 200.001 mm");
    }

    @Test
    void a_number_that_may_be_missing_is_not_missed() {
        assertThat(read("{}").numberWithin("bore", BORE, "")).isEmpty();
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void a_required_number_is_missed_once() {
        assertThat(read("{}").requiredNumberWithin("bore", BORE, "")).isEmpty();
        assertThat(problems.found().problems()).extracting(Problem::found).containsExactly("a tube has no `bore`");
    }

    @Test
    void a_required_number_in_words_is_one_problem() {
        assertThat(read("bore: wide").requiredNumber("bore")).isEmpty();
        assertThat(problems.found().problems()).extracting(Problem::found).containsExactly("`wide` is not a number");
    }

    @Test
    void nothing_is_missed_in_a_group_that_is_not_there() {
        Fields none = Fields.none(Place.wholeFile("tried.yaml"), "a tube");
        assertThat(none.requiredNumber("bore")).isEmpty();
        assertThat(problems.isEmpty()).isTrue();
    }

    private Fields read(String content) {
        return Fields.of(YamlFile.parse("tried.yaml", content), "a tube", Set.of("bore", "bed", "tube"), problems);
    }
}
