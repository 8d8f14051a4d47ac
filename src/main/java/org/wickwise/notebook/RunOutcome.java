package org.wickwise.notebook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.wickwise.bench.Case;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand.Portion;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * A finished column beside what the strips let one expect of it, dye by dye. Bands are reckoned for what was really poured
 * ({@link Band#of}). k on the column follows from the middle of a band: while an eluent is poured, a dye moves the share
 * dV/(V0 k) of the bed, so k = (V_R - V0 - what was poured before)/(V0 (1 - x)), where x is the share of the bed it had behind it
 * by then (fundamental equation of gradient elution; Jandera and Churacek, Gradient Elution in Column Liquid Chromatography,
 * 1985).
 *
 * @param columnVolume the liquid in the bed in millilitres; empty where the bed's size is not known
 * @param dyes in the order of their names
 */
public record RunOutcome(
        Case written, ColumnRun run, RunTolerances tolerances, OptionalDouble columnVolume, List<DyeOutcome> dyes) {

    public RunOutcome {
        dyes = List.copyOf(dyes);
    }

    /**
     * @param written the case whose column was run
     * @param usual what is known of runs in general
     * @param strips Rf of a dye in an eluent, empty where no strip tells
     */
    public static RunOutcome of(
            Case written,
            ColumnRun run,
            RunTolerances usual,
            BiFunction<Dye, Eluent, Optional<RetardationFactor>> strips) {
        OptionalDouble plates = written.column().setup().plates();
        RunTolerances tolerances = plates.isPresent() ? usual.withPlates(plates.getAsDouble()) : usual;
        OptionalDouble columnVolume = written.column().columnVolumeMillilitres();
        List<DyeOutcome> dyes = written.dyes().stream()
                .map(dye -> new OutcomeOfDye(dye, run, tolerances, columnVolume, eluent -> strips.apply(dye, eluent))
                        .outcome())
                .toList();
        return new RunOutcome(written, run, tolerances, columnVolume, dyes);
    }

    /** The outcome of one dye of the mixture. */
    public DyeOutcome of(Dye dye) {
        return dyes.stream()
                .filter(known -> known.dye().equals(dye))
                .findFirst()
                .orElseThrow();
    }

    /** The dyes that came out, in the order of their middles. */
    public List<DyeOutcome> inOrder() {
        return dyes.stream()
                .filter(dye -> dye.observed().isPresent())
                .sorted(Comparator.comparingDouble(
                        dye -> dye.observed().orElseThrow().middleMillilitres()))
                .toList();
    }

    /** What a fraction holds of a dye, as absorbance times millilitres, with its uncertainty; 0 where nobody saw it. */
    public static Portion portion(Fraction fraction, Dye dye, RunTolerances tolerances) {
        double amount = fraction.absorbed(dye).orElse(0);
        double reading = tolerances.absorbance() * fraction.diluted() * fraction.millilitres();
        double uncertainty = fraction.absorbed(dye).isPresent() ? Math.hypot(reading, amount * tolerances.volume()) : 0;
        return new Portion(fraction.fromMillilitres(), fraction.toMillilitres(), amount, uncertainty);
    }
}
