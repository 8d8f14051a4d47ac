package org.wickwise.plan;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Eluents in the order of pouring that bring every dye off.
 *
 * @param counts what each criterion counts against this route, in the order of the preferences
 */
public record Route(List<Step> steps, List<Double> counts) implements Comparable<Route> {

    private static final double SAME = 1e-9;

    public Route {
        steps = List.copyOf(steps);
        counts = List.copyOf(counts);
    }

    /** The place of the first criterion that tells two routes apart; -1 when none does. */
    public int firstDifference(Route other) {
        for (int i = 0; i < counts.size(); i++) {
            if (Math.abs(counts.get(i) - other.counts.get(i)) > SAME) {
                return i;
            }
        }
        return -1;
    }

    /** Better routes first; where no criterion tells, by the names of the eluents. */
    @Override
    public int compareTo(Route other) {
        int difference = firstDifference(other);
        return difference < 0
                ? names().compareTo(other.names())
                : Double.compare(counts.get(difference), other.counts.get(difference));
    }

    /** "A, then B". */
    public String names() {
        return steps.stream().map(step -> step.eluent().name()).collect(Collectors.joining(", then "));
    }
}
