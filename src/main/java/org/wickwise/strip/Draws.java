package org.wickwise.strip;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * The random numbers that readings are drawn with. They hang on the seed, the number of the draw and the name of what is
 * drawn, on nothing else.
 */
public final class Draws {

    /** Keeps neighbouring seeds, draws and names from meeting. */
    private static final long APART = 1_000_003;

    private Draws() {}

    /**
     * Numbers of their own for each seed, draw and name: those of one draw say nothing of those of the next.
     *
     * @param drawing counted from 0
     */
    public static RandomGenerator of(long seed, long drawing, String what) {
        return new SplittableRandom((seed * APART + drawing) * APART + what.hashCode());
    }

    /**
     * A name for each of these strips that no other of them has: what a sentence calls it, its stationary phase, and which
     * it is of those alike, by the place where it was written. So strips that repeat one another are read with errors of
     * their own, in whatever order they are listed.
     *
     * @return in the order of the strips
     */
    public static List<String> names(List<Strip> strips) {
        Map<String, Integer> alike = new HashMap<>();
        String[] names = new String[strips.size()];
        IntStream.range(0, names.length)
                .boxed()
                .sorted(Comparator.comparing(strip -> strips.get(strip).place()))
                .forEach(strip -> {
                    String called =
                            strips.get(strip) + " on " + strips.get(strip).phase();
                    names[strip] = called + ", " + alike.merge(called, 1, Integer::sum);
                });
        return List.copyOf(Arrays.asList(names));
    }
}
