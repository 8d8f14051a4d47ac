package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.report.HtmlPage;
import picocli.CommandLine;

/** The commands about rules, as an instructor types them. */
class RulesCommandsTest {

    private static final String OWN = "docs/examples/harbour-school-rules";

    @TempDir
    private Path folder;

    @Test
    void vanished_cautions_have_to_be_accepted_with_a_word() {
        CommandLineRun shown = CommandLineRun.of("rules", "impact", OWN);
        assertThat(shown.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(shown.out()).startsWith("A caution vanishes: ").contains("--cautions-may-vanish");
        CommandLineRun accepted = CommandLineRun.of("rules", "impact", OWN, "--cautions-may-vanish");
        assertThat(accepted.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(accepted.out()).startsWith("A caution vanishes: ");
    }

    @Test
    void rules_that_are_the_same_as_before_change_nothing() {
        CommandLineRun run = CommandLineRun.of("rules", "impact", OWN, "--against", OWN);
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out()).contains(" 0 lose a caution, 0 have no plan any more, 0 have another plan");
    }

    @Test
    void a_finding_shows_the_line_with_carets_under_the_words() throws IOException {
        Files.writeString(
                folder.resolve("ours.yaml"),
                "layer: ours\nabout: Ours.\nrules:\n  - rule: ours\n    when: [E contians water]\n"
                        + "    then: [caution on handling about E]\n    because: So.\n    source: ours\n");
        CommandLineRun run = CommandLineRun.of("rules", "check", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.out())
                .contains(
                        "ours.yaml:5: [unknown-sentence]",
                        "      when: [E contians water]\n             ^^^^^^^^^^^^^^^^\n",
                        "did you mean: `E contains water`?",
                        "1 finding in ");
    }

    @Test
    void the_check_says_what_it_looked_at() {
        assertThat(CommandLineRun.of("rules", "check", OWN).out())
                .contains("Nothing is wrong with " + OWN + ": 2 rules, 1 limit and 1 shipped rule switched off.");
        assertThat(CommandLineRun.of("rules", "check", folder.toString()).out()).startsWith("Nothing stands in ");
    }

    @Test
    void an_unknown_preference_is_told_in_ones_own_file_by_check_and_plan() throws IOException {
        Path own = Files.writeString(folder.resolve("preferences.yaml"), "choose by:\n  - steps\n  - stepz\n");
        CommandLineRun check = CommandLineRun.of("rules", "check", folder.toString());
        assertThat(check.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(check.out()).startsWith(own + ":3: ").contains("did you mean `steps`?");
        CommandLineRun plan = CommandLineRun.of("plan", "docs/examples/ferry-ink.yaml", "--rules", folder.toString());
        assertThat(plan.err()).contains(own + ":3: `stepz` is no criterion");
    }

    @Test
    void an_own_rule_that_meets_nothing_is_named_in_the_plan_and_says_why_by_its_name() {
        String rule = "no-strong-smell-without-a-hood";
        String demo = "docs/examples/ferry-ink.yaml";
        assertThat(CommandLineRun.of("plan", demo, "--rules", OWN).out().replaceAll("\\s+", " "))
                .contains("In this case " + rule + " concludes nothing; ask why, by its name.");
        String silent = CommandLineRun.of("why", demo, rule, "--rules", OWN).out();
        assertThat(silent)
                .contains("it would take that the setting is secondary school, but the setting is college.")
                .contains(demo + ":19");
        assertThat(CommandLineRun.of("why-not", demo, rule, "--rules", OWN)
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("it would take that the setting is secondary school");
        assertThat(CommandLineRun.of("why", demo, "own-rules", "--rules", OWN).out())
                .contains("smell.yaml:6", "smell.yaml:12");
        assertThat(CommandLineRun.of("why", demo, "alcohol-heats-the-bed", "--rules", OWN)
                        .out())
                .startsWith("[off-alcohol-heats-the-bed]");
    }

    @Test
    void a_shipped_rule_and_a_limit_can_be_asked_about_by_their_names() {
        String demo = "docs/examples/ferry-ink.yaml";
        assertThat(CommandLineRun.of("why", demo, "water-on-a-polar-adsorbent").out())
                .contains("concludes here: ", "water is unfit for this column");
        assertThat(CommandLineRun.of("why", demo, "the", "parting", "gap").out())
                .startsWith("[parting gap] The parting gap is 0.1: ")
                .contains("rules/limits.yaml");
    }

    @Test
    void a_rule_that_no_known_case_meets_is_told_by_impact() throws IOException {
        Files.writeString(
                folder.resolve("ours.yaml"),
                "layer: ours\nabout: Ours.\nrules:\n  - rule: ours\n    when: [E contains the solvent pyridine,"
                        + " the column is sugar]\n    then: [E is unfit for this column]\n    because: So.\n"
                        + "    source: ours\n");
        assertThat(CommandLineRun.of("rules", "impact", folder.toString()).out())
                .contains("In no known case ours concludes anything.");
    }

    @Test
    void the_words_are_printed_as_they_are_written_and_whole() {
        String all = CommandLineRun.of("rules", "words").out();
        assertThat(all)
                .contains("when        S went wrong: <mishap>\n", "when, then  S is void\n")
                .contains("toluene, triethylamine, water, xylene")
                .contains("<Rf>: a plain number (Rf), or a limit, such as the creeping limit, the parting gap")
                .doesNotContain("\\<", "27 more");
        String some = CommandLineRun.of("rules", "words", "acetone").out();
        assertThat(some).contains("E contains the solvent <solvent>").doesNotContain("S is void", "<setting>");
        assertThat(CommandLineRun.of("rules", "words", "zzz").out()).startsWith("No sentence has to do with `zzz`");
    }

    @Test
    void a_tab_moves_the_carets_with_the_line() throws IOException {
        Files.writeString(folder.resolve("ours.yaml"), "layer: ours\nabout: Ours.\nrules:\n\t- rule: ours\n");
        assertThat(CommandLineRun.of("rules", "check", folder.toString()).out())
                .contains("      - rule: ours\n      ^^^^^^^^^^^^\n", "indent with blanks");
    }

    @Test
    void an_example_that_does_not_hold_is_explained() throws IOException {
        Files.createDirectories(folder.resolve("examples"));
        Files.copy(Path.of(OWN, "smell.yaml"), folder.resolve("smell.yaml"));
        String example = Files.readString(Path.of(OWN, "examples/smell.yaml"));
        Files.writeString(
                folder.resolve("examples/smell.yaml"), example.replace("silent: {setting: college}", "silent: {}"));
        CommandLineRun run = CommandLineRun.of("rules", "try", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.out())
                .contains("fires where its example", "smells through the whole corridor")
                .contains("1 of 4 examples does not hold.");
    }

    @Test
    void the_book_holds_every_rule_with_its_reason_and_says_which_are_ones_own() {
        String book = CommandLineRun.of("rules", "book", OWN).out();
        assertThat(book)
                .contains("### no-strong-smell-without-a-hood", "*A rule of your own.*")
                .contains("### stays-by-rf", "- the Rf of D in E is at most the staying limit")
                .contains("## Limits", "## Switched off", "- alcohol-heats-the-bed: our columns are packed wet");
    }

    @Test
    void no_line_at_the_foot_of_a_help_is_broken_by_a_terminal_of_eighty_letters() {
        assertThat(footersBelow(WickwiseCommand.commandLine()))
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> assertThat(line).hasSizeLessThan(80));
    }

    private static List<String> footersBelow(CommandLine command) {
        return Stream.concat(
                        Stream.of(command.getCommandSpec().usageMessage().footer()),
                        command.getSubcommands().values().stream().flatMap(inner -> footersBelow(inner).stream()))
                .toList();
    }

    @Test
    void nothing_a_person_wrote_becomes_markup() {
        assertThat(HtmlPage.of("a <b>", "# A\n\n<script>alert(1)</script>\n"))
                .contains("<title>a &lt;b></title>", "&lt;script&gt;")
                .doesNotContain("<script>");
    }
}
