package org.wickwise.strip;

import java.util.List;

/**
 * Dixon's r10, also called Q: the gap between the outermost value and its neighbour over the range of all values.
 *
 * @param suspect the value with the wider gap
 * @param count how many values there are, 3 to 10
 * @param ratio 0 to 1
 */
public record Dixon(double suspect, int count, double ratio) {

    private static final int FEWEST = 3;

    /** Two-sided critical values for 3 to 10 values (Rorabacher, Anal. Chem. 1991, 63, 139, from memory). */
    private static final List<Double> CRITICAL_90 = List.of(0.941, 0.765, 0.642, 0.560, 0.507, 0.468, 0.437, 0.412);

    private static final List<Double> CRITICAL_95 = List.of(0.970, 0.829, 0.710, 0.625, 0.568, 0.526, 0.493, 0.466);

    /** @param values 3 to 10 that are not all equal */
    public static Dixon of(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int count = sorted.size();
        if (count < FEWEST || count >= FEWEST + CRITICAL_95.size()) {
            throw new IllegalArgumentException(
                    count + " values; expected 3 to 10, for which critical values are tabulated");
        }
        double range = sorted.get(count - 1) - sorted.get(0);
        if (!(range > 0)) {
            throw new IllegalArgumentException("all values are equal; expected values that differ");
        }
        double below = sorted.get(1) - sorted.get(0);
        double above = sorted.get(count - 1) - sorted.get(count - 2);
        return below > above
                ? new Dixon(sorted.get(0), count, below / range)
                : new Dixon(sorted.get(count - 1), count, above / range);
    }

    /** What the ratio has to exceed for an outlier at 90 % confidence. */
    public double critical90() {
        return CRITICAL_90.get(count - FEWEST);
    }

    /** What the ratio has to exceed for an outlier at 95 % confidence. */
    public double critical95() {
        return CRITICAL_95.get(count - FEWEST);
    }
}
