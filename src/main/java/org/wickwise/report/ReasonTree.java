package org.wickwise.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Calculated;
import org.wickwise.reason.Reason.Chosen;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.reason.Reason.Limited;
import org.wickwise.reason.Reason.Observed;
import org.wickwise.reason.Reason.Stated;
import org.wickwise.reason.Reason.Tabled;

/** A reason laid out as indented lines, the statement above what it rests on. */
final class ReasonTree {

    /** @param depth levels of indentation */
    record Entry(int depth, String text) {}

    private final List<Entry> entries = new ArrayList<>();
    private final Set<Reason> explained = new HashSet<>();

    private ReasonTree() {}

    static List<Entry> lines(Reason reason) {
        ReasonTree tree = new ReasonTree();
        tree.lay(reason, 0);
        return tree.entries;
    }

    private void lay(Reason reason, int depth) {
        if (reason instanceof Observed observed) {
            add(depth, observed.statement() + "  <- " + observed.place());
        } else if (reason instanceof Stated stated) {
            add(depth, stated.statement() + "  <- " + stated.place());
        } else if (reason instanceof Limited limited) {
            leaf(limited, depth, "  <- " + limited.place() + "; " + limited.source());
        } else if (reason instanceof Tabled tabled) {
            leaf(tabled, depth, "  <- " + String.join("; ", tabled.sources()) + " (" + confidence(tabled) + ")");
        } else if (reason instanceof Calculated calculated) {
            calculated(calculated, depth);
        } else if (reason instanceof Concluded concluded) {
            concluded(concluded, depth);
        } else if (reason instanceof Chosen chosen) {
            add(depth, chosen.statement());
            chosen.comparisons().forEach(comparison -> add(depth + 1, comparison));
            chosen.grounds().forEach(ground -> lay(ground, depth + 1));
        } else {
            throw new IllegalStateException(
                    "no words for a reason of the kind " + reason.getClass().getSimpleName());
        }
    }

    /** A leaf with a long source tells the source once. */
    private void leaf(Reason leaf, int depth, String source) {
        add(depth, leaf.statement() + (explained.add(leaf) ? source : " (source above)"));
    }

    private static String confidence(Tabled tabled) {
        return tabled.confidence().equals("memory") ? "from memory, not seen in print" : tabled.confidence();
    }

    private void calculated(Calculated calculated, int depth) {
        add(depth, calculated.statement());
        if (!firstTime(calculated)) {
            return;
        }
        add(depth + 1, "reckoned: " + calculated.formula() + " (" + calculated.reference() + ")");
        calculated.grounds().forEach(ground -> lay(ground, depth + 1));
    }

    private void concluded(Concluded concluded, int depth) {
        add(depth, concluded.statement());
        if (firstTime(concluded)) {
            concluded.arguments().forEach(argument -> argument(argument, depth + 1));
        }
    }

    private void argument(Argument argument, int depth) {
        add(depth, "because: " + argument.because());
        add(
                depth,
                "rule " + argument.ruleId() + " (" + argument.place() + "): if "
                        + String.join(", and ", argument.sentences()) + "; source: " + argument.source());
        argument.grounds().forEach(ground -> lay(ground, depth + 1));
    }

    /** A reason that was explained above is named again, not explained again. */
    private boolean firstTime(Reason reason) {
        boolean first = explained.add(reason);
        if (!first) {
            Entry last = entries.remove(entries.size() - 1);
            entries.add(new Entry(last.depth(), last.text() + " (explained above)"));
        }
        return first;
    }

    private void add(int depth, String text) {
        entries.add(new Entry(depth, text));
    }
}
