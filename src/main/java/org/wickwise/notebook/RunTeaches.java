package org.wickwise.notebook;

import java.util.List;
import java.util.Optional;
import org.wickwise.notebook.DyeOutcome.Bound;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.strip.PlaneToColumn;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.StationaryPhase;

/**
 * What a finished column says for the next one on the same stationary phase.
 *
 * @param retentions of each dye in the eluent it left in, in the order of leaving
 * @param plates N that the bed reached; empty where no band has a width
 * @param transfer from strip to column, by the first dye that left; empty where it cannot be reckoned
 * @param isDoubtful whether something went wrong with the run, as the writer says, or more was collected than can have come
 */
public record RunTeaches(
        StationaryPhase phase,
        List<Retention> retentions,
        Optional<Plates> plates,
        Optional<Transfer> transfer,
        boolean isDoubtful) {

    public RunTeaches {
        retentions = List.copyOf(retentions);
    }

    /**
     * k of a dye on the column.
     *
     * @param retentionFactor k, 0 or more
     * @param uncertainty its standard uncertainty
     * @param bound which way the true k may lie, where a part of the band was not collected
     */
    public record Retention(Dye dye, Eluent eluent, double retentionFactor, double uncertainty, Bound bound) {

        /** The Rf that a strip of the same k would show, 1/(1 + k), with u(Rf) = u(k)/(1 + k)^2 (JCGM 100:2008, 5.1.2). */
        public RetardationFactor retardation() {
            double way = 1 + retentionFactor;
            return new RetardationFactor(1 / way, uncertainty / (way * way));
        }
    }

    /** @param bands how many dyes told it */
    public record Plates(double number, double uncertainty, int bands) {}

    /**
     * log10 of k on the column over k on the strip.
     *
     * @param seen as the first dye shows it, with its standard uncertainty
     * @param together with what was to be expected before, an even transfer of the usual scatter: the mean weighted by 1/u^2
     */
    public record Transfer(
            Dye dye, Eluent eluent, double seen, double seenUncertainty, double together, double togetherUncertainty) {

        /** How the next strip becomes a column, for a front that runs with the bulk of the eluent. */
        public PlaneToColumn planeToColumn() {
            return new PlaneToColumn(1, Math.pow(10, together));
        }
    }

    public static RunTeaches of(RunOutcome outcome) {
        List<DyeOutcome> held =
                outcome.inOrder().stream().filter(dye -> dye.held().isPresent()).toList();
        return new RunTeaches(
                outcome.written().column().phase(),
                held.stream()
                        .map(dye -> retention(dye.dye(), dye.held().orElseThrow()))
                        .toList(),
                plates(held.stream().flatMap(dye -> dye.held().stream()).toList()),
                transfer(outcome),
                !outcome.run().wentWrong().isEmpty()
                        || outcome.collectedTooMuch().isPresent());
    }

    private static Retention retention(Dye dye, Held held) {
        return new Retention(dye, held.eluent(), held.retentionFactor(), held.uncertainty(), held.bound());
    }

    /**
     * The geometric mean of what the bands say, since N comes from a square, with its uncertainty widened where the bands
     * disagree by more than their own (Birge, Phys. Rev. 1932, 40, 207).
     */
    private static Optional<Plates> plates(List<Held> held) {
        List<Held> told = held.stream().filter(one -> one.plates().isPresent()).toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        double weights = 0;
        double sum = 0;
        for (Held one : told) {
            double weight = weight(one);
            weights += weight;
            sum += weight * Math.log(one.plates().orElseThrow());
        }
        double mean = sum / weights;
        double chiSquare = told.stream()
                .mapToDouble(one -> weight(one) * Math.pow(Math.log(one.plates().orElseThrow()) - mean, 2))
                .sum();
        double birge = told.size() > 1 ? Math.max(1, Math.sqrt(chiSquare / (told.size() - 1))) : 1;
        double number = Math.exp(mean);
        return Optional.of(new Plates(number, number * birge / Math.sqrt(weights), told.size()));
    }

    private static double weight(Held one) {
        return Math.pow(one.plates().orElseThrow() / one.platesUncertainty(), 2);
    }

    private static Optional<Transfer> transfer(RunOutcome outcome) {
        return outcome.inOrder().stream().findFirst().flatMap(first -> first.held()
                .filter(held ->
                        held.bound() == Bound.ABOUT && held.logTransfer().isPresent())
                .map(held -> transfer(first.dye(), held, outcome.tolerances().transfer())));
    }

    private static Transfer transfer(Dye dye, Held held, double usual) {
        double seen = held.logTransfer().orElseThrow();
        double uncertainty = held.logTransferUncertainty();
        double ofSeen = 1 / (uncertainty * uncertainty);
        double ofUsual = 1 / (usual * usual);
        return new Transfer(
                dye,
                held.eluent(),
                seen,
                uncertainty,
                seen * ofSeen / (ofSeen + ofUsual),
                1 / Math.sqrt(ofSeen + ofUsual));
    }
}
