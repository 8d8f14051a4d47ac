package org.wickwise.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.BandOnBed;
import org.wickwise.column.LoadPlug;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** How the load stands on the bed before the first eluent is poured, where its volume is written and the bed's size known. */
record Loading(Judgement judgement) {

    private static final double ONE_COLUMN_VOLUME = 1;

    /**
     * What a load fills of the bed at most.
     *
     * @param leastHeld the dye that it carries furthest, by the high end of its Rf
     * @param millilitres of the load
     * @param shareOfBed may be above 1
     */
    record Plug(Movement leastHeld, double millilitres, double shareOfBed) {}

    /** The band of a dye loaded in this; a thin one where nothing says how wide it is. */
    BandOnBed band(Dye dye, Eluent packing) {
        OptionalDouble load = columnVolumes();
        Optional<RetardationFactor> known = judgement.retardation(dye, packing);
        return load.isEmpty() || known.isEmpty()
                ? BandOnBed.loaded()
                : BandOnBed.loadedIn(
                        load.getAsDouble(), known.get().retentionFactor(), ONE_COLUMN_VOLUME, plates(judgement));
    }

    /** Empty where volume, bed or what some dye does in the liquid of the load is not known. */
    Optional<Plug> plug(Eluent packing) {
        List<Dye> dyes = judgement.judged().dyes();
        Optional<Movement> leastHeld = dyes.stream()
                .flatMap(dye -> judgement.movement(dye, packing).stream())
                .filter(movement -> movement.retardation().isPresent())
                .max(Comparator.comparingDouble(Loading::highest).thenComparing(Movement::dye));
        boolean allKnown = dyes.stream()
                .allMatch(dye -> judgement.retardation(dye, packing).isPresent());
        OptionalDouble load = columnVolumes();
        if (leastHeld.isEmpty() || !allKnown || load.isEmpty()) {
            return Optional.empty();
        }
        double highest = highest(leastHeld.get());
        double share = LoadPlug.of(load.getAsDouble(), ONE_COLUMN_VOLUME, (1 - highest) / highest)
                .shareOfBed();
        return Optional.of(new Plug(
                leastHeld.get(), judgement.judged().load().millilitres().getAsDouble(), share));
    }

    /** Whether it fills more of the bed than the limit allows. */
    boolean isWide(Plug plug) {
        return Numbers.steady(100 * plug.shareOfBed()) > judgement.limit("widest load");
    }

    /** The high end of a dye's Rf: the careful end for what is to be held. */
    static double highest(Movement movement) {
        return movement.retardation().orElseThrow().highest();
    }

    /** The writer's own figure, or the limit. */
    static double plates(Judgement judgement) {
        return judgement.judged().column().setup().plates().orElse(judgement.limit("plates of a hand-packed column"));
    }

    private OptionalDouble columnVolumes() {
        OptionalDouble load = judgement.judged().load().millilitres();
        OptionalDouble one = judgement.judged().column().columnVolumeMillilitres();
        return load.isEmpty() || one.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(load.getAsDouble() / one.getAsDouble());
    }
}
