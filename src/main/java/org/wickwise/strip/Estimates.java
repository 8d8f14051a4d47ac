package org.wickwise.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Estimate.AtLeast;
import org.wickwise.strip.Estimate.AtMost;
import org.wickwise.strip.Estimate.NotReckoned;
import org.wickwise.strip.Estimate.Reckoned;
import org.wickwise.strip.RetentionScale.Position;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;

/**
 * What the strips of one case let one reckon for eluents that nobody ran. A number is given only between the eluents
 * that were run, on a stationary phase whose law of retention is known, for dyes without charge; everything else is
 * refused in words.
 */
public final class Estimates {

    private static final Set<DyeClass> CHARGED = Set.of(DyeClass.CATIONIC, DyeClass.ANIONIC, DyeClass.AMPHOTERIC);
    private static final double COVERAGE = 2;

    private final List<Movement.Measured> measured;
    private final StationaryPhase phase;
    private final RetentionScales scales;
    private final Allowances allowances;

    /**
     * How far the model is trusted.
     *
     * @param scatterOfOnePair standard deviation of the blends of one pair of solvents about their line, in RM, above 0
     * @param scatterAcrossSolvents the same where a line runs across different solvents by their table strengths
     * @param reachBeyond how far beyond the strips a line may be followed, as a share of the span they cover
     * @param partingGap two dyes this far apart in Rf are parted
     * @param touchingGap when their true gap is above this
     * @param surenessOfParting with at least this chance, 0 to 1
     * @param reasons where scatter and reach come from
     */
    public record Allowances(
            double scatterOfOnePair,
            double scatterAcrossSolvents,
            double reachBeyond,
            double partingGap,
            double touchingGap,
            double surenessOfParting,
            List<Reason> reasons) {

        double scatter(RetentionScale scale) {
            return scale.onePair() ? scatterOfOnePair : scatterAcrossSolvents;
        }
    }

    private Estimates(List<Movement.Measured> measured, StationaryPhase phase, Allowances allowances) {
        this.measured = measured;
        this.phase = phase;
        this.scales = new RetentionScales(phase);
        this.allowances = allowances;
    }

    /**
     * @param measured what the strips say; those on other stationary phases are left out
     * @param phase of the column
     */
    public static Estimates of(List<Movement.Measured> measured, StationaryPhase phase, Allowances allowances) {
        List<Movement.Measured> onPhase = measured.stream()
                .filter(movement -> movement.phase().name().equals(phase.name()))
                .toList();
        return new Estimates(onPhase, phase, allowances);
    }

    public Estimate estimate(Dye dye, Eluent eluent) {
        Optional<String> refusal = refusal(dye, eluent);
        if (refusal.isPresent()) {
            return new NotReckoned(refusal.get());
        }
        List<Eluent> run = measured.stream().map(Movement.Measured::eluent).toList();
        return scales.of(eluent, run).stream()
                .flatMap(scale -> scale.of(eluent).map(where -> onScale(dye, eluent, scale, where)).stream())
                .min(Comparator.comparingInt(Estimates::worse))
                .orElseGet(() ->
                        new NotReckoned("nothing says where " + eluent + " stands among the eluents of the strips"));
    }

    /** A number before a bound, a bound before a refusal. */
    private static int worse(Estimate estimate) {
        if (estimate instanceof Reckoned) {
            return 0;
        }
        return estimate instanceof NotReckoned ? 2 : 1;
    }

    /** The weaker and the stronger of two solvents on this phase, in that order; empty where nothing says which is which. */
    public Optional<List<Solvent>> weakerFirst(Solvent one, Solvent other) {
        return scales.ordered(one, other).map(pair -> List.of(pair.weak(), pair.strong()));
    }

    private Optional<String> refusal(Dye dye, Eluent eluent) {
        if (CHARGED.contains(dye.dyeClass())) {
            return Optional.of(
                    dye + " is " + dye.dyeClass().word() + ": charge decides, not the strength of the eluent");
        }
        if (!eluent.additions().isEmpty()) {
            return Optional.of("an additive changes more than the strength of " + eluent);
        }
        if (!scales.followsALaw()) {
            return Optional.of("no law of retention is known for " + phase + " as a " + phase.kind());
        }
        if (measured.stream()
                .anyMatch(known -> known.dye().equals(dye) && known.eluent().equals(eluent))) {
            return Optional.of("a strip in " + eluent + " shows it");
        }
        return crossing(dye);
    }

    /** A dye that changes places with another lies on no line that holds for both. */
    private Optional<String> crossing(Dye dye) {
        for (Movement.Measured here : measured) {
            for (Movement.Measured there : measured) {
                if (here.dye().equals(dye) && there.dye().equals(dye)) {
                    Optional<String> other = othersThatCross(here, there);
                    if (other.isPresent()) {
                        return other;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> othersThatCross(Movement.Measured here, Movement.Measured there) {
        return measured.stream()
                .filter(other -> other.eluent().equals(here.eluent()) && isAhead(here, other))
                .flatMap(other -> measured.stream()
                        .filter(again -> again.dye().equals(other.dye())
                                && again.eluent().equals(there.eluent())
                                && isAhead(again, there)))
                .findFirst()
                .map(again -> here.dye() + " and " + again.dye() + " change places between " + here.eluent() + " and "
                        + there.eluent());
    }

    private boolean isAhead(Movement.Measured one, Movement.Measured other) {
        double gap = one.value() - other.value();
        double uncertainty = Math.hypot(
                one.retardationFactor().uncertainty(), other.retardationFactor().uncertainty());
        return gap >= allowances.partingGap()
                && 1 - new NormalDistribution(gap, uncertainty).cumulativeProbability(allowances.touchingGap())
                        >= allowances.surenessOfParting();
    }

    private Estimate onScale(Dye dye, Eluent eluent, RetentionScale scale, Position where) {
        Readings readings = Readings.of(dye, scale, measured);
        if (readings.isEmpty()) {
            return new NotReckoned("no strip shows " + dye + " in an eluent that can be compared with " + eluent);
        }
        if (!readings.covers(where.x(), allowances.reachBeyond())) {
            return new NotReckoned(
                    readings.count() == 1
                            ? "one strip fixes no line"
                            : eluent + " lies outside what the strips cover: " + scale.name() + " "
                                    + scale.shown(where.x())
                                    + ", strips from " + scale.shown(readings.lowest()) + " to "
                                    + scale.shown(readings.highest()));
        }
        return RetentionLine.through(readings.points(), allowances.scatter(scale))
                .map(line -> onLine(dye, eluent, scale, where, readings, line))
                .orElseGet(() -> oneSided(dye, eluent, scale, where, readings));
    }

    private Estimate onLine(
            Dye dye, Eluent eluent, RetentionScale scale, Position where, Readings readings, RetentionLine line) {
        if (line.slope() > COVERAGE * line.slopeUncertainty()) {
            return new NotReckoned(
                    dye + " moves less in the stronger eluents, so " + scale.name() + " does not say what moves it");
        }
        Optional<Movement.Measured> offTheLine = readings.boundOffTheLine(line);
        if (offTheLine.isPresent()) {
            return new NotReckoned(
                    "the strip in " + offTheLine.get().eluent() + " does not lie on the line of the others");
        }
        RetardationFactor reckoned = line.retardationAt(where.x());
        String formula = String.format(
                Locale.ROOT,
                "RM = %.3f %+.2f (x %+.3f), x = %s = %.3f: RM = %.3f, u = %.3f; Rf = 1/(1 + 10^RM)",
                line.rmAtMiddle(),
                line.slope(),
                -line.middle(),
                scale.name(),
                where.x(),
                line.rmAt(where.x()),
                line.uncertaintyAt(where.x()));
        return new Reckoned(
                reckoned,
                new Reason.Calculated(
                        "Rf of " + dye + " in " + eluent + " is reckoned as " + reckoned.shown(),
                        formula,
                        scale.reference(),
                        grounds(dye, where, readings)));
    }

    /** One reading and spots at the ends of the run: the slope is bounded on one side only. */
    private Estimate oneSided(Dye dye, Eluent eluent, RetentionScale scale, Position where, Readings readings) {
        Optional<Double> most = readings.rmAtLeast(where.x(), allowances.scatter(scale));
        Optional<Double> least = readings.rmAtMost(where.x(), allowances.scatter(scale));
        if (most.isPresent() == least.isPresent()) {
            return new NotReckoned(
                    most.isPresent()
                            ? "the strips that show " + dye + " contradict each other"
                            : "the strips fix no line for " + dye + " on either side of " + eluent);
        }
        double bound = retardation(most.or(() -> least).orElseThrow());
        String side = most.isPresent() ? "at most " : "at least ";
        Reason reason = new Reason.Calculated(
                "Rf of " + dye + " in " + eluent + " is " + side + Numbers.fixed(bound, 2),
                "RM does not rise with x = " + scale.name() + "; between the strips it lies on one side of the straight"
                        + " line to the bound, here at x = " + scale.shown(where.x()) + ", about 95 %",
                scale.reference(),
                grounds(dye, where, readings));
        return most.isPresent() ? new AtMost(bound, reason) : new AtLeast(bound, reason);
    }

    private List<Reason> grounds(Dye dye, Position where, Readings readings) {
        List<Reason> grounds = new ArrayList<>();
        grounds.add(dye.stated());
        grounds.addAll(readings.reasons());
        grounds.addAll(where.grounds());
        grounds.addAll(allowances.reasons());
        return grounds.stream().distinct().toList();
    }

    private static double retardation(double rm) {
        return 1 / (1 + Math.pow(10, rm));
    }
}
