package org.wickwise.rulebook;

import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/**
 * A threshold that an instructor may change.
 *
 * @param name as rules say it, without "the"
 * @param unit "none" for a plain number
 * @param lowest the least it may be set to
 * @param highest the most it may be set to
 */
public record Limit(
        String name,
        double value,
        String unit,
        double lowest,
        double highest,
        String meaning,
        String source,
        Place place)
        implements Ground {

    /** The same limit set otherwise by somebody who supposes it. */
    public Limit supposed(double otherValue, Place where) {
        return new Limit(name, otherValue, unit, lowest, highest, meaning, "supposed", where);
    }

    public String shown() {
        return Numbers.plain(value, 4) + (unit.equals("none") ? "" : " " + unit);
    }

    @Override
    public Reason reason() {
        return new Reason.Limited("the " + name + " is " + shown() + ": " + meaning, place, source);
    }
}
