package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.column.Band;
import org.wickwise.column.Pour;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * When each dye of a route leaves, in column volumes from the first drop of the first step.
 *
 * @param poured how much of each step's eluent is poured: until the last band of the step is off
 * @param bands of the dyes that were measured in every eluent poured up to their own
 */
public record Elution(List<Double> poured, Map<Dye, Band> bands) {

    /**
     * A volume to keep, in column volumes from the first drop of the first step.
     *
     * @param dyes what is in it, at least one
     */
    public record Kept(List<Dye> dyes, double from, double to) {

        public Kept {
            dyes = List.copyOf(dyes);
        }
    }

    private static final double ONE_COLUMN_VOLUME = 1;
    private static final double UNMEASURED_COLUMN_VOLUMES = 4;
    private static final double LEAST_COLUMN_VOLUMES = 0.5;

    static Elution of(Route route, Judgement judgement) {
        List<Double> poured = new ArrayList<>();
        Map<Dye, Band> bands = new LinkedHashMap<>();
        for (int i = 0; i < route.steps().size(); i++) {
            Step step = route.steps().get(i);
            double before = poured.stream().mapToDouble(Double::doubleValue).sum();
            double until = before;
            for (Dye dye : step.leaving()) {
                Optional<Band> band = band(dye, route.steps().subList(0, i + 1), poured, judgement);
                band.ifPresent(found -> bands.put(dye, found));
                until = Math.max(until, band.map(Band::toMillilitres).orElse(before + UNMEASURED_COLUMN_VOLUMES));
            }
            poured.add(Math.max(LEAST_COLUMN_VOLUMES, until - before));
        }
        return new Elution(List.copyOf(poured), bands);
    }

    /** Column volumes of the steps before this one, all together; steps are counted from 0. */
    public double pouredBefore(int step) {
        return poured.subList(0, step).stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What goes into flasks of its own, in the order of leaving: the two-sigma window of each band. */
    public List<Kept> kept() {
        return bands.entrySet().stream()
                .map(band -> new Kept(
                        List.of(band.getKey()),
                        band.getValue().fromMillilitres(),
                        band.getValue().toMillilitres()))
                .sorted(Comparator.comparingDouble(Kept::from))
                .toList();
    }

    /** Measured in column volumes, so that one column volume takes the place of a millilitre. */
    private static Optional<Band> band(Dye dye, List<Step> steps, List<Double> poured, Judgement judgement) {
        List<Pour> pours = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Optional<Double> k = retentionFactor(dye, steps.get(i).eluent(), judgement);
            if (k.isEmpty()) {
                return Optional.empty();
            }
            pours.add(new Pour(i < poured.size() ? poured.get(i) : ONE_COLUMN_VOLUME, k.get()));
        }
        return Band.of(pours, ONE_COLUMN_VOLUME, judgement.limit("plates of a hand-packed column"));
    }

    private static Optional<Double> retentionFactor(Dye dye, Eluent eluent, Judgement judgement) {
        return judgement.measured(dye, eluent).map(measured -> measured.retardationFactor()
                .retentionFactor());
    }
}
