package org.wickwise;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * Plans classes of 1 to 10,000 invented groups with whole processes of the package, and prints how their times grow. Started by
 * itself, after packaging: {@code java src/bench/java/org/wickwise/ManyGroups.java}.
 */
public final class ManyGroups {

    private static final Path PACKAGED = Path.of("target/wickwise").toAbsolutePath();
    private static final Path LESSON = Path.of("docs/examples/harbour-class.yaml");
    private static final int[] GROUPS = {1, 10, 100, 1_000, 10_000};
    private static final double SCATTER = 0.02;

    /** A strip of the demo: its eluent, its front and three travels in millimetres. */
    private record Run(String eluent, double front, List<Double> travels) {}

    private static final List<Run> RUNS = List.of(
            new Run("heptane", 74, List.of(1.0, 0.0, 0.0)),
            new Run("heptane + ethyl acetate 9:1", 72, List.of(24.0, 1.0, 0.0)),
            new Run("heptane + ethyl acetate 1:1", 70, List.of(50.0, 9.0, 3.0)),
            new Run("ethyl acetate", 70, List.of(66.0, 27.0, 1.0)),
            new Run("ethanol", 71, List.of(69.0, 65.0, 45.0)),
            new Run("acetone", 73, List.of(70.0, 61.0, 30.0)));

    private ManyGroups() {}

    /** @param arguments the most groups; 10,000 when it is left out */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int most = arguments.length == 0 ? 10_000 : Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("wickwise-class");
        seconds(folder, 1);
        double one = 0;
        double before = 0;
        System.out.println("groups; seconds; times one group; times the row above");
        for (int groups : GROUPS) {
            if (groups <= most) {
                double seconds = seconds(folder, groups);
                one = groups == 1 ? seconds : one;
                System.out.printf(
                        Locale.ROOT,
                        "%6d %8.2f %6.1f %6.1f%n",
                        groups,
                        seconds,
                        seconds / one,
                        before == 0 ? 1 : seconds / before);
                before = seconds;
            }
        }
    }

    private static double seconds(Path folder, int groups) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("readings.csv"), table(groups), StandardCharsets.UTF_8);
        String lesson = Files.readString(LESSON)
                .replaceFirst("sheet: .*", "sheet: readings.csv")
                .replaceFirst("groups: .*", "groups: " + groups)
                .replaceFirst("(?m)^  (strips each|solvents): .*\\n", "")
                .replaceFirst("(?m)^  (strips each|solvents): .*\\n", "");
        Path file = Files.writeString(folder.resolve("lesson.yaml"), lesson, StandardCharsets.UTF_8);
        List<String> command = new ArrayList<>(javaWithFlags());
        command.addAll(List.of(
                "-Dwickwise.home=" + PACKAGED,
                "-cp",
                PACKAGED.resolve("lib/wickwise.jar").toString(),
                "org.wickwise.Wickwise",
                "class",
                file.toString()));
        long begin = System.nanoTime();
        int code = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        if (code != 0) {
            throw new IllegalStateException("ended with " + code + ": " + String.join(" ", command));
        }
        return (System.nanoTime() - begin) / 1e9;
    }

    private static String table(int groups) {
        Random random = new Random(groups);
        StringBuilder table = new StringBuilder("group,solvent,front mm,straw mm,rust mm,harbour blue mm\n");
        for (int group = 1; group <= groups; group++) {
            for (Run run : RUNS) {
                double front = run.front() + random.nextInt(9) - 4;
                table.append(group).append(',').append(run.eluent()).append(',').append(front);
                for (double travel : run.travels()) {
                    double scattered = travel > 5 ? SCATTER * random.nextGaussian() : 0;
                    long read = Math.round(front * (travel / run.front() + scattered));
                    table.append(',').append(Math.max(0, Math.min((long) front, read)));
                }
                table.append('\n');
            }
        }
        return table.toString();
    }

    /** The flags of the start script, so that the program is started as people start it. */
    private static List<String> javaWithFlags() throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(
                Arrays.stream(Files.readString(PACKAGED.resolve("bin/wickwise")).split("\\s+"))
                        .filter(word -> word.startsWith("-X"))
                        .map(word -> word.replace("\"", "").replace("$home", PACKAGED.toString()))
                        .collect(Collectors.toList()));
        return command;
    }
}
