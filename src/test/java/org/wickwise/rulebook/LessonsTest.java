package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.rulebook.Lessons.Idea;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.ProblemsFound;

/** The ideas that lessons end with. */
class LessonsTest {

    private static final Lessons LESSONS = Shipped.lessons();

    @Test
    void every_rule_of_the_book_belongs_to_an_idea_on_every_kind_of_bed() {
        for (Rule rule : Shipped.rulebook().rules()) {
            for (StationaryPhase phase : Shipped.data().stationaryPhases()) {
                assertThat(LESSONS.about("", Map.of(rule.id(), 0), phase.kind()))
                        .as("%s on %s", rule.id(), phase)
                        .isNotEmpty();
            }
        }
    }

    @Test
    void few_rules_fall_back_to_what_is_said_when_nothing_fits() {
        List<String> fallenBack = Shipped.rulebook().rules().stream()
                .map(Rule::id)
                .filter(rule -> LESSONS.ideas().stream().noneMatch(idea -> idea.explains(rule)))
                .toList();
        assertThat(fallenBack).isEmpty();
    }

    @Test
    void an_answer_without_any_rule_gets_the_last_word_of_the_file() {
        assertThat(LESSONS.about("no-such-line", Map.of(), "polar adsorbent")).containsExactly(LESSONS.otherwise());
    }

    @Test
    void each_kind_of_bed_has_an_idea_of_its_own_for_what_holds_a_dye() {
        for (StationaryPhase phase : Shipped.data().stationaryPhases()) {
            Idea first =
                    LESSONS.about("", Map.of("stays-by-rf", 1), phase.kind()).get(0);
            assertThat(first.kindsOfBed()).as(phase.name()).containsExactly(phase.kind());
        }
    }

    @Test
    void the_nearer_rule_decides_which_idea_comes_first() {
        assertThat(LESSONS.about("", Map.of("stays-by-rf", 3, "origin-under-solvent", 0), "polar adsorbent"))
                .first()
                .extracting(Idea::name)
                .isEqualTo("Uncertainty");
        assertThat(LESSONS.about("", Map.of("stays-by-rf", 0, "origin-under-solvent", 3), "polar adsorbent"))
                .first()
                .extracting(Idea::name)
                .isEqualTo("Adsorption on a polar surface");
    }

    @Test
    void every_idea_takes_two_to_four_sentences_and_names_its_source() {
        for (Idea idea : LESSONS.ideas()) {
            assertThat(idea.text().split("[.:;] ?(?=\\p{Lu}|$)"))
                    .as(idea.name())
                    .hasSizeBetween(2, 4);
            assertThat(idea.text().split("\\s+")).as(idea.name()).hasSizeLessThan(65);
            assertThat(idea.source()).isNotBlank();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rules: [slow-eluent] | rules: [slow-eluant] | there is no rule `slow-eluant` | did you mean `slow-eluent`?",
                "layers: [shelf] | layers: [shelve] | there is no layer of rules `shelve` | did you mean `shelf`?",
                "phases: [carbon bed] | phases: [carbon beds] | there is no kind of stationary phase `carbon beds`"
                        + " | did you mean `carbon bed`?",
                "idea: Waste | idea: Dust | the idea `Dust` stands twice | put the two together",
                "otherwise: Seeing | otherwise: Seing | there is no idea `Seing goes before reckoning`"
                        + " | did you mean `Seeing goes before reckoning`?",
                "rules: [pigments-fade] | '' | this idea belongs to nothing | name the rules it explains"
            })
    void a_slip_in_the_lessons_is_told(String stands, String slip, String found, String wayOut, @TempDir Path folder)
            throws IOException {
        String content = Files.readString(Path.of("rules/lessons.yaml"));
        assertThat(content).contains(stands);
        Files.writeString(folder.resolve("lessons.yaml"), content.replace(stands, slip));
        ProblemsFound problems = catchThrowableOfType(
                ProblemsFound.class, () -> Lessons.read(folder, Shipped.rulebook(), Shipped.data()));
        assertThat(problems.problems()).anySatisfy(problem -> {
            assertThat(problem.place().toString()).startsWith("rules/lessons.yaml:");
            assertThat(problem.found()).isEqualTo(found);
            assertThat(problem.wayOut()).startsWith(wayOut);
        });
    }
}
