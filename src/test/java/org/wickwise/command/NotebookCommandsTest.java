package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.notebook.EntryDraft;
import org.wickwise.notebook.EntryReader;
import org.wickwise.notebook.EntryText;
import org.wickwise.notebook.NotWritten;
import org.wickwise.notebook.Notebook;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Place;
import org.wickwise.text.YamlFile;

/** Recording and reading a notebook, as an instructor types it. */
class NotebookCommandsTest {

    private static final String SHIPPED = "docs/examples/notebook";
    private static final String DEMO = "docs/examples/ferry-ink.yaml";

    @TempDir
    private Path folder;

    @Test
    void a_case_is_recorded_with_what_the_options_say() throws IOException {
        CommandLineRun run = record(DEMO, "--date", "2025-11-04", "--group", "3", "--where", "Harbour School");
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out()).contains("Began a notebook in ", "Recorded in ");
        assertThat(Files.readString(entries().get(0)))
                .startsWith("date: 2025-11-04\ngroup: 3\nwhere: Harbour School\ntitle: Cancelling ink")
                .contains("  - solvent: acetone\n    front mm: 73\n");
        assertThat(EntryReader.read(entries().get(0), Shipped.data()).column()).isPresent();
    }

    @Test
    void without_a_date_nothing_is_recorded() {
        CommandLineRun run = record(DEMO);
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("nothing says when the strips were run", "--date 2025-11-04");
        assertThat(notebook()).doesNotExist();
    }

    @Test
    void a_problem_is_told_with_its_line_in_the_file() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, Files.readString(Path.of(DEMO)).replace("front mm: 74", "front mm: 7.4"));
        CommandLineRun run = record(file.toString(), "--date", "2025-11-04");
        assertThat(run.err()).contains("case.yaml:22: the front is at 7.4 mm").contains("write 74");
    }

    @Test
    void names_of_people_are_left_out_unless_asked_for() throws IOException {
        Path file = folder.resolve("named.yaml");
        Files.writeString(file, "who: Somebody Invented\n# with Another\n" + Files.readString(Path.of(DEMO)));
        CommandLineRun run = record(file.toString(), "--date", "2025-11-04");
        assertThat(run.out()).contains("`who` was left out");
        assertThat(entries().get(0)).content().doesNotContain("Somebody", "Another");
        record(file.toString(), "--date", "2025-11-05", "--keep-who");
        assertThat(entries().get(1))
                .content()
                .contains("who: Somebody Invented")
                .doesNotContain("Another");
    }

    @Test
    void names_of_household_bottles_become_what_was_in_them() {
        record("docs/examples/ferry-ink-evening.yaml", "--date", "2025-11-04");
        assertThat(entries().get(0)).content().doesNotContain("shelf").doesNotContain("spirit");
        assertThat(EntryReader.read(entries().get(0), Shipped.data()).strips().strips())
                .extracting(strip -> strip.eluent().name())
                .isEqualTo(Shipped.caseIn(Path.of("docs/examples/ferry-ink-evening.yaml")).strips().stream()
                        .map(strip -> strip.eluent().name())
                        .toList());
    }

    @Test
    void a_correction_says_where_the_older_version_is() {
        record(DEMO, "--date", "2025-11-04");
        CommandLineRun run = record(DEMO, "--date", "2025-11-06", "--corrects", "2025-11-04-cancelling-ink");
        assertThat(run.out())
                .contains(
                        "Corrected ",
                        "The older version is kept in " + notebook().resolve("earlier"));
        assertThat(entries().get(0)).content().startsWith("date: 2025-11-06\n");
    }

    @Test
    void what_the_disk_does_not_take_is_kept_elsewhere_or_printed() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("in the way"), "");
        NotWritten told = catchThrowableOfType(NotWritten.class, () -> Notebook.in(inTheWay)
                .add(List.of(EntryDraft.of(
                        YamlFile.read(Path.of(SHIPPED, "2025-11-18-pier-marker-group-1.yaml")), Shipped.data()))));
        assertThat(Unwritten.kept(told, List.of(folder.resolve("none"), folder)))
                .contains("kept in " + folder.resolve("not-in-the-notebook-1.yaml"));
        assertThat(folder.resolve("not-in-the-notebook-1.yaml")).content().contains("name: pier marker");
        assertThat(Unwritten.kept(told, List.of(folder.resolve("none"))))
                .contains("Copy it from here", "name: pier marker");
    }

    @Test
    void questions_are_asked_until_each_answer_is_sound() {
        Asked asked = ask("2025-13-01\n2025-11-05\n\nferry ink\nstraw\nstraw, rust, blue\nsilica\nheptan\nheptane\n"
                + "7.4\n74\n80\n30\nwith straw\n-\nheptane\n70\n28\n27\n1\n\n");
        assertThat(asked.printed())
                .contains(
                        "`2025-13-01` is no date",
                        "the mixture has 1 dye",
                        "the solvent `heptan` is not in the table",
                        "is this in centimetres? then write 74",
                        "the spot of straw at 80 mm is beyond the front at 74 mm");
        assertThat(asked.told().isWhole()).isTrue();
        assertThat(EntryDraft.of(asked.told().entry(), Shipped.data()).text())
                .isEqualTo(
                        """
                        date: 2025-11-05
                        mixture:
                          name: ferry ink
                          dyes: [straw, rust, blue]
                        strips on: silica
                        strips:
                          - solvent: heptane
                            front mm: 74
                            travel mm: {straw + rust: 30}
                            not seen: [blue]
                          - solvent: heptane
                            replicate: 2
                            front mm: 70
                            travel mm: {straw: 28, rust: 27, blue: 1}
                        """);
    }

    @Test
    void stopping_anywhere_keeps_what_was_entered() {
        String answers = "2025-11-05\n3\nferry ink\nstraw, rust\nsilica\nheptane\n74\n30\n2\n";
        for (int lines = 0; lines <= 9; lines++) {
            String told = String.join("\n", answers.lines().limit(lines).toList()) + (lines == 0 ? "" : "\n");
            Asked atTheEnd = ask(told);
            Asked byWord = ask(told + "stop\n");
            assertThat(atTheEnd.told().isWhole()).isFalse();
            assertThat(EntryText.of(byWord.told().entry()))
                    .isEqualTo(EntryText.of(atTheEnd.told().entry()));
            for (String answer : answers.lines().limit(lines).toList()) {
                assertThat(EntryText.of(atTheEnd.told().entry())).contains(answer);
            }
        }
    }

    @Test
    void the_shipped_notebook_can_be_listed_and_searched() {
        CommandLineRun all = CommandLineRun.of("notebook", "list", "--notebook", SHIPPED);
        assertThat(all.out()).contains("14 entries").doesNotContain("cannot be read");
        assertThat(find("--dye", "Rust")).contains("12 of 14 entries");
        assertThat(find("--solvent", "EtOAc")).contains("14 of 14 entries");
        assertThat(find("--solvent", "heptane + ethyl acetate 9:1")).contains("9 of 14 entries");
        assertThat(find("--mixture", "MARKER", "--from", "2025-11-05")).contains("2 of 14 entries");
        assertThat(find("--to", "2025-11-04", "--dye", "rust", "--solvent", "acetone"))
                .contains("5 of 14 entries");
        assertThat(CommandLineRun.of("notebook", "find", "--notebook", SHIPPED, "--solvent", "acetoneee")
                        .err())
                .contains("--solvent: the solvent `acetoneee` is not in the table");
    }

    @Test
    void a_damaged_file_is_listed_with_place_and_reason() throws IOException {
        record(DEMO, "--date", "2025-11-04");
        Files.writeString(notebook().resolve("torn.yaml"), "date: 2025-11-04\nmixture: {name: ink");
        CommandLineRun run =
                CommandLineRun.of("notebook", "list", "--notebook", notebook().toString());
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out()).contains("1 entry\n", "1 file cannot be read and is set aside", "torn.yaml:2: ");
    }

    @Test
    void the_rf_of_a_line_is_shown_with_its_two_readings() {
        CommandLineRun run = CommandLineRun.of(
                "notebook", "show", "2025-11-04-cancelling-ink-group-1", "ethyl-acetate-rust", "--notebook", SHIPPED);
        assertThat(run.out())
                .contains("travel / front = 27 mm / 69 mm = 0.39", "2025-11-04-cancelling-ink-group-1.yaml:20");
    }

    @Test
    void the_export_has_one_row_a_spot_and_is_read_back() throws IOException {
        List<CSVRecord> rows = exported(Path.of(SHIPPED));
        assertThat(rows).hasSize(12 * 3 * 3 + 2 * 2 * 2);
        CSVRecord open = rows.stream()
                .filter(row ->
                        row.get("group").equals("4") && row.get("replicate").equals("2"))
                .filter(row -> row.get("dye").equals("rust"))
                .findFirst()
                .orElseThrow();
        assertThat(open.toMap())
                .containsEntry("front mm", "66")
                .containsEntry("travel mm", "33")
                .containsEntry("Rf", "0.5")
                .containsEntry("remarks", "jar left open");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=", "+", "-", "@", "\\t", "\\r"})
    void no_cell_of_the_export_begins_like_a_formula(String beginning) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(
                file,
                Files.readString(Path.of(DEMO))
                        .replace("name: cancelling ink", "name: \"" + beginning + "HYPERLINK(1),\\\"x\\\"\"")
                        .replace("harbour blue", "\"@blue\""));
        record(file.toString(), "--date", "2025-11-04", "--group", "-1");
        List<CSVRecord> rows = exported(notebook());
        assertThat(rows.get(0).get("mixture")).isEqualTo("'" + beginning.translateEscapes() + "HYPERLINK(1),\"x\"");
        assertThat(rows)
                .allSatisfy(row -> assertThat(row.stream()).noneMatch(cell -> cell.matches("(?s)[=+@\t\r-].*")));
    }

    private List<CSVRecord> exported(Path notebook) throws IOException {
        CommandLineRun run = CommandLineRun.of("notebook", "export", "--notebook", notebook.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out()).contains("\r\n");
        CSVFormat table = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(run.out(), table)) {
            return parser.getRecords();
        }
    }

    private static String find(String... wanted) {
        return CommandLineRun.of(Stream.concat(Stream.of("notebook", "find", "--notebook", SHIPPED), Stream.of(wanted))
                        .toArray(String[]::new))
                .out();
    }

    private record Asked(Interview.Told told, String printed) {}

    private static Asked ask(String answers) {
        StringWriter printed = new StringWriter();
        Interview.Told told = new Interview(
                        new BufferedReader(new StringReader(answers)), new PrintWriter(printed), Shipped.data())
                .ask(new Mapping(List.of(), Place.wholeFile("test")));
        return new Asked(told, printed.toString());
    }

    private CommandLineRun record(String file, String... options) {
        return CommandLineRun.of(
                Stream.concat(Stream.of("record", file, "--notebook", notebook().toString()), Stream.of(options))
                        .toArray(String[]::new));
    }

    private Path notebook() {
        return folder.resolve("notebook");
    }

    private List<Path> entries() {
        try (Stream<Path> files = Files.list(notebook())) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
