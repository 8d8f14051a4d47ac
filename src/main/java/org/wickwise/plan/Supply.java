package org.wickwise.plan;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;

/** Whether the bottles hold enough. Only asked where the column's size and the bottles' amounts are known. */
record Supply(Judgement judgement) {

    /** What one step of a route takes in millilitres. */
    OptionalDouble neededMillilitres(Route route, int step) {
        OptionalDouble columnVolume = judgement.judged().column().columnVolumeMillilitres();
        return columnVolume.isEmpty()
                ? columnVolume
                : OptionalDouble.of(route.elution().poured().get(step) * columnVolume.getAsDouble());
    }

    /** The most that the bottles can give, in column volumes; empty where the column's size or every amount is unknown. */
    OptionalDouble heldColumnVolumes(Eluent eluent) {
        OptionalDouble columnVolume = judgement.judged().column().columnVolumeMillilitres();
        OptionalDouble held = heldMillilitres(eluent);
        return columnVolume.isEmpty() || held.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(held.getAsDouble() / columnVolume.getAsDouble());
    }

    /** What a column volume costs; 0 where the column's size or the price of some bottle is not known. */
    double pricePerColumnVolume(Eluent eluent) {
        OptionalDouble columnVolume = judgement.judged().column().columnVolumeMillilitres();
        boolean everyBottleHasAPrice = !shelf().bottles().isEmpty()
                && shelf().bottles().stream()
                        .allMatch(bottle -> bottle.pricePerLitre().isPresent());
        if (columnVolume.isEmpty() || !everyBottleHasAPrice) {
            return 0;
        }
        return shelf().pricePerLitre(eluent) * columnVolume.getAsDouble() / 1000;
    }

    OptionalDouble heldMillilitres(Eluent eluent) {
        return shelf().millilitresOf(eluent);
    }

    boolean isEnoughFor(Route route, int step) {
        OptionalDouble needed = neededMillilitres(route, step);
        OptionalDouble held = heldMillilitres(route.steps().get(step).eluent());
        return needed.isEmpty() || held.isEmpty() || needed.getAsDouble() <= held.getAsDouble();
    }

    /** What the whole plan takes of each solvent in millilitres, packing and loading included. */
    Map<Solvent, Double> neededInAll(Route route) {
        return inAll(route, route.elution().poured());
    }

    /** What is to be kept ready for it, so that it is enough where the bands come late. */
    Map<Solvent, Double> readyInAll(Route route) {
        return inAll(route, Ranges.of(route, judgement).ready());
    }

    private Map<Solvent, Double> inAll(Route route, List<Double> columnVolumes) {
        Map<Solvent, Double> all = new TreeMap<>(java.util.Comparator.comparing(Solvent::name));
        judgement.judged().column().columnVolumeMillilitres().ifPresent(one -> {
            for (int i = 0; i < route.steps().size(); i++) {
                add(all, route.steps().get(i).eluent(), columnVolumes.get(i) * one);
            }
            add(all, route.packing().packing(), one * judgement.limit("packing and loading"));
        });
        return all;
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
