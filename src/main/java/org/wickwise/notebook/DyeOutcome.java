package org.wickwise.notebook;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * What became of one dye on a finished column, beside what was to be expected.
 *
 * @param predicted empty where an eluent poured up to the dye was on no strip, or the bed's size is not known
 * @param observed empty where no fraction shows the dye
 * @param byAbsorbance whether the observed band comes from absorbances, and not from the eye
 * @param held empty where it cannot be reckoned
 * @param balance empty where nobody read absorbances of this dye
 * @param stuck whether it is still seen on the bed
 */
public record DyeOutcome(
        Dye dye,
        Optional<Predicted> predicted,
        Optional<CollectedBand> observed,
        boolean byAbsorbance,
        Optional<Held> held,
        Optional<Balance> balance,
        boolean stuck) {

    /**
     * The band to be expected from the strips for what was really poured.
     *
     * @param middleUncertainty standard uncertainty of its middle in millilitres: of the strips, of the liquid in the bed,
     *     and of the transfer from strip to column
     * @param eluent in which it was to leave
     */
    public record Predicted(Band band, double middleUncertainty, Eluent eluent) {}

    /**
     * k on the column.
     *
     * @param eluent in which the middle of the band left
     * @param retentionFactor k
     * @param uncertainty its standard uncertainty
     * @param onStrip k on the strip in the same eluent; empty where no strip tells
     * @param onStripUncertainty standard uncertainty of k on the strip; 0 where there is none
     * @param bound which way the true k may lie, where a part of the band was not collected
     * @param plates N that the width of the band stands for; empty where there is no width
     * @param platesUncertainty standard uncertainty of N; 0 where there is none
     */
    public record Held(
            Eluent eluent,
            double retentionFactor,
            double uncertainty,
            OptionalDouble onStrip,
            double onStripUncertainty,
            Bound bound,
            OptionalDouble plates,
            double platesUncertainty) {

        /** log10 of k on the column over k on the strip; empty where one of them is not above 0. */
        public OptionalDouble logTransfer() {
            return onStrip.isPresent() && onStrip.getAsDouble() > 0 && retentionFactor > 0
                    ? OptionalDouble.of(Math.log10(retentionFactor / onStrip.getAsDouble()))
                    : OptionalDouble.empty();
        }

        /** Standard uncertainty of {@link #logTransfer} (JCGM 100:2008, 5.1.2). */
        public double logTransferUncertainty() {
            return Math.hypot(uncertainty / retentionFactor, onStripUncertainty / onStrip.orElse(1)) / Math.log(10);
        }
    }

    /** How a value stands to the true one. */
    public enum Bound {
        ABOUT,
        AT_LEAST,
        AT_MOST
    }

    /**
     * What was found of the dye, in absorbance times millilitres.
     *
     * @param loaded what was loaded; empty where the load was not read
     */
    public record Balance(double collected, double uncertainty, OptionalDouble loaded, double loadedUncertainty) {

        /** Share of the load that was collected; may come out a little above 1. Empty where the load was not read. */
        public OptionalDouble recovery() {
            return loaded.isPresent() ? OptionalDouble.of(collected / loaded.getAsDouble()) : OptionalDouble.empty();
        }

        /** Standard uncertainty of the recovery (JCGM 100:2008, 5.1.2). */
        public double recoveryUncertainty() {
            return shareUncertainty(collected, uncertainty);
        }

        /** Standard uncertainty of some part of the dye as a share of the load. */
        public double shareUncertainty(double part, double partUncertainty) {
            double load = loaded.orElse(collected);
            return Math.hypot(partUncertainty / load, part / load * loadedUncertainty / load);
        }
    }

    /** How much later than expected the middle came, in millilitres; below 0 when earlier. */
    public OptionalDouble lateMillilitres() {
        return predicted.isPresent() && observed.isPresent()
                ? OptionalDouble.of(observed.get().middleMillilitres()
                        - predicted.get().band().middleMillilitres())
                : OptionalDouble.empty();
    }

    /** How many times as wide as expected it came. */
    public OptionalDouble timesAsWide() {
        return predicted.isPresent()
                        && observed.isPresent()
                        && observed.get().sigmaMillilitres().isPresent()
                ? OptionalDouble.of(observed.get().sigmaMillilitres().getAsDouble()
                        / predicted.get().band().sigmaMillilitres())
                : OptionalDouble.empty();
    }
}
