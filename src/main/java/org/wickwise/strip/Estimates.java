package org.wickwise.strip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;

/**
 * What the strips of one case let one reckon for eluents that nobody ran. A number is given only between the eluents
 * that were run, on a stationary phase whose law of retention is known, for dyes without charge; everything else is
 * refused in words. Not for several threads.
 */
public final class Estimates {

    private final List<Movement.Measured> measured;
    private final List<Eluent> run;
    private final RetentionScales scales;
    private final Allowances allowances;
    private final Crossings crossings;
    private final Map<Dye, EstimatesOfDye> before;
    private final Map<Dye, EstimatesOfDye> byDye = new HashMap<>();

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

    private Estimates(
            List<Movement.Measured> measured,
            RetentionScales scales,
            Allowances allowances,
            Map<Dye, EstimatesOfDye> before) {
        this.measured = measured;
        this.run = measured.stream().map(Movement.Measured::eluent).distinct().toList();
        this.scales = scales;
        this.allowances = allowances;
        this.crossings = new Crossings(measured, allowances);
        this.before = before;
    }

    /**
     * @param measured what the strips say; those on other stationary phases are left out
     * @param phase of the column
     */
    public static Estimates of(List<Movement.Measured> measured, StationaryPhase phase, Allowances allowances) {
        return new Estimates(onPhase(measured, phase), new RetentionScales(phase), allowances, Map.of());
    }

    /** What other strips let one reckon; what was reckoned of dyes for which they say the same is not reckoned again. */
    public Estimates with(List<Movement.Measured> others, StationaryPhase otherPhase, Allowances otherAllowances) {
        RetentionScales same = otherPhase.equals(scales.phase()) ? scales : new RetentionScales(otherPhase);
        return new Estimates(onPhase(others, otherPhase), same, otherAllowances, Map.copyOf(byDye));
    }

    private static List<Movement.Measured> onPhase(List<Movement.Measured> measured, StationaryPhase phase) {
        return measured.stream()
                .filter(movement -> movement.phase().name().equals(phase.name()))
                .toList();
    }

    public Estimate estimate(Dye dye, Eluent eluent) {
        return byDye.computeIfAbsent(dye, this::ofDye).in(eluent);
    }

    private EstimatesOfDye ofDye(Dye dye) {
        List<Movement.Measured> own =
                measured.stream().filter(movement -> movement.dye().equals(dye)).toList();
        EstimatesOfDye.Grounds grounds =
                new EstimatesOfDye.Grounds(dye, own, run, crossings.of(dye), scales, allowances);
        return Optional.ofNullable(before.get(dye))
                .filter(known -> known.grounds().equals(grounds))
                .orElseGet(() -> new EstimatesOfDye(grounds));
    }

    /** The weaker and the stronger of two solvents on this phase, in that order; empty where nothing says which is which. */
    public Optional<List<Solvent>> weakerFirst(Solvent one, Solvent other) {
        return scales.ordered(one, other).map(pair -> List.of(pair.weak(), pair.strong()));
    }
}
