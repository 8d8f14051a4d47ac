package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wickwise.LimitsTable.Row;
import org.wickwise.rulebook.Limit;

/** Whether the table of limits leaves nothing out: no limit, no place of the program that reads one, no test. */
class LimitsTableTest {

    private static final Path PROGRAM = Path.of("src/main/java/org/wickwise");

    @Test
    void every_limit_is_tried_or_it_is_told_why_nothing_is_compared_with_it() {
        Set<String> named = LimitsTable.rows().stream()
                .map(Row::number)
                .filter(number -> number.startsWith("the "))
                .map(number -> number.substring("the ".length()))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(named).isEqualTo(new TreeSet<>(Shipped.rulebook().limits().keySet()));
    }

    @Test
    void every_class_that_names_a_limit_stands_in_the_table() {
        Set<String> told = new TreeSet<>();
        LimitsTable.ofTheProgram().stream()
                .filter(row -> !row.where().equals("nowhere"))
                .forEach(row -> Arrays.stream(row.where().split(", "))
                        .forEach(place -> told.add(row.number() + " in " + place)));
        Set<String> found = new TreeSet<>();
        for (Path file : classes()) {
            String text = read(file);
            String place =
                    PROGRAM.relativize(file).toString().replace('\\', '/').replace(".java", "");
            for (Limit limit : Shipped.rulebook().limits().values()) {
                if (text.contains('"' + limit.name() + '"')) {
                    found.add("the " + limit.name() + " in " + place);
                }
            }
        }
        assertThat(told).isEqualTo(found);
    }

    @Test
    void a_limit_that_nothing_reads_is_told_to_be_read_nowhere() {
        assertThat(LimitsTable.ofTheProgram().stream()
                        .filter(row -> row.where().equals("nowhere"))
                        .map(Row::number))
                .containsExactly("the stripping of the first eluent");
    }

    @Test
    void every_comparison_of_the_program_has_a_test() {
        Set<String> tests = new ClassFileImporter()
                .importPackages("org.wickwise").stream()
                        .flatMap(found -> found.getMethods().stream())
                        .filter(method -> method.isAnnotatedWith(TriesLimit.class))
                        .map(method -> method.getAnnotationOfType(TriesLimit.class))
                        .map(tries -> "the " + tries.limit() + " in " + tries.in())
                        .collect(Collectors.toCollection(TreeSet::new));
        assertThat(tests)
                .isEqualTo(LimitsTable.ofTheProgram().stream()
                        .filter(Row::isTried)
                        .map(row -> row.number() + " in " + row.where())
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Which side the limit itself falls on is decided by these words of its meaning. */
    @Test
    void the_words_that_decide_a_comparison_of_the_program_are_those_of_the_limit() {
        assertThat(LimitsTable.ofTheProgram())
                .filteredOn(Row::isTried)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(Shipped.rulebook()
                                .limits()
                                .get(row.number().substring("the ".length()))
                                .meaning())
                        .contains(row.words()));
    }

    private static List<Path> classes() {
        try (Stream<Path> files = Files.walk(PROGRAM)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
