package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;

/**
 * Two processes write into one notebook, under the same names, and are killed at random moments. What they said is written
 * has to be there, whole. The profile {@code nightly} kills a thousand times.
 */
class TwoWritersTest {

    private static final int LONGEST_LIFE_MILLISECONDS = 60;

    @TempDir
    private Path folder;

    @Test
    void two_processes_that_write_at_once_lose_nothing() throws IOException, InterruptedException {
        Path notebook = folder.resolve("notebook");
        Process one = writer(notebook, "one", 60);
        Process other = writer(notebook, "other", 60);
        List<String> acknowledged = new ArrayList<>(linesOf(one));
        acknowledged.addAll(linesOf(other));
        assertThat(one.waitFor()).isZero();
        assertThat(other.waitFor()).isZero();
        assertThat(acknowledged).hasSize(120);
        nothingIsLostOrDamaged(notebook, acknowledged);
        assertThat(Notebook.in(notebook).contents(Shipped.data()).entries()).hasSize(90);
    }

    @Test
    void no_entry_is_lost_or_damaged_in_twenty_kills() throws IOException, InterruptedException {
        assertThat(killed(20, 20, new Random(11))).isGreaterThan(20);
    }

    @Tag("nightly")
    @Test
    void no_entry_is_lost_or_damaged_in_a_thousand_kills() throws IOException, InterruptedException {
        int acknowledged = killed(1_000, 1_000, new Random());
        System.out.println("1,000 kills of two writers, " + acknowledged + " acknowledged entries, none lost");
        assertThat(acknowledged).isGreaterThan(1_000);
    }

    /**
     * How many entries were acknowledged before so many kills. A busy machine kills writers before they wrote much, and
     * goes on until they did.
     */
    private int killed(int kills, int wanted, Random random) throws IOException, InterruptedException {
        int acknowledged = 0;
        for (int round = 0; 2 * round < kills || acknowledged <= wanted && round < kills; round++) {
            Path notebook = folder.resolve("round " + round);
            Process one = writer(notebook, "one", Integer.MAX_VALUE);
            Process other = writer(notebook, "other", Integer.MAX_VALUE);
            BufferedReader ofOne = one.inputReader(StandardCharsets.UTF_8);
            BufferedReader ofOther = other.inputReader(StandardCharsets.UTF_8);
            assertThat(ofOne.readLine()).isEqualTo("ready");
            assertThat(ofOther.readLine()).isEqualTo("ready");
            Thread.sleep(random.nextInt(LONGEST_LIFE_MILLISECONDS));
            one.toHandle().destroyForcibly();
            Thread.sleep(random.nextInt(LONGEST_LIFE_MILLISECONDS));
            other.toHandle().destroyForcibly();
            List<String> said = new ArrayList<>(wholeLines(ofOne));
            said.addAll(wholeLines(ofOther));
            one.waitFor();
            other.waitFor();
            nothingIsLostOrDamaged(notebook, said);
            acknowledged += said.size();
            remove(notebook);
        }
        return acknowledged;
    }

    private static void nothingIsLostOrDamaged(Path notebook, List<String> acknowledged) throws IOException {
        if (!Files.exists(notebook)) {
            assertThat(acknowledged).isEmpty();
            return;
        }
        NotebookContents contents = Notebook.in(notebook).contents(Shipped.data());
        assertThat(contents.setAside()).isEmpty();
        Set<String> kept = Stream.of(notebook, notebook.resolve(Notebook.EARLIER))
                .filter(Files::isDirectory)
                .flatMap(TwoWritersTest::marksIn)
                .collect(Collectors.toSet());
        assertThat(kept).containsAll(acknowledged);
    }

    private static Stream<String> marksIn(Path folder) {
        return Notebook.in(folder).contents(Shipped.data()).entries().stream().map(entry -> {
            String file = entry.place().file();
            try {
                return Files.readAllLines(Path.of(file)).stream()
                        .filter(line -> line.startsWith("note: "))
                        .map(line -> line.substring("note: ".length()).replace("\"", ""))
                        .findFirst()
                        .orElse(file + " has no mark");
            } catch (IOException e) {
                return file + " cannot be read";
            }
        });
    }

    private static Process writer(Path notebook, String name, int entries) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx32m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        RecordingInALoop.class.getName(),
                        notebook.toString(),
                        name,
                        String.valueOf(entries))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static List<String> linesOf(Process writer) throws IOException {
        try (BufferedReader lines = writer.inputReader(StandardCharsets.UTF_8)) {
            return lines.lines().filter(line -> !line.equals("ready")).toList();
        }
    }

    /** A last line without its end was not said. */
    private static List<String> wholeLines(BufferedReader reader) throws IOException {
        StringBuilder all = new StringBuilder();
        try (reader) {
            for (int letter = reader.read(); letter >= 0; letter = reader.read()) {
                all.append((char) letter);
            }
        }
        return all.substring(0, all.lastIndexOf("\n") + 1).lines().toList();
    }

    private static void remove(Path notebook) throws IOException {
        if (!Files.exists(notebook)) {
            return;
        }
        try (Stream<Path> all = Files.walk(notebook)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
