package org.wickwise.strip;

import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * A blend that nobody ran and that should part one dye from the others.
 *
 * @param target the dye it is for
 * @param retardationFactor of the target, reckoned
 * @param nearest the dye that should come nearest to it
 * @param gap between the two in Rf; a least gap where the nearest is known on one side only
 * @param gapUncertainty standard uncertainty of the gap
 * @param chance that the target lies in the wanted window, 0 to 1
 */
public record BlendProposal(
        Eluent eluent,
        Dye target,
        RetardationFactor retardationFactor,
        Dye nearest,
        double gap,
        double gapUncertainty,
        double chance,
        Reason reason)
        implements Ground {

    /** Chance times gap: what the proposals are ordered by. */
    public double promise() {
        return chance * gap;
    }
}
