package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.notebook.Notebook;

/** A class with many groups, from tables as people make them. Readings are invented. */
class ClassTest {

    private static final String SHIPPED = "docs/examples/harbour-class.yaml";
    private static final String HEADER = "group,solvent,front mm,straw,rust,harbour blue\n";
    private static final String SOUND = "1,heptane,74,1,0,0\n1,heptane + ethyl acetate 9:1,72,24,1,0\n"
            + "1,ethyl acetate,70,66,27,1\n1,ethanol,71,69,65,45\n";

    @TempDir
    private Path folder;

    @Test
    void the_shipped_class_is_planned_and_its_messy_rows_are_told() {
        CommandLineRun run = CommandLineRun.of("class", SHIPPED);
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out())
                .contains("Of 12 groups 11 can go on and 1 must run strips again")
                .contains("[repeat-7] Group 7: No plan is sound")
                .contains("[far-10-ethyl-acetate-rust]")
                .contains("harbour-class-2026.csv:25, column `front (cm)`: `73` is")
                .contains("Did you mean `ethyl acetate`");
    }

    @Test
    void a_group_has_the_plan_that_its_case_file_would_have() throws IOException {
        String demo = Files.readString(Shipped.DEMO);
        Path alone = folder.resolve("alone.yaml");
        Files.writeString(
                alone,
                demo.substring(0, demo.indexOf("strips:"))
                        + """
                        strips:
                          - {solvent: heptane, front mm: 74, travel mm: {straw: 1, rust: 0, harbour blue: 0}}
                          - {solvent: heptane + ethyl acetate 9:1, front mm: 72, travel mm: {straw: 24, rust: 1, harbour blue: 0}}
                          - {solvent: ethyl acetate, front mm: 70, travel mm: {straw: 66, rust: 27, harbour blue: 1}}
                          - {solvent: ethanol, front mm: 71, travel mm: {straw: 69, rust: 65, harbour blue: 45}}
                        """);
        String ofTheFile = CommandLineRun.of("plan", alone.toString()).out();
        String ofTheTable = CommandLineRun.of("class", lesson(HEADER + SOUND).toString(), "1")
                .out();
        assertThat(withoutTitle(ofTheTable))
                .isEqualTo(withoutTitle(ofTheFile).replace("why CASE LABEL", "class LESSONFILE GROUP LABEL"));
    }

    @Test
    void the_plan_of_a_group_says_how_to_ask_about_a_line_of_it() {
        String plan = CommandLineRun.of("class", SHIPPED, "1").out();
        assertThat(plan).contains("class LESSONFILE GROUP LABEL").doesNotContain("why CASE LABEL");
    }

    private static String withoutTitle(String plan) {
        return plan.lines().skip(1).collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a decimal comma and semicolons | group;solvent;front cm;straw;rust;harbour blue~1;ethyl acetate;7,0;6,6;2,7;0,1",
                "a title above and empty rows | Our class~~group,solvent,front mm,straw mm,rust mm,harbour blue mm~~1,ethyl acetate,70,66,27,1",
                "tabs | group\tsolvent\tfront mm\tstraw\trust\tharbour blue~1\tethyl acetate\t70\t66\t27\t1",
                "quoted cells with breaks | group,solvent,front mm,straw,rust,harbour blue,note~1,\"ethyl acetate\",70,66,27,1,\"a~b, c\"",
                "columns in another order | straw,group,front mm,harbour blue,solvent,rust~66,1,70,1,ethyl acetate,27"
            })
    void one_strip_is_read_alike_however_the_table_is_made(String how, String table) throws IOException {
        Path lesson = lesson(table.replace("~", "\n"));
        CommandLineRun run = CommandLineRun.of("class", lesson.toString(), "pooled-ethyl-acetate-rust");
        assertThat(run.out() + run.err()).as(how).doesNotContain("Left out");
        assertThat(run.out()).as(how).contains("Rust in ethyl acetate: Rf 0.39 ± 0.0");
    }

    @Test
    void a_table_from_an_old_spreadsheet_program_is_read_with_its_own_letters() throws IOException {
        Path lesson = lesson(
                "",
                Charset.forName("windows-1252"),
                "group;solvent;front mm;straw;rust;harbour blue;note\n" + "1;ethyl acetate;70;66;27;1;gr\u00fcn\n");
        assertThat(CommandLineRun.of("class", lesson.toString(), "pooled-ethyl-acetate-rust")
                        .out())
                .contains("Rust in ethyl acetate: Rf 0.39 ± 0.0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2,ethyl acetate,seventy,66,27,1 | column `front mm`",
                "2,no such solvent,70,66,27,1 | is not in the table",
                "2,ethyl acetate,70,66,27 | column `harbour blue`: the cell is empty",
                "2,ethyl acetate,70,96,27,1 | column `straw`",
                "2,ethyl acetate,7,6,2,1 | 7 mm"
            })
    void a_doubtful_row_is_told_with_its_place_and_stops_nobody(String row, String told) throws IOException {
        CommandLineRun run =
                CommandLineRun.of("class", lesson(HEADER + SOUND + row + "\n").toString());
        assertThat(run.out().replaceAll("\\s+", " ")).contains("readings.csv:6").contains(told);
        assertThat(run.out()).contains("Group 1: pack and load with heptane");
    }

    @Test
    void a_group_whose_file_is_broken_stops_no_other() throws IOException {
        Path cases = Files.createDirectory(folder.resolve("cases"));
        Files.copy(Shipped.DEMO, cases.resolve("1.yaml"));
        Files.writeString(cases.resolve("2.yaml"), "title: [broken\n");
        Path lesson = folder.resolve("lesson.yaml");
        Files.writeString(lesson, lessonText("cases: cases"));
        CommandLineRun run = CommandLineRun.of("class", lesson.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out()).contains("Group 1: pack and load with heptane").contains("2.yaml:");
    }

    @Test
    void the_template_of_a_class_can_be_filled_in_and_read() throws IOException {
        String template = CommandLineRun.of("sheet", SHIPPED).out();
        List<String> lines = template.lines().toList();
        assertThat(lines).hasSize(1 + 12 * 5);
        String filled = lines.get(0) + "\n"
                + lines.stream()
                        .skip(1)
                        .map(line -> line.replaceFirst(",1,,,,,", ",1,70,1,27,50,"))
                        .collect(Collectors.joining("\n"));
        CommandLineRun run = CommandLineRun.of("class", lesson(filled).toString());
        assertThat(run.out()).contains("Of 12 groups").doesNotContain("Left out");
    }

    /** Columns in another order than that of the list on the board invite readings in the wrong column. */
    @ParameterizedTest
    @ValueSource(strings = {"dyes: [straw, harbour blue, rust]", "dyes:\n    - straw\n    - harbour blue\n    - rust"})
    void a_table_heads_its_columns_of_dyes_in_the_order_of_the_file(String dyes) throws IOException {
        Path lesson = lesson("group,solvent,front mm,rust mm,straw mm,harbour blue mm\n1,ethyl acetate,70,27,66,1\n");
        Files.writeString(lesson, Files.readString(lesson).replaceFirst("dyes:(\\n    - .*)+", dyes));
        assertThat(CommandLineRun.of("sheet", lesson.toString()).out())
                .startsWith("group,solvent,replicate,front mm,straw mm,harbour blue mm,rust mm,went wrong,");
        assertThat(CommandLineRun.of("sheet", lesson.toString(), "--readings").out())
                .contains(",front mm,ruler mm,straw mm,harbour blue mm,rust mm,")
                .contains("1,ethyl acetate,silica,1,70.0,,66.0,1.0,27.0,");
    }

    /** The heading of a column is a cell too: a dye may be called like a formula. */
    @Test
    void a_dye_called_like_a_formula_heads_a_column_that_no_program_reckons_with() throws IOException {
        Path lesson = lesson("");
        Files.writeString(lesson, Files.readString(lesson).replace("name: rust", "name: \"=rust\""));
        String heading = CommandLineRun.of("sheet", lesson.toString())
                .out()
                .lines()
                .findFirst()
                .orElseThrow();
        assertThat(heading).startsWith("group,solvent,replicate,front mm,straw mm,'=rust mm,harbour blue mm,");
        Files.writeString(folder.resolve("readings.csv"), heading + "\n1,ethyl acetate,1,70,66,27,1,,,\n");
        assertThat(CommandLineRun.of("class", lesson.toString(), "pooled-ethyl-acetate-rust")
                        .out())
                .contains("=rust in ethyl acetate: Rf 0.39");
    }

    @Test
    void the_page_and_the_tables_hold_every_group() throws IOException {
        Path page = folder.resolve("class.html");
        Path table = folder.resolve("class.csv");
        CommandLineRun.of("class", SHIPPED, "--html", page.toString(), "--csv", table.toString());
        assertThat(Files.readString(page)).contains("Group 1<", "Group 12<", "break-before: page");
        assertThat(Files.readAllLines(table)).hasSize(13);
        assertThat(Files.readAllLines(folder.resolve("class-pooled.csv"))).hasSize(16);
        assertThat(Files.readString(folder.resolve("class-readings.csv"))).contains("travelled 27 mm");
    }

    @Test
    void a_table_that_cannot_be_written_is_named_and_leaves_no_half_of_a_page() {
        Path table = folder.resolve("no-such-folder").resolve("class.csv");
        CommandLineRun run = CommandLineRun.of(
                "class", SHIPPED, "--html", folder.resolve("class.html").toString(), "--csv", table.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains(table + ": the file cannot be written").doesNotContain("class.html");
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @CsvSource({"sheet, csv", "cases, d"})
    void a_name_that_no_file_has_is_told_where_it_stands(String key, String ending) throws IOException {
        Path lesson = Files.writeString(folder.resolve("lesson.yaml"), lessonText(key + ": \"a\\0b." + ending + "\""));
        CommandLineRun run = CommandLineRun.of("class", lesson.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("lesson.yaml:", "`a\uFFFDb." + ending + "` is no name of a file");
    }

    @Test
    void a_folder_of_cases_that_is_not_there_is_told_with_its_way_out() throws IOException {
        Path lesson = Files.writeString(folder.resolve("lesson.yaml"), lessonText("cases: nowhere"));
        CommandLineRun run = CommandLineRun.of("class", lesson.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("the folder cannot be read", "check `cases` of the lesson file");
    }

    @Test
    void a_whole_class_is_put_into_a_notebook_group_by_group() {
        Path notebook = folder.resolve("notebook");
        CommandLineRun run =
                CommandLineRun.of("record", SHIPPED, "--notebook", notebook.toString(), "--date", "2026-11-17");
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out()).contains("Left out of group 4", "Recorded 12 of 12 groups");
        var contents = Notebook.in(notebook).contents(Shipped.data());
        assertThat(contents.setAside()).isEmpty();
        assertThat(contents.entries()).hasSize(12);
        assertThat(contents.entries().get(0).strips().strips()).hasSize(5);
    }

    @Test
    void two_years_forecast_more_surely_than_one() throws IOException {
        Path notebook = folder.resolve("notebook");
        Files.createDirectory(notebook);
        try (Stream<Path> earlier = Files.list(Path.of("docs/examples/notebook"))) {
            for (Path file : earlier.toList()) {
                Files.copy(file, notebook.resolve(file.getFileName()));
            }
        }
        String oneYear = expected(notebook);
        CommandLineRun.of("record", SHIPPED, "--notebook", notebook.toString(), "--date", "2026-11-17");
        String twoYears = expected(notebook);
        assertThat(Double.parseDouble(twoYears)).isLessThan(Double.parseDouble(oneYear));
    }

    private static String expected(Path notebook) {
        String out = CommandLineRun.of("plan", Shipped.DEMO.toString(), "--notebook", notebook.toString())
                .out()
                .replaceAll("\\s+", " ");
        return out.replaceFirst(".*in Rf, and (0\\.\\d+) was expected.*", "$1");
    }

    private Path lesson(String table) throws IOException {
        return lesson("", StandardCharsets.UTF_8, table);
    }

    private Path lesson(String more, Charset letters, String table) throws IOException {
        Files.writeString(folder.resolve("readings.csv"), table, letters);
        return Files.writeString(folder.resolve("lesson.yaml"), lessonText("sheet: readings.csv" + more));
    }

    private static String lessonText(String readings) throws IOException {
        String demo = Files.readString(Shipped.DEMO);
        return demo.substring(0, demo.indexOf("strips:")) + "class:\n  groups: 1\n  " + readings + "\n";
    }
}
