package org.wickwise;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs every benchmark of this folder, or those whose name holds one of the words given, and prints how many times
 * faster each way is than the slowest way of the same class and parameters.
 */
public final class Benchmarks {

    private Benchmarks() {}

    public static void main(String[] names) throws RunnerException {
        OptionsBuilder options = new OptionsBuilder();
        for (String name : names.length == 0 ? new String[] {"org.wickwise"} : names) {
            options.include(name);
        }
        options.mode(Mode.AverageTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(8)
                .measurementTime(TimeValue.milliseconds(500))
                .shouldFailOnError(true);
        byComparison(new Runner(options.build()).run()).forEach(Benchmarks::print);
    }

    /** A line of the run's own, such as how far off an answer is. */
    public static void note(String words, Object... values) {
        System.out.println("# " + String.format(Locale.ROOT, words, values));
    }

    private static TreeMap<String, List<RunResult>> byComparison(Collection<RunResult> results) {
        return results.stream()
                .collect(Collectors.groupingBy(Benchmarks::comparison, TreeMap::new, Collectors.toList()));
    }

    private static String comparison(RunResult result) {
        String method = result.getParams().getBenchmark();
        String parameters = result.getParams().getParamsKeys().stream()
                .map(key -> " " + result.getParams().getParam(key))
                .collect(Collectors.joining());
        return method.substring(0, method.lastIndexOf('.')).replaceFirst(".*\\.", "") + parameters;
    }

    private static void print(String comparison, List<RunResult> ways) {
        double slowest = ways.stream().mapToDouble(Benchmarks::time).max().orElseThrow();
        note("%s", comparison);
        ways.stream()
                .sorted(Comparator.comparingDouble(Benchmarks::time))
                .forEach(way -> note(
                        "  %-24s %12.3f us %10.1f times faster than the slowest",
                        way.getPrimaryResult().getLabel(), time(way), slowest / time(way)));
    }

    /** Of the fastest round: whatever else the machine does can only add to it. */
    private static double time(RunResult way) {
        return way.getPrimaryResult().getStatistics().getMin();
    }
}
