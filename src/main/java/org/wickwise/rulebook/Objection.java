package org.wickwise.rulebook;

import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.reason.Reason;
import org.wickwise.text.Place;

/**
 * Why one rule did not conclude something that it might have concluded.
 *
 * @param met its sentences that hold, names filled in, up to the first that does not
 * @param unmet the first sentence that does not hold, names filled in
 * @param inTheWay why it does not hold: what holds instead, the nearest first; none where nothing is known of it
 * @param missing by how much the nearest misses, where it is a matter of numbers
 * @param ruledOut whether the rule asks that something is not there, and it is: a veto
 * @param further where the sentence asks for a conclusion that nothing drew: why not
 */
public record Objection(
        String ruleId,
        Place place,
        String source,
        List<String> met,
        String unmet,
        List<Reason> inTheWay,
        OptionalDouble missing,
        boolean ruledOut,
        List<Objection> further) {

    public Objection {
        met = List.copyOf(met);
        inTheWay = List.copyOf(inTheWay);
        further = List.copyOf(further);
    }

    /** Whether nobody knows what the rule asks, rather than knowing otherwise. */
    public boolean isForWantOfKnowledge() {
        return inTheWay.isEmpty();
    }
}
