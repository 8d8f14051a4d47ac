package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.wickwise.column.Band;
import org.wickwise.column.BandOnBed;
import org.wickwise.column.CollectedBand;
import org.wickwise.column.CollectedBand.Portion;
import org.wickwise.column.Pour;
import org.wickwise.notebook.DyeOutcome.Balance;
import org.wickwise.notebook.DyeOutcome.Bound;
import org.wickwise.notebook.DyeOutcome.Held;
import org.wickwise.notebook.DyeOutcome.Predicted;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * Reckons how one dye of a finished column came off, beside what the strips let one expect of it; the formulas are those of
 * {@link RunOutcome}.
 *
 * @param columnVolume the liquid in the bed in millilitres; empty where the bed's size is not known
 * @param strips Rf of the dye in an eluent, empty where no strip tells
 */
record OutcomeOfDye(
        Dye dye,
        ColumnRun run,
        RunTolerances tolerances,
        OptionalDouble columnVolume,
        Function<Eluent, Optional<RetardationFactor>> strips) {

    /** As many standard uncertainties leave 2 or 3 in 100 on either side. */
    private static final double SURELY = 2;

    /** The share of the bed behind a band beyond which the rest is too short to divide by. */
    private static final double NEARLY_OUT = 0.99;

    DyeOutcome outcome() {
        boolean byAbsorbance = isReadThroughout();
        Optional<CollectedBand> observed = (byAbsorbance ? absorbed() : seen()).map(this::withVolumes);
        return new DyeOutcome(
                dye,
                predicted(),
                observed,
                byAbsorbance,
                observed.flatMap(this::held),
                balance(),
                run.stuck().contains(dye));
    }

    /** Whether the absorbance was read wherever the dye was seen, so that the amounts tell the whole band. */
    private boolean isReadThroughout() {
        return run.fractions().stream()
                        .anyMatch(fraction -> fraction.absorbed(dye).isPresent())
                && run.fractions().stream()
                        .filter(fraction -> fraction.shows(dye))
                        .allMatch(fraction -> fraction.absorbed(dye).isPresent());
    }

    private Optional<CollectedBand> absorbed() {
        return CollectedBand.ofAmounts(run.fractions().stream()
                .map(fraction -> RunOutcome.portion(fraction, dye, tolerances))
                .toList());
    }

    private Optional<CollectedBand> seen() {
        List<Fraction> showing =
                run.fractions().stream().filter(fraction -> fraction.shows(dye)).toList();
        if (showing.isEmpty()) {
            return Optional.empty();
        }
        Fraction first = showing.get(0);
        Fraction last = showing.get(showing.size() - 1);
        return Optional.of(CollectedBand.seen(
                RunOutcome.portion(first, dye, tolerances),
                RunOutcome.portion(last, dye, tolerances),
                first.number() == 1,
                last.number() == run.fractions().size()));
    }

    /** The same with the uncertainty of the volumes measured up to its middle. */
    private CollectedBand withVolumes(CollectedBand band) {
        double squares = run.fractions().stream()
                .filter(fraction -> fraction.fromMillilitres() < band.middleMillilitres())
                .mapToDouble(fraction -> Math.pow(tolerances.volume() * fraction.millilitres(), 2))
                .sum();
        return new CollectedBand(
                band.middleMillilitres(),
                Math.hypot(band.middleUncertainty(), Math.sqrt(squares)),
                band.sigmaMillilitres(),
                band.sigmaUncertainty(),
                band.fromMillilitres(),
                band.toMillilitres(),
                band.inTheFirst(),
                band.inTheLast());
    }

    private Optional<Balance> balance() {
        if (!isReadThroughout()) {
            return Optional.empty();
        }
        double collected = 0;
        double squares = 0;
        for (Fraction fraction : run.fractions()) {
            Portion portion = RunOutcome.portion(fraction, dye, tolerances);
            collected += portion.amount();
            squares += portion.uncertainty() * portion.uncertainty();
        }
        OptionalDouble loaded = run.load().map(load -> load.absorbed(dye)).orElse(OptionalDouble.empty());
        double loadedUncertainty = loaded.isEmpty()
                ? 0
                : Math.hypot(
                        tolerances.absorbance()
                                * run.load().orElseThrow().diluted()
                                * run.load().orElseThrow().millilitres(),
                        loaded.getAsDouble() * tolerances.volume());
        boolean isLoaded = loaded.isPresent() && loaded.getAsDouble() > 0;
        return Optional.of(new Balance(
                collected,
                Math.sqrt(squares),
                isLoaded ? loaded : OptionalDouble.empty(),
                isLoaded ? loadedUncertainty : 0));
    }

    private Optional<Predicted> predicted() {
        if (columnVolume.isEmpty()) {
            return Optional.empty();
        }
        double volume = columnVolume.getAsDouble();
        List<RetardationFactor> known = new ArrayList<>();
        for (Poured poured : run.poured()) {
            Optional<RetardationFactor> there = strips.apply(poured.eluent());
            if (there.isEmpty()) {
                break;
            }
            known.add(there.get());
        }
        Optional<Band> band = band(known, 1, volume);
        if (band.isEmpty() || leavesIn(band.get(), volume) >= known.size()) {
            return Optional.empty();
        }
        double middle = band.get().middleMillilitres();
        double squares = square(middle, band(known, 1, volume * (1 + tolerances.columnVolume())))
                + square(middle, band(known, Math.pow(10, tolerances.transfer()), volume));
        for (int i = 0; i < known.size(); i++) {
            List<RetardationFactor> other = new ArrayList<>(known);
            double raised = Math.min(1, known.get(i).value() + known.get(i).uncertainty());
            other.set(i, new RetardationFactor(raised, known.get(i).uncertainty()));
            squares += square(middle, band(other, 1, volume));
        }
        return Optional.of(new Predicted(
                band.get(),
                Math.sqrt(squares),
                run.poured().get(leavesIn(band.get(), volume)).eluent()));
    }

    private static double square(double middle, Optional<Band> other) {
        return other.map(found -> Math.pow(found.middleMillilitres() - middle, 2))
                .orElse(0.0);
    }

    private Optional<Band> band(List<RetardationFactor> known, double transfer, double volume) {
        List<Pour> pours = new ArrayList<>();
        for (int i = 0; i < known.size(); i++) {
            pours.add(new Pour(
                    run.poured().get(i).millilitres(), transfer * known.get(i).retentionFactor()));
        }
        return Band.of(pours, volume, tolerances.plates());
    }

    /** The pour whose eluent the middle of a band left in; where it left behind the last, that one. */
    private int leavesIn(Band band, double volume) {
        return pourAt(band.middleMillilitres() - volume);
    }

    private int pourAt(double inlet) {
        int pour = 0;
        while (pour + 1 < run.poured().size() && inlet > run.pouredBefore(pour + 1)) {
            pour++;
        }
        return pour;
    }

    private Optional<Held> held(CollectedBand band) {
        if (columnVolume.isEmpty()) {
            return Optional.empty();
        }
        double volume = columnVolume.getAsDouble();
        int pour = pourAt(band.middleMillilitres() - volume);
        Optional<BandOnBed> before = before(pour, volume, 0);
        if (isNearAChange(band, pour, volume)
                || before.isEmpty()
                || before.get().position() >= 1) {
            return Optional.empty();
        }
        double k = retention(band.middleMillilitres(), volume, before.get().position(), pour);
        double ofVolume = volume * (1 + tolerances.columnVolume());
        double uncertainty = Math.hypot(
                retention(
                                band.middleMillilitres() + band.middleUncertainty(),
                                volume,
                                before.get().position(),
                                pour)
                        - k,
                retention(
                                band.middleMillilitres(),
                                ofVolume,
                                before(pour, ofVolume, 0).orElseThrow().position(),
                                pour)
                        - k);
        double further = before(pour, volume, 1).orElseThrow().position();
        uncertainty = Math.hypot(uncertainty, retention(band.middleMillilitres(), volume, further, pour) - k);
        Eluent eluent = run.poured().get(pour).eluent();
        Optional<RetardationFactor> strip = strips.apply(eluent).filter(RetardationFactor::isFarFromBothEnds);
        OptionalDouble plates = k > 0 ? plates(band, before.get(), k, volume) : OptionalDouble.empty();
        return Optional.of(new Held(
                eluent,
                Math.max(0, k),
                uncertainty,
                strip.map(found -> OptionalDouble.of(found.retentionFactor())).orElse(OptionalDouble.empty()),
                strip.map(RetardationFactor::retentionUncertainty).orElse(0.0),
                band.inTheLast() ? Bound.AT_LEAST : band.inTheFirst() ? Bound.AT_MOST : Bound.ABOUT,
                plates,
                plates.isEmpty() ? 0 : platesUncertainty(band, plates.getAsDouble(), k, uncertainty)));
    }

    /** Whether the middle came so near to a change of eluent that nobody can say in which of the two it left. */
    private boolean isNearAChange(CollectedBand band, int pour, double volume) {
        double inlet = band.middleMillilitres() - volume;
        double doubt = SURELY * Math.hypot(band.middleUncertainty(), volume * tolerances.columnVolume());
        boolean isFirst = pour == 0;
        boolean isLast = pour + 1 == run.poured().size();
        return !isFirst && inlet - run.pouredBefore(pour) < doubt
                || !isLast && run.pouredBefore(pour + 1) - inlet < doubt;
    }

    private double retention(double middle, double volume, double position, int pour) {
        return (middle - volume - run.pouredBefore(pour)) / (volume * (1 - Math.min(position, NEARLY_OUT)));
    }

    /**
     * Where the band stands when this pour begins; empty where an eluent before it was on no strip.
     *
     * @param timesUncertainty how many standard uncertainties further than read the dye ran on the strips
     */
    private Optional<BandOnBed> before(int pour, double volume, double timesUncertainty) {
        BandOnBed bed = BandOnBed.loaded();
        for (int i = 0; i < pour; i++) {
            Optional<RetardationFactor> strip = strips.apply(run.poured().get(i).eluent());
            if (strip.isEmpty()) {
                return Optional.empty();
            }
            double value = Math.min(
                    1, strip.get().value() + timesUncertainty * strip.get().uncertainty());
            double k = value == 0 ? Double.POSITIVE_INFINITY : (1 - value) / value;
            bed = bed.after(new Pour(run.poured().get(i).millilitres(), k), volume, tolerances.plates());
        }
        return Optional.of(bed);
    }

    /** N = (V0 (1 + k)/sigma)^2 times the way in plates: the variance along the bed holds 1/N for each share of it. */
    private OptionalDouble plates(CollectedBand band, BandOnBed before, double k, double volume) {
        if (band.sigmaMillilitres().isEmpty() || band.isCut()) {
            return OptionalDouble.empty();
        }
        double squeezed = Math.pow(BandOnBed.compression(before.retentionFactor(), k), 2);
        double way = before.variance() * tolerances.plates() * squeezed + 1 - before.position();
        double widths = volume * (1 + k) / band.sigmaMillilitres().getAsDouble();
        return OptionalDouble.of(widths * widths * way);
    }

    /** u(N)/N = 2 u(sigma)/sigma with 2 u(1 + k)/(1 + k) (JCGM 100:2008, 5.1.2). */
    private static double platesUncertainty(CollectedBand band, double plates, double k, double uncertaintyOfK) {
        double ofSigma = band.sigmaUncertainty() / band.sigmaMillilitres().orElseThrow();
        return 2 * plates * Math.hypot(ofSigma, uncertaintyOfK / (1 + k));
    }
}
