package org.wickwise.why;

import java.util.List;
import java.util.Map;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Limit;

/**
 * A case as somebody supposes it to be, and the limits as they suppose them; nothing on disk is touched.
 *
 * @param changes what was supposed, in words
 */
public record Supposition(Case supposed, Map<String, Limit> limits, List<String> changes) {

    public Supposition {
        limits = Map.copyOf(limits);
        changes = List.copyOf(changes);
    }
}
