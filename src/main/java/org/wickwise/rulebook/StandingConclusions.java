package org.wickwise.rulebook;

import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;

/** Keeps account of the conclusions that hold while rules fire. Confined to one judging. */
final class StandingConclusions extends DefaultRuleRuntimeEventListener {

    private final Set<Conclusion> standing = new HashSet<>();

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
        if (event.getObject() instanceof Conclusion conclusion) {
            standing.add(conclusion);
        }
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
        if (event.getOldObject() instanceof Conclusion conclusion) {
            standing.remove(conclusion);
        }
    }

    /** What holds, and goes on being what holds while rules fire. */
    Set<Conclusion> now() {
        return Collections.unmodifiableSet(standing);
    }
}
