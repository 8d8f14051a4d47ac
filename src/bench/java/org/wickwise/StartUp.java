package org.wickwise;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.tools.ToolProvider;

/**
 * Measures whole processes of the packaged program: {@code java src/bench/java/org/wickwise/StartUp.java} in the folder
 * of the sources, after {@code mvn -DskipTests package}. Needs a POSIX shell, which tells the processor time of a
 * process. The ways take turns, and of each the fastest counts, since whatever else a machine does can only add to it.
 */
public final class StartUp {

    private static final Pattern MINUTES = Pattern.compile("(\\d+)m([\\d.]+)s");
    private static final Path PACKAGED = Path.of("target/wickwise").toAbsolutePath();
    private static final Path DEMO = PACKAGED.resolve("docs/examples/ferry-ink.yaml");

    private record Seen(double wallSeconds, double processorSeconds) {

        Seen least(Seen other) {
            return new Seen(
                    Math.min(wallSeconds, other.wallSeconds), Math.min(processorSeconds, other.processorSeconds));
        }
    }

    private StartUp() {}

    /** @param arguments the number of rounds; 7 when it is left out */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int rounds = arguments.length == 0 ? 7 : Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("wickwise-start");
        Path cache = Files.createDirectory(folder.resolve("cache"));
        Path noCache = Files.writeString(folder.resolve("no-cache"), "a file where the folder should be");

        Map<String, List<String>> ways = new LinkedHashMap<>();
        ways.put("empty program", emptyProgram(folder));
        ways.put("the command line alone", wickwise(cache, List.of("--version")));
        ways.put("shipped rules", plan(cache, List.of()));
        ways.put("1 own rule, compiled anew", plan(noCache, ownRules(folder, 1)));
        for (int count : new int[] {1, 60, 120, 250, 500}) {
            ways.put(count + " own rules", plan(cache, ownRules(folder, count)));
        }
        Map<String, Seen> first = new LinkedHashMap<>();
        Map<String, Seen> least = new LinkedHashMap<>();
        for (int round = 0; round <= rounds; round++) {
            for (var way : ways.entrySet()) {
                Seen seen = run(way.getValue());
                (round == 0 ? first : least).merge(way.getKey(), seen, Seen::least);
            }
        }
        Seen empty = least.get("empty program");
        Seen anew = least.get("1 own rule, compiled anew");
        System.out.println("way: first start; fastest of " + rounds + " later ones; times the empty program;"
                + " times faster than compiling anew (elapsed, processor)");
        least.forEach((way, seen) -> System.out.printf(
                Locale.ROOT,
                "%-26s %6.2f s %6.2f s | %5.2f s %5.2f s | %5.1f %5.1f | %5.1f %5.1f%n",
                way,
                first.get(way).wallSeconds,
                first.get(way).processorSeconds,
                seen.wallSeconds,
                seen.processorSeconds,
                seen.wallSeconds / empty.wallSeconds,
                seen.processorSeconds / empty.processorSeconds,
                anew.wallSeconds / seen.wallSeconds,
                anew.processorSeconds / seen.processorSeconds));
    }

    private static List<String> plan(Path cache, List<String> options) throws IOException {
        List<String> words = new ArrayList<>(List.of("plan", DEMO.toString()));
        words.addAll(options);
        return wickwise(cache, words);
    }

    private static List<String> wickwise(Path cache, List<String> words) throws IOException {
        List<String> command = new ArrayList<>(javaWithFlags());
        command.addAll(List.of(
                "-Dwickwise.home=" + PACKAGED,
                "-Dwickwise.cache=" + cache,
                "-cp",
                PACKAGED.resolve("lib/wickwise.jar").toString(),
                "org.wickwise.Wickwise"));
        command.addAll(words);
        return command;
    }

    private static List<String> emptyProgram(Path folder) throws IOException {
        String jar = PACKAGED.resolve("lib/wickwise.jar").toString();
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-cp",
                        jar,
                        "-d",
                        folder.toString(),
                        "src/bench/java/org/wickwise/EmptyProgram.java");
        if (failed != 0) {
            throw new IllegalStateException("the empty program was not compiled");
        }
        List<String> command = new ArrayList<>(javaWithFlags());
        command.addAll(List.of("-cp", jar + File.pathSeparator + folder, "org.wickwise.EmptyProgram"));
        return command;
    }

    /** The flags of the start script, so that both programs are started as people start one. */
    private static List<String> javaWithFlags() throws IOException {
        String script = Files.readString(PACKAGED.resolve("bin/wickwise"));
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        Arrays.stream(script.split("\\s+"))
                .filter(word -> word.startsWith("-X"))
                .map(word -> word.replace("\"", "").replace("$home", PACKAGED.toString()))
                .forEach(command::add);
        return command;
    }

    /** Invented rules, each with a number of its own, beside the shipped ones. */
    private static List<String> ownRules(Path folder, int count) throws IOException {
        Path own = Files.createDirectories(folder.resolve("own-" + count));
        String rules = IntStream.rangeClosed(1, count)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        """
                          - rule: invented-%d
                            when: [E needs a banned bottle, the chance that D is reckoned ahead of F in E by more than the touching gap is at least 0.%03d %%]
                            then: [E is unfit for this column]
                            because: "{E} is kept out by an invented rule."
                            source: invented
                        """,
                        i,
                        i))
                .collect(Collectors.joining());
        Files.writeString(own.resolve("own.yaml"), "layer: shelf\nabout: Invented rules.\nrules:\n" + rules);
        return List.of("--rules", own.toString());
    }

    private static Seen run(List<String> command) throws IOException, InterruptedException {
        List<String> shell = new ArrayList<>(List.of("sh", "-c", "\"$@\" >/dev/null || exit 1; times", "sh"));
        shell.addAll(command);
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(shell)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String times = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("failed: " + String.join(" ", command));
        }
        double wall = (System.nanoTime() - begin) / 1e9;
        double processor = 0;
        Matcher time = MINUTES.matcher(times);
        while (time.find()) {
            processor += 60 * Double.parseDouble(time.group(1)) + Double.parseDouble(time.group(2));
        }
        return new Seen(wall, processor);
    }
}
