package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Words;

/**
 * Liquids of which the table lacks a number that the air is judged by. They are no harmless ones, only unknown ones.
 *
 * @param missing by the solvent's name, what the table lacks
 */
record Uncovered(Map<String, List<String>> missing) {

    static Uncovered of(Collection<Solvent> solvents, List<String> exposureLimits) {
        Map<String, List<String>> missing = new TreeMap<>();
        for (Solvent solvent : solvents) {
            List<String> unknown = unknown(solvent, exposureLimits);
            if (!unknown.isEmpty()) {
                missing.put(solvent.name(), unknown);
            }
        }
        return new Uncovered(missing);
    }

    private static List<String> unknown(Solvent solvent, List<String> exposureLimits) {
        if (solvent.number("density").isEmpty() || solvent.number("molar mass").isEmpty()) {
            return List.of("density or molar mass, so it is not reckoned at all");
        }
        List<String> unknown = new ArrayList<>();
        if (!isAbove0(solvent, RoomVapours.LOWER_EXPLOSIVE_LIMIT)) {
            unknown.add(RoomVapours.LOWER_EXPLOSIVE_LIMIT);
        }
        exposureLimits.stream().filter(list -> !isAbove0(solvent, list)).forEach(unknown::add);
        return unknown;
    }

    private static boolean isAbove0(Solvent solvent, String property) {
        return solvent.number(property).orElse(0) > 0;
    }

    boolean isEmpty() {
        return missing.isEmpty();
    }

    /** "A (no lower explosive limit, no OSHA PEL); B (...)". */
    String inDetail() {
        return missing.entrySet().stream()
                .map(entry -> entry.getKey() + " (no " + String.join(", no ", entry.getValue()) + ")")
                .collect(Collectors.joining("; "));
    }

    /** What a sum says that leaves some of them out; empty text where it leaves out none. */
    String leftOut() {
        return isEmpty()
                ? ""
                : " What the table does not know of " + Words.joined(List.copyOf(missing.keySet()))
                        + " comes on top (see not-covered).";
    }
}
