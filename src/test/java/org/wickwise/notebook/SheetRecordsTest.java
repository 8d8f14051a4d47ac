package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The seven rules of RFC 4180, section 2, on its own examples, and what is beside the rules. */
class SheetRecordsTest {

    @Test
    void rule_1_each_record_stands_on_a_line_of_its_own() throws IOException {
        assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_2_the_last_record_may_lack_its_line_break() throws IOException {
        assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx"))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_3_a_header_is_a_record_like_any_other() throws IOException {
        assertThat(cells("field_name,field_name,field_name\r\naaa,bbb,ccc\r\n"))
                .first()
                .isEqualTo(List.of("field_name", "field_name", "field_name"));
    }

    @Test
    void rule_4_commas_part_the_fields_and_none_follows_the_last() throws IOException {
        assertThat(cells("aaa,bbb,ccc")).containsExactly(List.of("aaa", "bbb", "ccc"));
        assertThat(cells("aaa,,")).containsExactly(List.of("aaa", "", ""));
    }

    @Test
    void rule_5_a_field_may_stand_in_double_quotes() throws IOException {
        assertThat(cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_6_line_breaks_quotes_and_commas_stand_in_quotes() throws IOException {
        assertThat(cells("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))
                .containsExactly(List.of("aaa", "b\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        assertThat(cells("\"a,b\",c")).containsExactly(List.of("a,b", "c"));
    }

    @Test
    void rule_7_a_quote_inside_quotes_is_doubled() throws IOException {
        assertThat(cells("\"aaa\",\"b\"\"bb\",\"ccc\"")).containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }

    @Test
    void a_quote_inside_a_bare_field_opens_nothing() throws IOException {
        assertThat(cells("5\" strip,a\nb,c")).containsExactly(List.of("5\" strip", "a"), List.of("b", "c"));
    }

    @Test
    void a_quote_that_is_never_closed_spoils_its_own_record_only() throws IOException {
        List<SheetRecords.Row> rows = rows("a,\"b\nc,d\ne,f");
        assertThat(rows.get(0).trouble()).isPresent();
        assertThat(rows.subList(1, 3))
                .extracting(SheetRecords.Row::cells)
                .containsExactly(List.of("c", "d"), List.of("e", "f"));
        assertThat(rows).extracting(SheetRecords.Row::row).containsExactly(1, 2, 3);
    }

    @Test
    void letters_behind_a_closing_quote_spoil_their_own_record_only() throws IOException {
        List<SheetRecords.Row> rows = rows("\"24\"5,a\nb,c");
        assertThat(rows.get(0).trouble()).isPresent();
        assertThat(rows.get(1).cells()).containsExactly("b", "c");
    }

    @Test
    void rows_are_numbered_as_a_spreadsheet_program_does() throws IOException {
        List<SheetRecords.Row> rows = rows("a,\"b\nb\"\n\nc,d");
        assertThat(rows).extracting(SheetRecords.Row::row).containsExactly(1, 2, 3);
        assertThat(rows.get(1).isBlank()).isTrue();
    }

    private static List<List<String>> cells(String text) throws IOException {
        return rows(text).stream().map(SheetRecords.Row::cells).toList();
    }

    private static List<SheetRecords.Row> rows(String text) throws IOException {
        List<SheetRecords.Row> rows = new ArrayList<>();
        try (SheetRecords records = new SheetRecords(new BufferedReader(new StringReader(text)), ',')) {
            Optional<SheetRecords.Row> row = records.next();
            while (row.isPresent()) {
                rows.add(row.get());
                row = records.next();
            }
        }
        return rows;
    }
}
