package org.wickwise.why;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** What has been supposed of a case so far. Confined to one reading. */
final class Supposing {

    /** Where everything that is supposed was said. */
    static final Place SAID = Place.wholeFile("suppose");

    private final SolventData data;
    private final Map<String, Limit> limits;
    private final Problems problems = new Problems();
    private final Set<String> changed = new HashSet<>();
    private Case supposed;

    Supposing(Case written, Map<String, Limit> limits, SolventData data) {
        this.supposed = written;
        this.limits = new LinkedHashMap<>(limits);
        this.data = data;
    }

    SolventData data() {
        return data;
    }

    Case supposed() {
        return supposed;
    }

    Map<String, Limit> limits() {
        return limits;
    }

    void suppose(Case other) {
        supposed = other;
    }

    void suppose(Limit limit) {
        limits.put(limit.name(), limit);
    }

    Problems problems() {
        return problems;
    }

    void cannot(String found, String expected, String wayOut) {
        problems.add(SAID, found, expected, wayOut);
    }

    /** A thing can be supposed one way only. */
    boolean once(String what) {
        if (changed.add(what)) {
            return true;
        }
        cannot(what + " is supposed twice", "each thing once", "leave one of the two out");
        return false;
    }
}
