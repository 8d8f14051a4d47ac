package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Facts and conclusions by the names of their kinds; a kind holds what is of its kinds below, too. */
final class Facts {

    private final Map<String, List<Object>> byType = new HashMap<>();

    Facts(Collection<?> facts) {
        for (Object fact : facts) {
            for (Class<?> type = fact.getClass(); type != null && type != Object.class; type = type.getSuperclass()) {
                byType.computeIfAbsent(type.getSimpleName(), any -> new ArrayList<>())
                        .add(fact);
                for (Class<?> above : type.getInterfaces()) {
                    byType.computeIfAbsent(above.getSimpleName(), any -> new ArrayList<>())
                            .add(fact);
                }
            }
        }
    }

    List<Object> ofType(String type) {
        return byType.getOrDefault(type, List.of());
    }
}
