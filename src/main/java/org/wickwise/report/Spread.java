package org.wickwise.report;

import java.util.ArrayDeque;
import java.util.Deque;

/** Labels along a line, moved apart as little as their sizes allow. */
final class Spread {

    /** Labels that touch and move as one. */
    private record Block(double mean, int size) {
        Block with(Block other) {
            return new Block((mean * size + other.mean * other.size) / (size + other.size), size + other.size);
        }
    }

    private Spread() {}

    /**
     * The middles that keep order and do not overlap, with the least sum of squared displacements (pool adjacent violators).
     *
     * @param wanted where the middles would best lie, ascending
     * @param sizes how much room each takes along the line
     * @param from no label begins before it, as far as there is room
     * @param to no label ends after it, as far as there is room
     */
    static double[] apart(double[] wanted, double[] sizes, double from, double to) {
        int count = wanted.length;
        double[] stacked = new double[count];
        Deque<Block> blocks = new ArrayDeque<>();
        for (int i = 0; i < count; i++) {
            stacked[i] = i == 0 ? 0 : stacked[i - 1] + (sizes[i - 1] + sizes[i]) / 2;
            Block block = new Block(wanted[i] - stacked[i], 1);
            while (!blocks.isEmpty() && blocks.peekLast().mean() > block.mean()) {
                block = blocks.removeLast().with(block);
            }
            blocks.addLast(block);
        }
        double[] middles = new double[count];
        int next = 0;
        for (Block block : blocks) {
            for (int i = 0; i < block.size(); i++, next++) {
                double least = from + sizes[0] / 2;
                double most = to - sizes[count - 1] / 2 - stacked[count - 1];
                middles[next] = stacked[next] + Math.max(least, Math.min(most, block.mean()));
            }
        }
        return middles;
    }
}
