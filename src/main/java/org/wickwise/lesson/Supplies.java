package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;

/**
 * Which bottles the eluents of a lesson are poured from, and how much of each.
 *
 * @param parts by what is in the bottle: a solvent, or the blend of a household bottle; in the order of their names
 */
record Supplies(Map<Eluent, List<Drawn>> parts) {

    /** How much of a bottle one use takes of a group, before reserve. */
    record Drawn(LiquidUse use, double millilitresOfAGroup) {}

    static Supplies of(List<LiquidUse> uses, LaidOutLesson laidOut) {
        Map<Eluent, List<Drawn>> parts = new TreeMap<>();
        for (LiquidUse use : uses) {
            Eluent poured = Eluent.of(use.eluent().parts(), List.of());
            if (isOwnBottle(poured, laidOut)) {
                draw(parts, poured, use, 100);
            } else {
                poured.parts().forEach(part -> draw(parts, Eluent.neat(part.solvent()), use, part.percent()));
            }
        }
        return new Supplies(parts);
    }

    private static void draw(Map<Eluent, List<Drawn>> parts, Eluent bottle, LiquidUse use, double percent) {
        parts.computeIfAbsent(bottle, any -> new ArrayList<>())
                .add(new Drawn(use, use.millilitresOfAGroup() * percent / 100));
    }

    /** Whether a household bottle holds just this blend, so that nobody has to mix it. */
    static boolean isOwnBottle(Eluent eluent, LaidOutLesson laidOut) {
        Optional<Bottle> bottle = laidOut.shelf().bottleOf(Eluent.of(eluent.parts(), List.of()));
        return bottle.filter(Bottle::isHouseholdBlend).isPresent();
    }

    /** What a group takes of a bottle, before reserve. */
    double millilitresOfAGroup(Eluent bottle) {
        return parts.get(bottle).stream()
                .mapToDouble(Drawn::millilitresOfAGroup)
                .sum();
    }

    /** What a group takes of each solvent, before reserve; household blends count as their parts. */
    Map<Solvent, Double> millilitresOfAGroupBySolvent() {
        Map<Solvent, Double> solvents = new TreeMap<>(Comparator.comparing(Solvent::name));
        parts.forEach((bottle, drawn) -> bottle.parts()
                .forEach(part -> solvents.merge(
                        part.solvent(), millilitresOfAGroup(bottle) * part.percent() / 100, Double::sum)));
        return solvents;
    }
}
