package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Reason;
import org.wickwise.text.Words;

/** Lists of lines and groups, no longer than a person reads. */
final class LongLists {

    private static final int MOST_LISTED = 200;

    private LongLists() {}

    /** The first of many lines, and one that says how many more there are. */
    static List<PlanLine> cut(List<PlanLine> lines, String what) {
        if (lines.size() <= MOST_LISTED) {
            return lines;
        }
        List<PlanLine> shown = new ArrayList<>(lines.subList(0, MOST_LISTED));
        String text = (lines.size() - MOST_LISTED) + " more " + what + "; the tables that --csv writes list all.";
        PlanLine last = lines.get(MOST_LISTED);
        shown.add(new PlanLine(
                "more-" + last.label(), last.section(), text, new Reason.Chosen(text, List.of(), List.of())));
        return shown;
    }

    /** "1 to 6, 8 and 10". */
    static String ofGroups(Collection<String> names) {
        List<String> runs = new ArrayList<>();
        List<String> all = List.copyOf(names);
        for (int i = 0; i < all.size(); ) {
            int last = i;
            while (last + 1 < all.size() && follows(all.get(last), all.get(last + 1))) {
                last++;
            }
            runs.add(last > i + 1 ? all.get(i) + " to " + all.get(last) : all.get(i));
            i = last > i + 1 ? last + 1 : i + 1;
        }
        return runs.size() <= MOST_LISTED
                ? Words.joined(runs)
                : String.join(", ", runs.subList(0, MOST_LISTED)) + " and others, " + all.size() + " in all";
    }

    private static boolean follows(String one, String next) {
        return one.matches("\\d{1,9}")
                && next.matches("\\d{1,9}")
                && Integer.parseInt(next) == Integer.parseInt(one) + 1;
    }
}
