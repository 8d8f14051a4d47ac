package org.wickwise.plan;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;

/** Whether the bottles hold enough. Only asked where the column's size and the bottles' amounts are known. */
record Supply(Judgement judgement) {

    /** What a step takes in millilitres until the tail of its last band is off: V0/Rf (1 + 2/sqrt(N)). */
    OptionalDouble neededMillilitres(Step step) {
        OptionalDouble columnVolume = judgement.judged().column().columnVolumeMillilitres();
        if (columnVolume.isEmpty()) {
            return columnVolume;
        }
        double tail = 1 + 2 / Math.sqrt(judgement.limit("plates of a hand-packed column"));
        double columnVolumes = tail * Criterion.latest(step.leaving(), step.eluent(), judgement);
        return OptionalDouble.of(columnVolumes * columnVolume.getAsDouble());
    }

    OptionalDouble heldMillilitres(Eluent eluent) {
        return shelf().millilitresOf(eluent);
    }

    boolean isEnoughFor(Step step) {
        OptionalDouble needed = neededMillilitres(step);
        OptionalDouble held = heldMillilitres(step.eluent());
        return needed.isEmpty() || held.isEmpty() || needed.getAsDouble() <= held.getAsDouble();
    }

    /** What the whole plan takes of each solvent in millilitres, packing and loading included. */
    Map<Solvent, Double> neededInAll(Route route, Eluent packing) {
        Map<Solvent, Double> needed = new TreeMap<>(java.util.Comparator.comparing(Solvent::name));
        route.steps().forEach(step -> neededMillilitres(step).ifPresent(all -> add(needed, step.eluent(), all)));
        judgement
                .judged()
                .column()
                .columnVolumeMillilitres()
                .ifPresent(one -> add(needed, packing, one * judgement.limit("packing and loading")));
        return needed;
    }

    private Shelf shelf() {
        return judgement.judged().shelf();
    }

    private void add(Map<Solvent, Double> needed, Eluent eluent, double millilitres) {
        if (shelf().bottleOf(eluent).filter(bottle -> bottle.isHouseholdBlend()).isEmpty()) {
            eluent.parts()
                    .forEach(part -> needed.merge(part.solvent(), millilitres * part.percent() / 100, Double::sum));
        }
    }
}
