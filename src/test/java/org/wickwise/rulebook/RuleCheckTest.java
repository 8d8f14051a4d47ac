package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** Every kind of finding, as an instructor would run into it. */
class RuleCheckTest {

    private static final Path SHIPPED = Path.of("rules");

    @TempDir
    private Path folder;

    private List<Problem> findings() {
        try {
            return RuleCheck.of(Rulebook.readToCheck(SHIPPED, Optional.of(folder), Shipped.data()));
        } catch (ProblemsFound unreadable) {
            return unreadable.problems();
        }
    }

    private void rule(String name, String when, String then) throws IOException {
        Files.writeString(
                folder.resolve(name + ".yaml"),
                "layer: our own\nabout: Our rules.\nrules:\n  - rule: " + name + "\n    when: [" + when
                        + "]\n    then: [" + then + "]\n    because: So we do it.\n    source: house rule\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unknown-sentence | E contians water | caution on handling about E | did you mean: `E contains water`",
                "program-text | eval(true) | caution on handling | rules words",
                "program-text | '\"> System.exit(1)\"' | caution on handling | rules words",
                "foreign-letter | D stаys in E | caution on handling about E | without copying",
                "unknown-word | the column is silca | caution on handling | did you mean `silica`",
                "unknown-sentence | E contains acetone | caution on handling about E | did you mean: `E contains the solvent acetone`?",
                "unknown-sentence | E contains solvent of the family ketone | caution on handling about E | `E contains a solvent of the family ketone`?",
                "unknown-sentence | a part of E has a boiling point under 45 degC | caution on handling about E | above 45 degC` or `a part of E has a boiling point below 45 degC`?",
                "unknown-word | E contains a solvent of the family acetone | caution on handling about E | did you mean: `E contains the solvent acetone`?",
                "unknown-sentence | E contains water or E is fit for this column | caution on handling about E | write a second rule",
                "unknown-word | E contains a solvent of the family ketone and E is fit for this column | caution on handling about E | put a comma",
                "unknown-word | the setting is not research. | caution on handling | leave the full stop out",
                "unknown-word | E contains water | caution on gloves about E | take one of these",
                "foreign-letter | S was run on another stationary phase than the column’s | caution on handling | write the plain sign '",
                "foreign-letter | a part of E has a boiling point below 40 °C | caution on handling about E | `40 degC`",
                "form | the Rf of D in E is above 0,5 | caution on handling about E | write `0.5`",
                "wrong-unit | the Rf of D in E is above 50 % | caution on handling about E | write `0.5`",
                "unknown-limit | D is ahead of F in E by at least the parting gab | caution on handling about E | `parting gap`",
                "wrong-unit | a part of E has a boiling point below 40 mm | caution on handling about E | write `40 degC`",
                "wrong-unit | a part of E has a boiling point below 40 | caution on handling about E | write `40 degC`",
                "wrong-unit | the Rf of D in E is at most the least front | caution on handling about E | name a limit of that unit",
                "out-of-range | the Rf of D in E is at most 1.5 | caution on handling about E | of that range",
                "unnamed-letter | D stays in E | caution on handling about F | add a condition about `F`",
                "two-kinds | D stays in E, D contains water | caution on handling about E | use another letter",
                "denies-itself | E is not unfit for this column | E is unfit for this column | take this condition out",
                "never-fires | E contains water, E contains no water | caution on handling about E | leave one of the two out",
                "never-fires | the Rf of D in E is at most 0.1, the Rf of D in E is above 0.2 | caution on handling about E | leave one",
                "never-fires | the setting is college, the setting is research | caution on handling | leave one of the two",
                "never-fires | D is cationic, D is anionic | caution on handling | leave one of the two out",
                "says-the-same | the Rf of A in B is at most the staying limit | A stays in B | take one of the two out",
                "contradicts | the Rf of A in B is at most the staying limit | A travels in B | in place of: stays-by-rf",
            })
    void each_kind_of_finding_is_told_with_its_code_and_a_way_out(String code, String when, String then, String wayOut)
            throws IOException {
        rule("ours", when, then);
        assertThat(findings()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo(code);
            assertThat(problem.place().toString()).startsWith(folder + "/ours.yaml:");
            assertThat(problem.wayOut()).contains(wayOut);
        });
    }

    @Test
    void names_are_told_apart_and_a_shipped_rule_is_replaced_only_in_so_many_words() throws IOException {
        rule("hood", "E contains water", "caution on ventilation about E");
        assertThat(findings()).extracting(Problem::code).containsExactly("same-name");
        Files.writeString(
                folder.resolve("hood.yaml"),
                Files.readString(folder.resolve("hood.yaml")).replace("    when", "    in place of: hood\n    when"));
        assertThat(findings()).isEmpty();
    }

    @Test
    void the_word_that_is_meant_is_marked_and_not_what_stands_behind_it() throws IOException {
        rule("ours", "E contains water", "caution on gloves about E");
        assertThat(findings()).extracting(Problem::words).containsExactly("gloves");
        rule("ours", "the setting is not a school", "caution on handling");
        assertThat(findings()).extracting(Problem::words).containsExactly("a school");
    }

    @Test
    void a_name_with_blanks_or_capitals_is_offered_as_it_may_be_written() throws IOException {
        rule("Our Rule", "E contains water", "caution on handling about E");
        assertThat(findings()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("rule-name");
            assertThat(problem.wayOut()).isEqualTo("call it `our-rule`");
        });
    }

    @Test
    void of_two_own_rules_with_one_name_the_place_of_the_first_is_told() throws IOException {
        rule("ours", "E contains water", "caution on handling about E");
        Files.copy(folder.resolve("ours.yaml"), folder.resolve("theirs.yaml"));
        assertThat(findings()).singleElement().satisfies(problem -> {
            assertThat(problem.found()).contains("the first stands in " + folder + "/ours.yaml:4");
            assertThat(problem.wayOut()).isEqualTo("rename one of the two");
        });
    }

    @Test
    void a_word_in_braces_is_told_since_nobody_would_fill_it() throws IOException {
        rule("ours", "E contains water", "caution on handling about E");
        Path file = folder.resolve("ours.yaml");
        Files.writeString(file, Files.readString(file).replace("So we do it.", "Gloves with {solvent}, so {E}."));
        assertThat(findings()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("unnamed-letter");
            assertThat(problem.words()).isEqualTo("{solvent}");
        });
    }

    @Test
    void a_rule_that_is_asked_for_in_vain_once_another_is_switched_off_is_told() throws IOException {
        rule("ours", "E sweeps every dye out", "caution on handling about E");
        assertThat(findings()).isEmpty();
        Files.writeString(
                folder.resolve("switched-off.yaml"), "switched off:\n  - {rule: sweeps, because: never here}\n");
        assertThat(findings()).extracting(Problem::code).contains("never-fires");
    }

    @Test
    void a_caution_goes_only_with_a_word_that_says_so() throws IOException {
        Path off = folder.resolve("switched-off.yaml");
        Files.writeString(off, "switched off:\n  - {rule: hood, because: every bench is a hood}\n");
        assertThat(findings()).extracting(Problem::code).containsExactly("vanishing-caution");
        Files.writeString(
                off, "switched off:\n  - {rule: hood, because: every bench is a hood, its caution may vanish: yes}\n");
        assertThat(findings()).isEmpty();
        Files.writeString(off, "switched off:\n  - {rule: hoot, because: a slip}\n");
        assertThat(findings()).extracting(Problem::code).containsExactly("unknown-rule");
    }

    @Test
    void limits_stay_in_their_range_and_a_new_one_is_used() throws IOException {
        Path limits = folder.resolve("limits.yaml");
        Files.writeString(limits, "limits:\n  parting gap: {value: 0.9, source: ours}\n");
        assertThat(findings()).extracting(Problem::code).containsExactly("out-of-range");
        Files.writeString(
                limits,
                "limits:\n  ester limit: {value: 5, unit: \"%\", lowest: 1, highest: 50, means: ours, source: ours}\n");
        assertThat(findings()).extracting(Problem::code).containsExactly("unused-limit");
        rule("ours", "more than the ester limit of E is of the family ester", "caution on handling about E");
        assertThat(findings()).isEmpty();
    }

    @Test
    void a_limit_that_is_not_quite_called_so_is_offered_by_its_name() throws IOException {
        Path limits = folder.resolve("limits.yaml");
        Files.writeString(limits, "limits:\n  parting-gap: {value: 0.15, source: ours}\n");
        assertThat(findings()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("unknown-limit");
            assertThat(problem.wayOut()).isEqualTo("did you mean `parting gap`?");
        });
        Files.writeString(limits, "limits:\n  parting gap: {value: 0,15, source: ours}\n");
        assertThat(findings()).singleElement().satisfies(problem -> assertThat(problem.wayOut())
                .contains("`0.15`"));
        Files.writeString(limits, "limits:\n  parting gap: {value: 0.9, source: ours}\n");
        assertThat(findings()).singleElement().satisfies(problem -> assertThat(problem.expected())
                .isEqualTo("a value from 0.05 to 0.3"));
    }

    @ParameterizedTest
    @CsvSource({
        "smell.yml, call it `smell.yaml`",
        "smell.txt, call it `smell.yaml`",
        "smell.yaml.txt, call it `smell.yaml`",
        "Smell.YAML, call it `Smell.yaml`",
        "smell, call it `smell.yaml`",
        "inside/smell.yaml, move the file there",
        "examples/smell.yaml, move the file there",
    })
    void rules_that_nobody_would_read_are_told(String file, String wayOut) throws IOException {
        rule("ours", "E contains water", "caution on handling about E");
        Files.createDirectories(folder.resolve(file).getParent());
        Files.move(folder.resolve("ours.yaml"), folder.resolve(file));
        assertThat(findings()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("not-read");
            assertThat(problem.place().toString()).isEqualTo(folder + "/" + file);
            assertThat(problem.wayOut()).startsWith(wayOut);
        });
    }

    @ParameterizedTest
    @CsvSource({"ours.yaml~", "ours.yaml.bak", ".ours.yaml.swp", "ours.md", "old/ours.yaml~", ".git/ours.yaml"})
    void copies_that_an_editor_keeps_and_notes_are_left_alone(String copy) throws IOException {
        rule("ours", "E contains water", "caution on handling about E");
        Files.createDirectories(folder.resolve(copy).getParent());
        Files.copy(folder.resolve("ours.yaml"), folder.resolve(copy));
        Files.writeString(folder.resolve("notes.txt"), "The rules: read them aloud.\n");
        assertThat(findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"limit, limits, limits.yaml", "switched_off, switched off, switched-off.yaml"})
    void what_is_looked_for_in_a_file_of_one_name_is_told_in_another(String file, String key, String read)
            throws IOException {
        Files.writeString(folder.resolve(file + ".yaml"), key + ":\n");
        assertThat(findings()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("not-read");
            assertThat(problem.wayOut()).isEqualTo("call the file `" + read + "`");
        });
    }

    @Test
    void a_rule_that_denies_itself_is_told_with_everything_else() throws IOException {
        rule("ours", "E is not unfit for this column", "E is unfit for this column");
        rule("theirs", "the setting is college, the setting is research", "caution on handling");
        assertThat(findings()).extracting(Problem::code).contains("denies-itself", "never-fires");
        rule("theirs", "the seting is college", "caution on handling");
        assertThat(findings()).extracting(Problem::code).containsExactly("denies-itself", "unknown-sentence");
    }

    @Test
    void own_preferences_need_say_only_what_they_say_otherwise() throws IOException {
        Files.writeString(folder.resolve("preferences.yaml"), "choose by: [steps]\n");
        Wishes own = Rulebook.read(SHIPPED, Optional.of(folder), Shipped.data()).wishes();
        Wishes shipped = Shipped.rulebook().wishes();
        assertThat(own.chooseBy()).extracting(Wishes.Wish::criterion).containsExactly("steps");
        assertThat(own.cost()).isEqualTo(shipped.cost());
        assertThat(own.tailsToWaitFor()).isEqualTo(shipped.tailsToWaitFor());
        assertThat(own.burdenOfRanking()).isEqualTo(shipped.burdenOfRanking());
    }

    @Test
    void a_file_in_the_place_of_a_folder_is_told() throws IOException {
        rule("ours", "E contains water", "caution on handling about E");
        folder = folder.resolve("ours.yaml");
        assertThat(findings()).singleElement().satisfies(problem -> assertThat(problem.found())
                .isEqualTo("this is a file"));
    }

    @Test
    void a_missing_source_is_told() throws IOException {
        rule("ours", "E contains water", "caution on handling about E");
        Path file = folder.resolve("ours.yaml");
        Files.writeString(file, Files.readString(file).replace("    source: house rule\n", ""));
        assertThat(findings()).extracting(Problem::code).containsExactly("no-source");
    }

    @Test
    void nothing_is_wrong_with_the_shipped_rules() {
        assertThat(RuleCheck.of(Shipped.rulebook())).isEmpty();
    }

    @Test
    void a_folder_that_is_not_there_is_told() {
        ProblemsFound found = catchThrowableOfType(
                ProblemsFound.class,
                () -> Rulebook.read(SHIPPED, Optional.of(folder.resolve("nowhere")), Shipped.data()));
        assertThat(found.getMessage()).contains("there is no such folder");
    }

    @Test
    void every_kind_of_finding_has_its_section_in_the_documentation() throws IOException {
        List<String> sections = Files.readAllLines(Path.of("docs/rule-findings.md")).stream()
                .filter(line -> line.startsWith("## "))
                .map(line -> line.substring(3))
                .toList();
        assertThat(sections)
                .containsExactlyElementsOf(Arrays.stream(RuleTrouble.values())
                        .map(RuleTrouble::code)
                        .toList());
    }
}
