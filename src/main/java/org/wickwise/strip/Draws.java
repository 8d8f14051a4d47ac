package org.wickwise.strip;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

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
}
