package org.wickwise.notebook;

import java.util.function.ToDoubleFunction;

/**
 * How surely the things of a run are known; from the limits of the rule book.
 *
 * @param plates N to be expected of the bed
 * @param volume standard uncertainty of a collected volume, as a share of it
 * @param columnVolume standard uncertainty of the liquid in the bed, as a share of it
 * @param transfer standard uncertainty of log10 k on the column, given k on the strip
 * @param absorbance standard uncertainty of an absorbance as read
 * @param mass standard uncertainty of a dry mass, as a share of it
 */
public record RunTolerances(
        double plates, double volume, double columnVolume, double transfer, double absorbance, double mass) {

    private static final double PER_CENT = 100;

    /** @param limit the value of a limit by its name */
    public static RunTolerances of(ToDoubleFunction<String> limit) {
        return new RunTolerances(
                limit.applyAsDouble("plates of a hand-packed column"),
                limit.applyAsDouble("uncertainty of a collected volume") / PER_CENT,
                limit.applyAsDouble("uncertainty of a column volume") / PER_CENT,
                limit.applyAsDouble("scatter of the transfer to a column"),
                limit.applyAsDouble("uncertainty of an absorbance"),
                limit.applyAsDouble("uncertainty of a dry mass") / PER_CENT);
    }

    /** The same for a bed whose plates were measured. */
    RunTolerances withPlates(double measured) {
        return new RunTolerances(measured, volume, columnVolume, transfer, absorbance, mass);
    }
}
