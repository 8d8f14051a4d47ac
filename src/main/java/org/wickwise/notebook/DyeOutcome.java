package org.wickwise.notebook;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.strip.RetardationFactor;
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
 * @param wasToStay whether by the strips it stays where it is in the last eluent poured
 */
public record DyeOutcome(
        Dye dye,
        Optional<Predicted> predicted,
        Optional<CollectedBand> observed,
        boolean byAbsorbance,
        Optional<Held> held,
        Optional<Balance> balance,
        boolean stuck,
        boolean wasToStay) {

    private static final double COVERAGE = 2;

    /**
     * The band to be expected from the strips for what was really poured.
     *
     * @param open how far its middle may lie elsewhere
     * @param earliestMillilitres where the middle may lie at the earliest, the low end of a 95 % interval of the volume
     *     behind one column volume, taken in logarithms because k may be uncertain by a factor
     * @param eluent in which it was to leave
     */
    public record Predicted(Band band, Open open, double earliestMillilitres, Eluent eluent) {

        /** Standard uncertainty of its middle in millilitres. */
        public double middleUncertainty() {
            return open.all();
        }

        /**
         * Whether the 95 % interval of its middle begins behind one column volume, before which nothing can come.
         *
         * @param columnVolume in millilitres
         */
        public boolean isWellKnown(double columnVolume) {
            return band.middleMillilitres() - COVERAGE * open.all() > columnVolume;
        }
    }

    /**
     * What leaves a middle open, standard uncertainties in millilitres.
     *
     * @param strips of Rf on the strips
     * @param transfer of the way from strip to column
     * @param columnVolume of the liquid in the bed
     */
    public record Open(double strips, double transfer, double columnVolume) {

        /** All of it (JCGM 100:2008, 5.1.2). */
        public double all() {
            return Math.hypot(strips, Math.hypot(transfer, columnVolume));
        }
    }

    /**
     * k on the column.
     *
     * @param eluent in which the middle of the band left
     * @param retentionFactor k
     * @param uncertainty its standard uncertainty
     * @param strip Rf on the strip in the same eluent; empty where no strip was run
     * @param bound which way the true k may lie, where a part of the band was not collected
     * @param plates N that the width of the band stands for; empty where there is no width
     * @param platesUncertainty standard uncertainty of N; 0 where there is none
     */
    public record Held(
            Eluent eluent,
            double retentionFactor,
            double uncertainty,
            Optional<RetardationFactor> strip,
            Bound bound,
            OptionalDouble plates,
            double platesUncertainty) {

        /** Rf on the strip where it gives k with an even interval. */
        private Optional<RetardationFactor> middleOfTheStrip() {
            return strip.filter(RetardationFactor::isFarFromBothEnds);
        }

        /** log10 of k on the column over k on the strip; empty where the strip gives bounds of k only, or k is not above 0. */
        public OptionalDouble logTransfer() {
            return middleOfTheStrip().isPresent() && retentionFactor > 0
                    ? OptionalDouble.of(Math.log10(
                            retentionFactor / middleOfTheStrip().get().retentionFactor()))
                    : OptionalDouble.empty();
        }

        /** Standard uncertainty of {@link #logTransfer} (JCGM 100:2008, 5.1.2). */
        public double logTransferUncertainty() {
            double ofStrip = middleOfTheStrip()
                    .map(found -> found.retentionUncertainty() / found.retentionFactor())
                    .orElse(0.0);
            return Math.hypot(uncertainty / retentionFactor, ofStrip) / Math.log(10);
        }

        /**
         * How many times as much the column held the dye as the strip allows, where the strip gives bounds of k only: from the
         * nearer ends of both 95 % intervals, so below 1 it is at most that, above 1 at least. Empty where the intervals meet.
         */
        public OptionalDouble timesTheBound() {
            if (strip.isEmpty() || strip.get().isFarFromBothEnds()) {
                return OptionalDouble.empty();
            }
            double most = retentionFactor + COVERAGE * uncertainty;
            double least = retentionFactor - COVERAGE * uncertainty;
            double leastOnStrip = 1 / strip.get().highest() - 1;
            double lowest = strip.get().lowest();
            boolean isMore = lowest > 0 && lowest < 1 && least > 1 / lowest - 1;
            if (most > 0 && most < leastOnStrip) {
                return OptionalDouble.of(most / leastOnStrip);
            }
            return isMore ? OptionalDouble.of(least / (1 / lowest - 1)) : OptionalDouble.empty();
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

    /** The Gaussian band that came; empty where it came anywhere, or has no width. */
    public Optional<Band> band() {
        return observed.filter(band -> !cameAnywhere()).flatMap(CollectedBand::band);
    }

    DyeOutcome with(Optional<Held> found) {
        return new DyeOutcome(dye, predicted, observed, byAbsorbance, found, balance, stuck, wasToStay);
    }

    /**
     * Whether it came, but nobody can say when: in one fraction that is all there is, or by eye from the first fraction to
     * the last.
     */
    public boolean cameAnywhere() {
        return observed.filter(band -> band.inTheFirst()
                        && band.inTheLast()
                        && (!byAbsorbance || band.sigmaMillilitres().isEmpty()))
                .isPresent();
    }

    /** How much later than expected the middle came, in millilitres; below 0 when earlier. Empty where it came anywhere. */
    public OptionalDouble lateMillilitres() {
        return predicted.isPresent() && observed.isPresent() && !cameAnywhere()
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
