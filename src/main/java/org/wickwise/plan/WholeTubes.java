package org.wickwise.plan;

import java.util.Optional;
import org.wickwise.column.Band;
import org.wickwise.plan.Keeping.Flask;
import org.wickwise.substance.Dye;

/**
 * The tubes that lie wholly within a stretch worth keeping, and what they hold. One across an end is neither pure nor lost.
 * Every dye is taken to be there in the same amount.
 *
 * @param first counted from 1 at the first drop of the step
 * @param purity share of the flask's own dyes in what these tubes hold
 * @param recovery share of the flask's own dyes that these tubes hold
 */
record WholeTubes(long first, long last, double purity, double recovery) {

    /**
     * @param before column volumes poured before the step
     * @param tube column volumes in one tube, above 0
     * @return empty where no tube lies wholly within
     */
    static Optional<WholeTubes> within(Flask flask, Elution elution, double before, double tube) {
        long first = (long) Math.ceil(Math.max(0, flask.from() - before) / tube) + 1;
        long last = (long) Math.floor((flask.to() - before) / tube);
        if (last < first) {
            return Optional.empty();
        }
        double from = before + (first - 1) * tube;
        double to = before + last * tube;
        double own = 0;
        double all = 0;
        for (var entry : elution.bands().entrySet()) {
            Dye dye = entry.getKey();
            Band band = entry.getValue();
            double share = band.shareBetween(from, to);
            all += share;
            own += flask.dyes().contains(dye) ? share : 0;
        }
        return Optional.of(new WholeTubes(
                first, last, all > 0 ? own / all : 0, own / flask.dyes().size()));
    }

    /** "whole tubes 6 to 9", "whole tube 3". */
    String inWords() {
        return first == last ? "whole tube " + first : "whole tubes " + first + " to " + last;
    }
}
