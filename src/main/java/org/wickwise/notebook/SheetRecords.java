package org.wickwise.notebook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.wickwise.text.Cells;

/**
 * The records of a table one after the other, as RFC 4180 describes them, with any separator. A record with a mistake in its
 * quotes spoils that record and no other.
 */
final class SheetRecords implements AutoCloseable {

    /** A quote that is not closed within so many lines was never meant to be open. */
    private static final int MOST_LINES_OF_A_RECORD = 100;

    /**
     * One record.
     *
     * @param row counted from 1, as a spreadsheet program numbers it; blank ones count
     * @param cells without blanks around them
     * @param trouble what is wrong with its quotes; it has no cells then
     */
    record Row(int row, List<String> cells, Optional<String> trouble) {

        Row {
            cells = List.copyOf(cells);
        }

        boolean isBlank() {
            return trouble.isEmpty() && cells.stream().allMatch(String::isEmpty);
        }
    }

    private final BufferedReader lines;
    private final char separator;
    private final CSVFormat format;
    private final Deque<String> ahead = new ArrayDeque<>();
    private int row;

    SheetRecords(BufferedReader lines, char separator) {
        this.lines = lines;
        this.separator = separator;
        this.format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .get();
    }

    /** The next record; empty at the end of the table. */
    Optional<Row> next() throws IOException {
        String first = line();
        if (first == null) {
            return Optional.empty();
        }
        row++;
        List<String> taken = new ArrayList<>(List.of(first));
        boolean open = leavesQuoteOpen(first, false);
        while (open && taken.size() < MOST_LINES_OF_A_RECORD) {
            String more = line();
            if (more == null) {
                break;
            }
            taken.add(more);
            open = leavesQuoteOpen(more, true);
        }
        if (open) {
            for (int i = taken.size() - 1; i > 0; i--) {
                ahead.addFirst(taken.get(i));
            }
            return Optional.of(new Row(row, List.of(), Optional.of("a quote is opened and not closed")));
        }
        return Optional.of(cells(String.join("\n", taken)));
    }

    private Row cells(String text) throws IOException {
        if (text.isBlank()) {
            return new Row(row, List.of(), Optional.empty());
        }
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            List<String> cells = new ArrayList<>();
            for (CSVRecord record : parser) {
                record.forEach(cell -> cells.add(plain(cell)));
            }
            return new Row(row, cells, Optional.empty());
        } catch (IOException | IllegalStateException | java.io.UncheckedIOException e) {
            return new Row(row, List.of(), Optional.of("something stands between a closing quote and the next cell"));
        }
    }

    /** Without blanks around it, and without the apostrophe that keeps a spreadsheet program from reckoning with it. */
    private static String plain(String cell) {
        return Cells.unguarded(cell.strip()).strip();
    }

    private String line() throws IOException {
        return ahead.isEmpty() ? lines.readLine() : ahead.removeFirst();
    }

    /** A quote opens a cell only where the cell begins; two in a row are one that is meant. */
    private boolean leavesQuoteOpen(String line, boolean isOpen) {
        boolean open = isOpen;
        boolean atStart = !isOpen;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (open && letter == '"') {
                boolean doubled = i + 1 < line.length() && line.charAt(i + 1) == '"';
                open = doubled;
                i += doubled ? 1 : 0;
            } else if (!open && letter == '"' && atStart) {
                open = true;
            }
            atStart = !open && letter == separator;
        }
        return open;
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
