package org.wickwise.command;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.lesson.ClassSummary;
import org.wickwise.lesson.GroupPlan;
import org.wickwise.report.ClassPage;
import org.wickwise.report.ClassTables;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** The files that the plans of a class are written to as they come: a page, and three tables. */
final class ClassOutputs implements Closeable {

    private final Optional<Path> html;
    private final Optional<Path> tables;
    private Optional<ClassPage> page = Optional.empty();
    private Optional<BufferedWriter> readingsFile = Optional.empty();
    private Optional<ClassTables.OfStrips> readings = Optional.empty();

    private ClassOutputs(Optional<Path> html, Optional<Path> tables) {
        this.html = html;
        this.tables = tables;
    }

    /** @throws ProblemsFound where a file cannot be written; told before anything is planned */
    static ClassOutputs to(Optional<Path> html, Optional<Path> csv) {
        ClassOutputs outputs = new ClassOutputs(html, csv);
        try {
            outputs.open();
            return outputs;
        } catch (ProblemsFound refused) {
            outputs.giveUp();
            throw refused;
        }
    }

    private void open() {
        html.ifPresent(file -> into(file, () -> page = Optional.of(new ClassPage(file))));
        tables.ifPresent(file -> into(file, () -> {
            BufferedWriter opened = writer(beside(file, "readings"));
            readingsFile = Optional.of(opened);
            readings = Optional.of(new ClassTables.OfStrips(opened));
        }));
    }

    void add(GroupPlan planned) {
        page.ifPresent(open -> into(html.orElseThrow(), () -> open.add(planned)));
        readings.ifPresent(open -> into(tables.orElseThrow(), () -> open.add(planned)));
    }

    /** Writes what sums up; gives the files that were written. */
    List<Path> finish(ClassSummary summary) {
        List<Path> written = new ArrayList<>();
        page.ifPresent(open -> into(html.orElseThrow(), () -> open.finish(summary)));
        html.ifPresent(written::add);
        tables.ifPresent(file -> into(file, () -> {
            readingsFile.orElseThrow().flush();
            try (BufferedWriter groups = writer(file);
                    BufferedWriter pooled = writer(beside(file, "pooled"))) {
                ClassTables.groups(summary, groups);
                ClassTables.pooled(summary, pooled);
            }
            written.addAll(List.of(file, beside(file, "pooled"), beside(file, "readings")));
        }));
        return List.copyOf(written);
    }

    /** Something written to a disk. */
    private interface Writing {
        void write() throws IOException;
    }

    /** @param asked the file as it was asked for, which a person is told where it cannot be written */
    private static void into(Path asked, Writing writing) {
        try {
            writing.write();
        } catch (IOException e) {
            throw refused(asked);
        }
    }

    private static BufferedWriter writer(Path file) throws IOException {
        return Files.newBufferedWriter(file, StandardCharsets.UTF_8);
    }

    /** "class.csv" and "readings" make "class-readings.csv". */
    private static Path beside(Path file, String part) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return file.resolveSibling(
                dot < 1 ? name + "-" + part : name.substring(0, dot) + "-" + part + name.substring(dot));
    }

    private static ProblemsFound refused(Path file) {
        return new ProblemsFound(List.of(new Problem(
                Place.wholeFile(file.toString()),
                "the file cannot be written",
                "a folder that is there and has room",
                "name another file, or make room")));
    }

    /** Leaves nothing open and no half of a page behind. */
    private void giveUp() {
        try {
            close();
        } catch (IOException e) {
            // what is told is the file that cannot be written
        }
    }

    @Override
    public void close() throws IOException {
        if (page.isPresent()) {
            page.get().close();
        }
        if (readingsFile.isPresent()) {
            readingsFile.get().close();
        }
    }
}
