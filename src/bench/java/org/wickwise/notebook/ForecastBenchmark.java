package org.wickwise.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.command.Workbench;
import org.wickwise.plan.ForecastLines;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.text.Place;
import org.wickwise.text.YamlFile;

/** A forecast from a large notebook: every file read, everything put together, judged and planned. Readings are invented. */
@State(Scope.Benchmark)
public class ForecastBenchmark {

    private static final Scatter USUAL = new Scatter(0.02, 0.1, List.of());

    @Param({"50", "500", "5000"})
    private int entries;

    private Path folder;
    private Workbench bench;
    private Planner planner;
    private Case written;

    @Setup
    public void writeTheNotebook() throws IOException {
        bench = Workbench.in(Path.of(""));
        planner = new Planner(bench.judge().rulebook());
        written = CaseReader.beforeStrips(
                YamlFile.read(Path.of("docs/examples/ferry-ink.yaml")).where(key -> !key.equals("strips")),
                bench.data());
        folder = Files.createTempDirectory("notebook");
        Random random = new Random(5000);
        for (int i = 0; i < entries; i++) {
            Files.writeString(folder.resolve(String.format(Locale.ROOT, "entry-%05d.yaml", i)), entry(i, random));
        }
    }

    private static String entry(int number, Random random) {
        return String.format(
                Locale.ROOT,
                """
                date: %d-%02d-%02d
                group: %d
                mixture: {name: cancelling ink, dyes: [straw, rust, harbour blue]}
                strips on: silica
                strips:
                  - {solvent: heptane, front mm: 70, travel mm: {straw: 1, rust: 0, harbour blue: 0}}
                  - {solvent: heptane + ethyl acetate 9:1, front mm: 70, travel mm: {straw: %d, rust: 1, harbour blue: 0}}
                  - {solvent: ethyl acetate, front mm: 70, travel mm: {straw: 65, rust: %d, harbour blue: 1}}
                  - {solvent: ethanol, front mm: 70, travel mm: {straw: 68, rust: 64, harbour blue: %d}}
                """,
                2000 + number % 25,
                1 + number % 12,
                1 + number % 28,
                number,
                21 + random.nextInt(5),
                25 + random.nextInt(5),
                42 + random.nextInt(6));
    }

    @TearDown
    public void removeTheNotebook() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** From the folder to the plan. */
    @Benchmark
    public Plan forecast() {
        Memory memory = Memory.of(
                Notebook.in(folder).contents(bench.data()).entries(), USUAL, RunTolerances.of(bench.judge()::limit));
        Recall recall = Recall.of(written, memory, Place.wholeFile(folder.toString()));
        Plan plan = ForecastLines.forecast(recall, bench.judge(), planner);
        if (plan.isRefusal()) {
            throw new IllegalStateException("a forecast from these strips has a plan");
        }
        return plan;
    }
}
