package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.strip.BlendWishes;
import org.wickwise.strip.BlendWishes.Ratio;
import org.wickwise.text.Fields;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads the file of what a blend worth proposing looks like. */
final class BlendWishesReader {

    private static final Set<String> KEYS = Set.of("practical ratios", "wanted Rf", "most proposals");
    private static final Set<String> WINDOW_KEYS = Set.of("from", "to", "source");
    private static final Pattern RATIO = Pattern.compile("([1-9]\\d?):([1-9]\\d?)");
    private static final double MOST = 100;

    private final Problems problems;

    BlendWishesReader(Problems problems) {
        this.problems = problems;
    }

    BlendWishes wishes(Mapping file) {
        Fields fields = Fields.of(file, "the blends", KEYS, problems);
        Fields window = fields.node("wanted Rf")
                .map(node -> Fields.ofNode(node, "the wanted Rf", WINDOW_KEYS, problems))
                .orElseGet(() -> Fields.none(fields.place(), "the wanted Rf"));
        double from = window.requiredNumber("from").orElse(0);
        double to = window.requiredNumber("to").orElse(0);
        if (!(from > 0 && from < to && to < 1)) {
            problems.add(
                    window.place(),
                    "the wanted Rf runs from " + Numbers.plain(from, 3) + " to " + Numbers.plain(to, 3),
                    "two numbers between 0 and 1, the lower one under `from`",
                    "write `from: 0.2` and `to: 0.35`");
        }
        return new BlendWishes(ratios(fields), from, to, window.requiredText("source"), most(fields), window.place());
    }

    private List<Ratio> ratios(Fields fields) {
        List<Ratio> ratios = new ArrayList<>();
        for (Scalar written : fields.texts("practical ratios")) {
            Matcher ratio = RATIO.matcher(written.text());
            if (ratio.matches()) {
                ratios.add(new Ratio(Integer.parseInt(ratio.group(1)), Integer.parseInt(ratio.group(2))));
            } else {
                problems.add(
                        written.place(),
                        "the ratio `" + written.text() + "`",
                        "parts of the weaker and the stronger solvent, such as \"9:1\"",
                        "write whole parts from 1 to 99 in quotes");
            }
        }
        return ratios;
    }

    private int most(Fields fields) {
        double most = fields.requiredNumber("most proposals").orElse(0);
        if (most < 0 || most > MOST || most != Math.rint(most)) {
            problems.add(
                    fields.placeOf("most proposals"),
                    "`most proposals` is " + Numbers.plain(most, 3),
                    "a whole number from 0 to " + Numbers.plain(MOST, 0),
                    "0 proposes none");
        }
        return (int) most;
    }
}
