package org.wickwise.lesson;

import java.util.List;
import org.wickwise.plan.PlanLine;

/**
 * What the plans of all groups come to.
 *
 * @param parts in the order of printing
 * @param groups one row for each group
 * @param pooled one row for each dye in each eluent
 */
public record ClassSummary(String title, List<Part> parts, List<GroupRow> groups, List<PooledRow> pooled) {

    /**
     * A few lines under a heading.
     *
     * @param inATable whether the rows of groups or of pooled readings say the same, so that a page with tables leaves it out
     */
    public record Part(String title, List<PlanLine> lines, boolean inATable) {
        public Part {
            lines = List.copyOf(lines);
        }

        static Part alsoInATable(String title, List<PlanLine> lines) {
            return new Part(title, lines, true);
        }

        static Part inWordsOnly(String title, List<PlanLine> lines) {
            return new Part(title, lines, false);
        }
    }

    /** How a group stands. */
    public enum Standing {
        GOES_ON("can go on"),
        REPEATS("must run strips again"),
        UNREAD("could not be read");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param way what is packed and poured; empty where there is no plan
     * @param toRun which strips to run, and why; empty where none is needed
     * @param leftOut how many rows could not be taken
     */
    public record GroupRow(String group, Standing standing, String way, String toRun, int leftOut) {}

    /**
     * @param between standard deviation between groups beyond the uncertainty of one reading
     * @param own that uncertainty, root mean square
     * @param farOut groups that lie far from the others
     */
    public record PooledRow(
            String eluent,
            String phase,
            String dye,
            int groups,
            double mean,
            double uncertainty,
            double median,
            double between,
            double own,
            List<String> farOut) {}

    public ClassSummary {
        parts = List.copyOf(parts);
        groups = List.copyOf(groups);
        pooled = List.copyOf(pooled);
    }

    /** Whether any group can go on. */
    public boolean anyGoesOn() {
        return groups.stream().anyMatch(row -> row.standing() == Standing.GOES_ON);
    }

    /** Every line that can be asked about. */
    public List<PlanLine> lines() {
        return parts.stream().flatMap(part -> part.lines().stream()).toList();
    }
}
