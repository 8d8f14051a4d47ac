package org.wickwise.plan;

/** What the criteria count against a plan, the weightiest first; the first that differs decides. */
final class Counts {

    private static final double SAME = 1e-9;

    private Counts() {}

    static double[] sum(double[] some, double[] more) {
        double[] sum = some.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
        return sum;
    }

    /** Below 0 when the first is the better. */
    static int compare(double[] one, double[] other) {
        int difference = firstDifference(one, other);
        return difference < 0 ? 0 : Double.compare(one[difference], other[difference]);
    }

    /** The place of the first criterion that tells two plans apart; -1 when none does. */
    static int firstDifference(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            if (Math.abs(one[i] - other[i]) > SAME) {
                return i;
            }
        }
        return -1;
    }
}
