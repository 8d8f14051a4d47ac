package org.wickwise.rulebook;

import java.util.HashMap;
import java.util.Map;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.wickwise.rulebook.ReadingThresholds.Told;

/**
 * Movements and gaps that lie before the rules. Of others in their place only those are laid out anew of which a rule can
 * tell something else.
 */
final class LaidOutReadings {

    private final KieSession session;
    private final Map<String, FactHandle> handles = new HashMap<>();
    private Map<String, Told> laidOut = Map.of();

    LaidOutReadings(KieSession session) {
        this.session = session;
    }

    void layOut(StripSummary summary, ReadingThresholds thresholds) {
        Map<String, Told> next = thresholds.told(summary, laidOut);
        handles.entrySet().removeIf(known -> {
            boolean gone = !next.containsKey(known.getKey());
            if (gone) {
                session.delete(known.getValue());
            }
            return gone;
        });
        next.forEach((name, told) -> {
            Told before = laidOut.get(name);
            if (before == null) {
                handles.put(name, session.insert(told.reading()));
            } else if (!before.sides().equals(told.sides())) {
                session.update(handles.get(name), told.reading());
            }
        });
        laidOut = next;
    }

    /** Other thresholds apply from here on: nothing that was told of a reading holds. */
    void forgetWhatWasTold() {
        handles.values().forEach(session::delete);
        handles.clear();
        laidOut = Map.of();
    }
}
