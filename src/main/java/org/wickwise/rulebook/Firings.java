package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.rule.Match;

/** Notes, while rules fire, which rule concluded what from which facts. Confined to one judging. */
public final class Firings extends DefaultAgendaEventListener {

    private final Map<Conclusion, List<Firing>> byConclusion = new LinkedHashMap<>();
    private Match current;
    private boolean stopped;

    /**
     * @param thenIndex which of the rule's conclusions it was, from 0
     * @param bindings what each letter of the rule stands for
     * @param matched the facts and conclusions that met the rule's conditions
     */
    record Firing(String ruleId, int thenIndex, Map<String, Object> bindings, List<Object> matched) {}

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
        current = event.getMatch();
    }

    /**
     * Called by every rule for each of its conclusions.
     *
     * @param thenIndex which of the rule's conclusions it is, from 0
     */
    public void record(Conclusion conclusion, int thenIndex) {
        if (stopped) {
            return;
        }
        Map<String, Object> bindings = new LinkedHashMap<>();
        for (String declaration : current.getDeclarationIds()) {
            bindings.put(declaration, current.getDeclarationValue(declaration));
        }
        List<Object> matched =
                current.getObjects().stream().flatMap(Firings::flattened).toList();
        byConclusion
                .computeIfAbsent(conclusion, any -> new ArrayList<>())
                .add(new Firing(current.getRule().getName(), thenIndex, bindings, matched));
    }

    /** Notes nothing from here on. */
    void stop() {
        stopped = true;
    }

    List<Firing> of(Conclusion conclusion) {
        return byConclusion.getOrDefault(conclusion, List.of());
    }

    private static Stream<Object> flattened(Object matched) {
        return matched instanceof Collection<?> several ? several.stream().map(Object.class::cast) : Stream.of(matched);
    }
}
