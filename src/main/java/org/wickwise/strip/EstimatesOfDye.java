package org.wickwise.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Estimate.AtLeast;
import org.wickwise.strip.Estimate.AtMost;
import org.wickwise.strip.Estimate.NotReckoned;
import org.wickwise.strip.Estimate.Reckoned;
import org.wickwise.strip.RetentionScale.Position;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** What the strips let one reckon of one dye; each answer is reckoned once. Not for several threads. */
final class EstimatesOfDye {

    private static final Set<DyeClass> CHARGED = Set.of(DyeClass.CATIONIC, DyeClass.ANIONIC, DyeClass.AMPHOTERIC);
    private static final double COVERAGE = 2;

    private final Grounds grounds;
    private final RetentionScales scales;
    private final Map<Eluent, Estimate> reckoned = new HashMap<>();
    private final Map<RetentionScale, Readings> placed = new HashMap<>();

    /**
     * Everything the answers hang on.
     *
     * @param measured of this dye, on the column's phase
     * @param run the eluents in which any dye was measured
     * @param crossing that the dye changes places with another, in words
     */
    record Grounds(
            Dye dye,
            List<Movement.Measured> measured,
            List<Eluent> run,
            Optional<String> crossing,
            RetentionScales scales,
            Estimates.Allowances allowances) {}

    EstimatesOfDye(Grounds grounds) {
        this.grounds = grounds;
        this.scales = grounds.scales();
    }

    Grounds grounds() {
        return grounds;
    }

    Estimate in(Eluent eluent) {
        return reckoned.computeIfAbsent(eluent, this::reckon);
    }

    private Estimate reckon(Eluent eluent) {
        Optional<String> refusal = refusal(eluent);
        if (refusal.isPresent()) {
            return new NotReckoned(refusal.get());
        }
        return scales.of(eluent, grounds.run()).stream()
                .flatMap(scale -> scale.of(eluent).map(where -> onScale(eluent, scale, where)).stream())
                .min(Comparator.comparingInt(EstimatesOfDye::worse))
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

    private Optional<String> refusal(Eluent eluent) {
        Dye dye = grounds.dye();
        if (CHARGED.contains(dye.dyeClass())) {
            return Optional.of(
                    dye + " is " + dye.dyeClass().word() + ": charge decides, not the strength of the eluent");
        }
        if (!eluent.additions().isEmpty()) {
            return Optional.of("an additive changes more than the strength of " + eluent);
        }
        if (!scales.followsALaw()) {
            return Optional.of("no law of retention is known for " + scales.phase() + " as a "
                    + scales.phase().kind());
        }
        if (grounds.measured().stream().anyMatch(known -> known.eluent().equals(eluent))) {
            return Optional.of("a strip in " + eluent + " shows it");
        }
        return grounds.crossing();
    }

    private Estimate onScale(Eluent eluent, RetentionScale scale, Position where) {
        Dye dye = grounds.dye();
        Readings readings = placed.computeIfAbsent(scale, any -> Readings.of(scale, grounds.measured()));
        if (readings.isEmpty()) {
            return new NotReckoned("no strip shows " + dye + " in an eluent that can be compared with " + eluent);
        }
        if (!readings.covers(where.x(), grounds.allowances().reachBeyond())) {
            return new NotReckoned(
                    readings.count() == 1
                            ? "one strip fixes no line"
                            : eluent + " lies outside what the strips cover: " + scale.name() + " "
                                    + scale.shown(where.x())
                                    + ", strips from " + scale.shown(readings.lowest()) + " to "
                                    + scale.shown(readings.highest()));
        }
        return RetentionLine.through(readings.points(), grounds.allowances().scatter(scale))
                .map(line -> onLine(eluent, scale, where, readings, line))
                .orElseGet(() -> oneSided(eluent, scale, where, readings));
    }

    private Estimate onLine(
            Eluent eluent, RetentionScale scale, Position where, Readings readings, RetentionLine line) {
        Dye dye = grounds.dye();
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
        return new Reckoned(reckoned, () -> told(eluent, scale, where, readings, line, reckoned));
    }

    private Reason told(
            Eluent eluent,
            RetentionScale scale,
            Position where,
            Readings readings,
            RetentionLine line,
            RetardationFactor reckoned) {
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
        return new Reason.Calculated(
                "Rf of " + grounds.dye() + " in " + eluent + " is reckoned as " + reckoned.shown(),
                formula,
                scale.reference(),
                groundsOf(where, readings));
    }

    /** One reading and spots at the ends of the run: the slope is bounded on one side only. */
    private Estimate oneSided(Eluent eluent, RetentionScale scale, Position where, Readings readings) {
        Dye dye = grounds.dye();
        Optional<Double> most =
                readings.rmAtLeast(where.x(), grounds.allowances().scatter(scale));
        Optional<Double> least =
                readings.rmAtMost(where.x(), grounds.allowances().scatter(scale));
        if (most.isPresent() == least.isPresent()) {
            return new NotReckoned(
                    most.isPresent()
                            ? "the strips that show " + dye + " contradict each other"
                            : "the strips fix no line for " + dye + " on either side of " + eluent);
        }
        double bound = retardation(most.or(() -> least).orElseThrow());
        String side = most.isPresent() ? "at most " : "at least ";
        Supplier<Reason> told = () -> new Reason.Calculated(
                "Rf of " + dye + " in " + eluent + " is " + side + Numbers.fixed(bound, 2),
                "RM does not rise with x = " + scale.name() + "; between the strips it lies on one side of the straight"
                        + " line to the bound, here at x = " + scale.shown(where.x()) + ", about 95 %",
                scale.reference(),
                groundsOf(where, readings));
        return most.isPresent() ? new AtMost(bound, told) : new AtLeast(bound, told);
    }

    private List<Reason> groundsOf(Position where, Readings readings) {
        List<Reason> reasons = new ArrayList<>();
        reasons.add(grounds.dye().stated());
        reasons.addAll(readings.reasons());
        reasons.addAll(where.grounds());
        reasons.addAll(grounds.allowances().reasons());
        return reasons.stream().distinct().toList();
    }

    private static double retardation(double rm) {
        return 1 / (1 + Math.pow(10, rm));
    }
}
