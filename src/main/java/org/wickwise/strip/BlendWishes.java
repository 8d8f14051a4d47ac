package org.wickwise.strip;

import java.util.List;
import org.wickwise.reason.Reason;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/**
 * What a blend worth proposing looks like.
 *
 * @param ratios that are easily measured out
 * @param from lowest Rf wanted of the dye that the blend is for
 * @param to highest Rf wanted of it
 * @param source where the window comes from
 * @param most proposals laid before the rules
 */
public record BlendWishes(List<Ratio> ratios, double from, double to, String source, int most, Place place) {

    public BlendWishes {
        ratios = List.copyOf(ratios);
    }

    /** Parts by volume. */
    public record Ratio(int weaker, int stronger) {

        double percentOfStronger() {
            return 100.0 * stronger / (weaker + stronger);
        }
    }

    Reason reason() {
        return new Reason.Limited(
                "an Rf from " + Numbers.plain(from, 3) + " to " + Numbers.plain(to, 3) + " is wanted", place, source);
    }
}
