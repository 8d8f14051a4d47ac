package org.wickwise.reason;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The reasons under a statement by how many steps they lie below it, each once, at the least depth. */
public final class Levels {

    private Levels() {}

    /** From the statement itself, at depth 0, downwards; within a level in the order of the grounds. */
    public static Map<Reason, Integer> of(Reason statement) {
        Map<Reason, Integer> depths = new LinkedHashMap<>();
        depths.put(statement, 0);
        List<Reason> level = List.of(statement);
        for (int depth = 1; !level.isEmpty(); depth++) {
            List<Reason> next = new ArrayList<>();
            for (Reason reason : level) {
                for (Reason ground : reason.grounds()) {
                    if (depths.putIfAbsent(ground, depth) == null) {
                        next.add(ground);
                    }
                }
            }
            level = next;
        }
        return depths;
    }
}
