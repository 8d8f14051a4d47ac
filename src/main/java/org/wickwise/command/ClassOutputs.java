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

    private final Optional<Path> tables;
    private final Optional<ClassPage> page;
    private final Optional<BufferedWriter> readingsFile;
    private final Optional<ClassTables.OfStrips> readings;
    private final List<Path> written = new ArrayList<>();

    private ClassOutputs(
            Optional<Path> tables,
            Optional<ClassPage> page,
            Optional<BufferedWriter> readingsFile,
            Optional<ClassTables.OfStrips> readings) {
        this.tables = tables;
        this.page = page;
        this.readingsFile = readingsFile;
        this.readings = readings;
    }

    /** @throws ProblemsFound where a file cannot be written; told before anything is planned */
    static ClassOutputs to(Optional<Path> html, Optional<Path> csv) {
        try {
            Optional<ClassPage> page = html.isPresent() ? Optional.of(new ClassPage(html.get())) : Optional.empty();
            Optional<BufferedWriter> readingsFile =
                    csv.isPresent() ? Optional.of(writer(beside(csv.get(), "readings"))) : Optional.empty();
            Optional<ClassTables.OfStrips> readings = readingsFile.isPresent()
                    ? Optional.of(new ClassTables.OfStrips(readingsFile.get()))
                    : Optional.empty();
            ClassOutputs outputs = new ClassOutputs(csv, page, readingsFile, readings);
            html.ifPresent(outputs.written::add);
            return outputs;
        } catch (IOException e) {
            throw refused(html.or(() -> csv).orElseThrow());
        }
    }

    void add(GroupPlan planned) {
        try {
            if (page.isPresent()) {
                page.get().add(planned);
            }
            if (readings.isPresent()) {
                readings.get().add(planned);
            }
        } catch (IOException e) {
            throw refused(written.isEmpty() ? tables.orElseThrow() : written.get(0));
        }
    }

    /** Writes what sums up; gives the files that were written. */
    List<Path> finish(ClassSummary summary) {
        try {
            if (page.isPresent()) {
                page.get().finish(summary);
            }
            if (tables.isPresent()) {
                readingsFile.orElseThrow().flush();
                try (BufferedWriter groups = writer(tables.get());
                        BufferedWriter pooled = writer(beside(tables.get(), "pooled"))) {
                    ClassTables.groups(summary, groups);
                    ClassTables.pooled(summary, pooled);
                }
                written.addAll(List.of(tables.get(), beside(tables.get(), "pooled"), beside(tables.get(), "readings")));
            }
            return List.copyOf(written);
        } catch (IOException e) {
            throw refused(written.isEmpty() ? tables.orElseThrow() : written.get(0));
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
