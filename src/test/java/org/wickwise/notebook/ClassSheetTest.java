package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** Tables of a class as people make them. Readings are invented. */
class ClassSheetTest {

    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);
    private static final String HEADER = "group,solvent,front mm,straw mm,rust mm,harbour blue mm";

    @TempDir
    private Path folder;

    @Test
    void centimetres_become_millimetres() throws IOException {
        Strip strip = onlyStrip("group;solvent;front (cm);straw;rust;harbour blue", "1;ethanol;7,1;6,9;6,5;4,5");
        assertThat(strip.frontMillimetres()).hasValue(71);
        assertThat(travel(strip, "rust")).isEqualTo(65);
    }

    @Test
    void a_row_of_units_below_the_header_counts() throws IOException {
        Strip strip =
                onlyStrip("group,solvent,front,straw,rust,harbour blue", ",,cm,cm,mm,cm", "1,ethanol,7.1,6.9,65,4.5");
        assertThat(travel(strip, "rust")).isEqualTo(65);
        assertThat(travel(strip, "straw")).isEqualTo(69);
    }

    @Test
    void a_column_of_units_speaks_for_its_row() throws IOException {
        ClassSheet sheet = sheet(
                "group,solvent,unit,front,straw,rust,harbour blue",
                "1,ethanol,cm,7.1,6.9,6.5,4.5",
                "2,ethanol,mm,71,69,65,45");
        assertThat(of(sheet, "1").strips().get(0).frontMillimetres()).hasValue(71);
        assertThat(of(sheet, "2").strips().get(0).frontMillimetres()).hasValue(71);
    }

    @Test
    void without_any_unit_nothing_is_guessed() throws IOException {
        ClassSheet sheet = sheet("group,solvent,front,straw,rust,harbour blue", "1,ethanol,71,69,65,45");
        assertThat(of(sheet, "1").strips()).isEmpty();
        assertThat(of(sheet, "1").leftOut()).first().satisfies(problem -> assertThat(problem.toString())
                .contains("readings.csv:2, column `front`", "says no unit", "head the column `front mm`"));
    }

    @Test
    void a_group_named_once_is_told_for_the_rows_below() throws IOException {
        ClassSheet sheet = sheet(HEADER, "1,heptane,74,1,0,0", ",ethanol,71,69,65,45", ",acetone,73,70,61,30");
        assertThat(of(sheet, "1").strips()).hasSize(3);
        assertThat(sheet.told()).anyMatch(told -> told.contains("belong to the group above: 3 to 4"));
    }

    @Test
    void a_first_row_without_a_group_is_left_out() throws IOException {
        ClassSheet sheet = sheet(HEADER, ",heptane,74,1,0,0", "1,ethanol,71,69,65,45");
        assertThat(sheet.groups()).containsExactly("1");
        assertThat(sheet.leftOut()).singleElement().satisfies(problem -> assertThat(problem.toString())
                .contains(":2, column `group`", "says no group"));
    }

    @Test
    void not_seen_and_words_for_movements_and_mishaps_are_read() throws IOException {
        Strip strip = onlyStrip(
                HEADER + ",went wrong,streaked",
                "1,ethanol,71,n.s.,Travels,45,Jar left open; spots overloaded,harbour blue");
        assertThat(strip.notSeen()).extracting(dye -> dye.name()).containsExactly("straw");
        assertThat(strip.spotOf(DEMO.dyes().get(1)).orElseThrow().position()).isInstanceOf(Spot.Seen.class);
        assertThat(strip.mishaps()).containsExactlyInAnyOrder(Mishap.JAR_LEFT_OPEN, Mishap.OVERLOADED);
        assertThat(strip.streaked()).extracting(dye -> dye.name()).containsExactly("harbour blue");
    }

    @Test
    void a_spot_that_two_dyes_share_has_a_column_of_its_own() throws IOException {
        Strip strip = onlyStrip(HEADER + ",rust + straw mm", "1,ethanol,71,,,45,66");
        assertThat(strip.spots()).hasSize(2);
    }

    @Test
    void the_same_row_twice_counts_once_and_is_told() throws IOException {
        SheetStrips.OfGroup read =
                of(sheet(HEADER + ",replicate", "1,ethanol,71,69,65,45,1", "1,ethanol,71,69,65,45,1"), "1");
        assertThat(read.strips()).hasSize(1);
        assertThat(read.leftOut()).singleElement().satisfies(problem -> assertThat(problem.toString())
                .contains(":3: the row says the same as row 2"));
    }

    @Test
    void of_two_rows_with_one_number_and_other_readings_none_is_believed() throws IOException {
        SheetStrips.OfGroup read =
                of(sheet(HEADER + ",replicate", "1,ethanol,71,69,65,45,1", "1,ethanol,71,69,60,40,1"), "1");
        assertThat(read.strips()).isEmpty();
        assertThat(read.leftOut()).hasSize(2).allMatch(problem -> problem.wayOut()
                .contains("none of them is used"));
    }

    @Test
    void without_numbers_other_readings_are_repeats_and_that_is_told() throws IOException {
        SheetStrips.OfGroup read = of(sheet(HEADER, "1,ethanol,71,69,65,45", "1,ethanol,71,69,60,40"), "1");
        assertThat(read.strips()).extracting(Strip::replicate).containsExactly(1, 2);
        assertThat(read.told()).singleElement().asString().contains("taken as repeats");
    }

    @Test
    void a_comma_that_may_part_thousands_is_not_read() throws IOException {
        SheetStrips.OfGroup read =
                of(sheet("group;solvent;front mm;straw;rust;harbour blue", "1;ethanol;71;69;1,234;45"), "1");
        assertThat(read.leftOut()).singleElement().satisfies(problem -> assertThat(problem.wayOut())
                .isEqualTo("write 1.234 or 1234"));
    }

    @Test
    void a_decimal_comma_that_breaks_a_row_is_told_as_such() throws IOException {
        ClassSheet sheet = sheet(HEADER, "1,ethanol,71,69,6,5,45", "1,acetone,73,70,61,30");
        assertThat(sheet.leftOut()).singleElement().satisfies(problem -> assertThat(problem.wayOut())
                .contains("is there a decimal comma"));
        assertThat(of(sheet, "1").strips()).hasSize(1);
    }

    @Test
    void a_header_that_comes_again_and_short_rows_do_no_harm() throws IOException {
        ClassSheet sheet =
                sheet(HEADER + ",note", "1,ethanol,71,69,65,45", HEADER + ",note", "2,ethanol,71,69,65,45,x");
        assertThat(sheet.groups()).containsExactly("1", "2");
        assertThat(sheet.told()).contains("Row 3 repeats the header and is passed over.");
    }

    @Test
    void columns_that_nobody_knows_are_told() throws IOException {
        ClassSheet sheet = sheet(HEADER + ",weather", "1,ethanol,71,69,65,45,rain");
        assertThat(sheet.told()).anyMatch(told -> told.contains("Passed over") && told.contains("`weather`"));
    }

    @Test
    void a_dye_without_a_column_is_asked_for_by_its_nearest_name() {
        assertThatThrownBy(() -> sheet("group,solvent,front mm,straw mm,rust mm,harbor blue", "1,ethanol,71,69,65,45"))
                .isInstanceOf(ProblemsFound.class)
                .hasMessageContaining("no column for harbour blue")
                .hasMessageContaining("is `harbor blue` meant?");
    }

    @Test
    void groups_stand_in_the_order_of_their_numbers_and_small_letters_make_no_other() throws IOException {
        ClassSheet sheet = sheet(
                HEADER,
                "10,ethanol,71,69,65,45",
                "9,ethanol,71,69,65,45",
                "Red,ethanol,71,69,65,45",
                "red,acetone,73,70,61,30");
        assertThat(sheet.groups()).containsExactly("9", "10", "Red");
        assertThat(of(sheet, "Red").strips()).hasSize(2);
    }

    @Test
    void letters_are_utf_8_or_windows_1252_or_the_table_is_refused() throws IOException {
        String table = HEADER + ",note\n1,ethanol,71,69,65,45,gr\u00fcn\n";
        assertThat(read(table.getBytes(StandardCharsets.UTF_8)).told())
                .first()
                .asString()
                .contains("is UTF-8");
        assertThat(read(("\uFEFF" + table).getBytes(StandardCharsets.UTF_8)).told())
                .first()
                .asString()
                .contains("with a mark in front");
        assertThat(read(table.getBytes(Charset.forName("windows-1252"))).told())
                .first()
                .asString()
                .contains("Windows-1252");
        byte[] neither = table.getBytes(Charset.forName("windows-1252"));
        neither[neither.length - 2] = (byte) 0x81;
        assertThatThrownBy(() -> read(neither)).hasMessageContaining("neither UTF-8 nor Windows-1252");
        assertThatThrownBy(() -> read(table.getBytes(StandardCharsets.UTF_16))).hasMessageContaining("UTF-16");
        assertThatThrownBy(() -> read(new byte[] {'P', 'K', 3, 4, 0, 0})).hasMessageContaining("workbook");
        assertThatThrownBy(() -> read("nothing,here\n1,2\n".getBytes(StandardCharsets.UTF_8)))
                .hasMessageContaining("names the columns");
    }

    @Test
    void rows_beyond_the_limit_are_left_out_and_told() throws IOException {
        Path file = folder.resolve("readings.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(HEADER + "\n");
            for (int row = 0; row < ClassSheet.MOST_ROWS + 3; row++) {
                out.write((row / 100) + ",ethanol,71,69,65,45\n");
            }
        }
        ClassSheet sheet = ClassSheet.read(file, DEMO.dyes());
        assertThat(sheet.groups()).hasSize(ClassSheet.MOST_ROWS / 100);
        assertThat(sheet.leftOut())
                .extracting(Problem::expected)
                .containsExactly("at most " + ClassSheet.MOST_ROWS + " rows");
    }

    private Strip onlyStrip(String... lines) throws IOException {
        SheetStrips.OfGroup read = of(sheet(lines), "1");
        assertThat(read.leftOut()).isEmpty();
        assertThat(read.strips()).hasSize(1);
        return read.strips().get(0);
    }

    private static double travel(Strip strip, String dye) {
        return strip.spots().stream()
                .filter(spot -> spot.dyes().get(0).name().equals(dye))
                .map(spot -> ((Spot.Travelled) spot.position()).millimetres())
                .findFirst()
                .orElseThrow();
    }

    private static SheetStrips.OfGroup of(ClassSheet sheet, String group) {
        return new SheetStrips(sheet, DEMO, DEMO.column().phase(), Shipped.data()).of(group);
    }

    private ClassSheet sheet(String... lines) throws IOException {
        return read(String.join("\n", List.of(lines)).getBytes(StandardCharsets.UTF_8));
    }

    private ClassSheet read(byte[] bytes) throws IOException {
        return ClassSheet.read(Files.write(folder.resolve("readings.csv"), bytes), DEMO.dyes());
    }
}
