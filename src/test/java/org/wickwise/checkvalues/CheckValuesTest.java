package org.wickwise.checkvalues;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of {@code check-values.tsv} and {@code worked-examples.tsv}: published or independently computed values
 * against the program's own. Each row
 * names its source; the classes beside this one say which of the program's methods answers which row.
 */
class CheckValuesTest {

    private static final Path TABLE = Path.of("src/test/resources/check-values.tsv");
    private static final Path WORKED_EXAMPLES = Path.of("src/test/resources/worked-examples.tsv");
    private static final double EXACT = 1e-12;
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Map<String, UnaryOperator<JsonNode>> ANSWERS = answers();

    /**
     * @param inputs what the row gives
     * @param expected what must come out, under the same names
     */
    record Row(String id, String topic, JsonNode inputs, JsonNode expected, String tolerance, String source) {
        @Override
        public String toString() {
            return id + " " + topic;
        }
    }

    private static Map<String, UnaryOperator<JsonNode>> answers() {
        return Stream.of(
                        AirRows.rows(),
                        BedRows.rows(),
                        FrontRows.rows(),
                        IonRows.rows(),
                        StripRows.rows(),
                        StrengthRows.rows(),
                        ColumnSizeRows.rows(),
                        WorkedExampleRows.rows(),
                        BandRows.rows())
                .flatMap(rows -> rows.entrySet().stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    @Test
    void every_row_has_one_answer_and_every_answer_a_row() throws IOException {
        assertThat(Stream.concat(rows(), workedExamples()).map(Row::id))
                .containsExactlyInAnyOrderElementsOf(ANSWERS.keySet());
    }

    static Stream<Row> rows() throws IOException {
        return rowsOf(TABLE);
    }

    static Stream<Row> workedExamples() throws IOException {
        return rowsOf(WORKED_EXAMPLES);
    }

    private static Stream<Row> rowsOf(Path table) throws IOException {
        return Files.readAllLines(table).stream()
                .skip(1)
                .map(line -> line.split("\t"))
                .map(cells -> {
                    try {
                        return new Row(
                                cells[0],
                                cells[1],
                                JSON.readTree(cells[2]),
                                JSON.readTree(cells[3]),
                                cells[4],
                                cells[5]);
                    } catch (JsonProcessingException e) {
                        throw new IllegalStateException(cells[0], e);
                    }
                });
    }

    @ParameterizedTest
    @MethodSource("rows")
    void every_row_of_the_table_comes_out_within_its_tolerance(Row row) {
        comesOut(row);
    }

    @ParameterizedTest
    @MethodSource("workedExamples")
    void every_worked_example_comes_out_as_printed(Row row) {
        comesOut(row);
    }

    private static void comesOut(Row row) {
        UnaryOperator<JsonNode> answer = ANSWERS.get(row.id());
        assertThat(answer).as("%s: no method answers this row", row.id()).isNotNull();
        compare(row.id(), row.expected(), answer.apply(row.inputs()), row.tolerance());
    }

    private static void compare(String where, JsonNode expected, JsonNode found, String tolerance) {
        assertThat(found).as("%s is missing", where).isNotNull();
        if (expected.isObject()) {
            expected.properties()
                    .forEach(field -> compare(
                            where + " " + field.getKey(), field.getValue(), found.get(field.getKey()), tolerance));
        } else if (expected.isArray()) {
            assertThat(found.size()).as(where).isEqualTo(expected.size());
            for (int i = 0; i < expected.size(); i++) {
                compare(where + " " + i, expected.get(i), found.get(i), tolerance);
            }
        } else if (expected.isNumber()) {
            double value = expected.asDouble();
            assertThat(found.isNumber()).as(where).isTrue();
            assertThat(found.asDouble()).as(where).isCloseTo(value, within(allowed(value, tolerance)));
        } else {
            assertThat(found).as(where).isEqualTo(expected);
        }
    }

    /** "abs=0.001", "rel=1e-3", "exact"; what follows a blank concerns other ways of reckoning. */
    private static double allowed(double value, String tolerance) {
        String first = tolerance.split(" ")[0];
        if (first.startsWith("abs=")) {
            return Double.parseDouble(first.substring(4));
        }
        if (first.startsWith("rel=")) {
            return Math.abs(value) * Double.parseDouble(first.substring(4));
        }
        if (!first.equals("exact")) {
            return fail("unknown tolerance: " + tolerance);
        }
        return EXACT;
    }
}
