package org.wickwise.rulebook;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** What was worked out for the last judging, so that it need not be worked out again for the next. */
final class Remembered<K, V> {

    private Map<K, V> before = Map.of();
    private Map<K, V> asked = new HashMap<>();

    /** What nobody asks for between two calls of this is forgotten. */
    void nextJudging() {
        before = asked;
        asked = new HashMap<>();
    }

    V of(K key, Function<K, V> workedOut) {
        V known = asked.get(key);
        if (known == null) {
            known = before.get(key);
            known = known == null ? workedOut.apply(key) : known;
            asked.put(key, known);
        }
        return known;
    }
}
