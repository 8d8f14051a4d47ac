package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.strip.Apart;
import org.wickwise.strip.BlendProposal;
import org.wickwise.strip.BlendProposals;
import org.wickwise.strip.BlendWishes;
import org.wickwise.strip.Estimate;
import org.wickwise.strip.Estimates;
import org.wickwise.strip.Estimates.Allowances;
import org.wickwise.strip.Movement;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Miscibility;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;

/** What the strips of a case let one reckon: movements and gaps in eluents that nobody ran, and blends worth running. */
final class Reckoning {

    private static final double PER_CENT = 100;

    private final Case written;
    private final Set<Eluent> run;
    private final Known known;
    private final Estimates estimates;

    /** What was reckoned of the case when its readings were others, and goes on holding where they are the same. */
    static final class Known {

        private Optional<Estimates> estimates = Optional.empty();
        private final Remembered<Of, Movement.Estimated> movements = new Remembered<>();
        private final Remembered<Of, Apart> gaps = new Remembered<>();

        private Estimates estimates(List<Movement.Measured> measured, StationaryPhase phase, Allowances allowances) {
            Estimates next = estimates
                    .map(before -> before.with(measured, phase, allowances))
                    .orElseGet(() -> Estimates.of(measured, phase, allowances));
            estimates = Optional.of(next);
            return next;
        }
    }

    /** What something was made of, these very things and not their like. */
    private record Of(Object one, Object other) {
        @Override
        public boolean equals(Object of) {
            return of instanceof Of same && one == same.one && other == same.other;
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(one) + System.identityHashCode(other);
        }
    }

    Reckoning(Case written, StripSummary summary, Map<String, Limit> limits, Known known) {
        this.written = written;
        this.run = summary.movements().stream().map(Movement::eluent).collect(Collectors.toSet());
        this.known = known;
        known.movements.nextJudging();
        known.gaps.nextJudging();
        this.estimates = known.estimates(
                summary.movements().stream()
                        .filter(Movement.Measured.class::isInstance)
                        .map(Movement.Measured.class::cast)
                        .toList(),
                written.column().phase(),
                allowances(limits));
    }

    private static Allowances allowances(Map<String, Limit> limits) {
        List<Reason> reasons = Stream.of(
                        "scatter of a retention line", "scatter across solvents", "reach beyond the strips")
                .map(name -> limits.get(name).reason())
                .toList();
        return new Allowances(
                limits.get("scatter of a retention line").value(),
                limits.get("scatter across solvents").value(),
                limits.get("reach beyond the strips").value(),
                limits.get("parting gap").value(),
                limits.get("touching gap").value(),
                limits.get("sureness of parting").value() / PER_CENT,
                reasons);
    }

    /**
     * Blends of solvents that stand on a strip and on the shelf and may enter the column.
     *
     * @param conclusions which eluents are unfit
     */
    List<BlendProposal> blends(Set<Conclusion> conclusions, Miscibility miscibility, BlendWishes wishes) {
        List<Solvent> usable = written.shelf()
                .contents()
                .filter(Eluent::isNeat)
                .filter(eluent -> !conclusions.contains(new Conclusion.Fitness(eluent, Fit.UNFIT)))
                .map(eluent -> eluent.parts().get(0).solvent())
                .filter(this::standsOnAStrip)
                .distinct()
                .toList();
        List<Eluent> run =
                written.strips().stream().map(Strip::eluent).distinct().toList();
        return new BlendProposals(written.dyes(), estimates, miscibility, wishes).from(usable, run);
    }

    private boolean standsOnAStrip(Solvent solvent) {
        return written.strips().stream().anyMatch(strip -> strip.eluent().contains(solvent));
    }

    /** Movements and gaps in those of the eluents in which no strip shows anything. */
    StripSummary in(List<Eluent> eluents) {
        List<Movement> movements = new ArrayList<>();
        List<Apart> gaps = new ArrayList<>();
        eluents.stream().filter(this::nobodyRan).forEach(eluent -> {
            List<Movement.Estimated> reckoned = written.dyes().stream()
                    .flatMap(dye -> movement(dye, eluent))
                    .toList();
            movements.addAll(reckoned);
            for (int i = 0; i < reckoned.size(); i++) {
                Movement.Estimated one = reckoned.get(i);
                for (Movement.Estimated other : reckoned.subList(i + 1, reckoned.size())) {
                    gaps.add(known.gaps.of(new Of(one, other), any -> gap(one, other)));
                }
            }
        });
        return new StripSummary(List.copyOf(movements), List.copyOf(gaps));
    }

    private boolean nobodyRan(Eluent eluent) {
        return !run.contains(eluent);
    }

    private Stream<Movement.Estimated> movement(Dye dye, Eluent eluent) {
        StationaryPhase phase = written.column().phase();
        return estimates.estimate(dye, eluent) instanceof Estimate.Reckoned found
                ? Stream.of(known.movements.of(
                        new Of(found, phase),
                        any -> new Movement.Estimated(dye, eluent, phase, found.retardationFactor(), found.reason())))
                : Stream.empty();
    }

    private static Apart gap(Movement.Estimated one, Movement.Estimated other) {
        boolean oneIsAhead = one.value() >= other.value();
        Movement.Estimated ahead = oneIsAhead ? one : other;
        Movement.Estimated behind = oneIsAhead ? other : one;
        double gap = Numbers.steady(ahead.value() - behind.value());
        double uncertainty = Math.hypot(
                one.retardationFactor().uncertainty(), other.retardationFactor().uncertainty());
        return new Apart.EstimatedGap(
                one.eluent(),
                ahead.dye(),
                behind.dye(),
                gap,
                uncertainty,
                new Reason.Calculated(
                        ahead.dye() + " is reckoned ahead of " + behind.dye() + " in " + one.eluent() + " by "
                                + Numbers.fixed(gap, 2) + " ± " + Numbers.fixed(2 * uncertainty, 2) + " of Rf",
                        "difference of the two reckoned Rf; u = sqrt(u1^2 + u2^2)",
                        "JCGM 100:2008, 5.1.2, equation 10",
                        List.of(ahead.reason(), behind.reason())));
    }
}
