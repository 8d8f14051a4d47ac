package org.wickwise.strip;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Estimate.AtLeast;
import org.wickwise.strip.Estimate.AtMost;
import org.wickwise.strip.Estimate.Reckoned;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Miscibility;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Numbers;

/**
 * Blends of two solvents at practical ratios that should carry a dye into the wanted window, away from its neighbours.
 * For each dye and pair of solvents the ratio with the widest gap is kept.
 */
public final class BlendProposals {

    private final List<Dye> dyes;
    private final Estimates estimates;
    private final Miscibility miscibility;
    private final BlendWishes wishes;

    /** @param dyes of the mixture; a blend is proposed only where every one of them can be placed */
    public BlendProposals(List<Dye> dyes, Estimates estimates, Miscibility miscibility, BlendWishes wishes) {
        this.dyes = List.copyOf(dyes);
        this.estimates = estimates;
        this.miscibility = miscibility;
        this.wishes = wishes;
    }

    /**
     * The most promising first, then by name.
     *
     * @param usable neat solvents at hand
     * @param run eluents of strips, which need no proposal
     */
    public List<BlendProposal> from(List<Solvent> usable, Collection<Eluent> run) {
        List<Candidate> candidates = new ArrayList<>();
        for (Solvent one : usable) {
            for (Solvent other : usable) {
                if (one.name().compareTo(other.name()) < 0
                        && miscibility.parting(one, other).isEmpty()) {
                    ofPair(one, other, run).forEach(candidates::add);
                }
            }
        }
        return candidates.stream()
                .sorted(Comparator.comparingDouble((Candidate candidate) -> -Numbers.steady(candidate.promise()))
                        .thenComparing(Candidate::blend)
                        .thenComparing(Candidate::target))
                .limit(wishes.most())
                .map(this::proposal)
                .toList();
    }

    /** A blend that may be proposed, in numbers. */
    private record Candidate(Dye target, Eluent blend, Reckoned reckoned, Neighbour nearest, double chance) {

        double promise() {
            return chance * nearest.gap();
        }
    }

    private Stream<Candidate> ofPair(Solvent one, Solvent other, Collection<Eluent> run) {
        List<Eluent> blends = estimates.weakerFirst(one, other).stream()
                .flatMap(pair -> wishes.ratios().stream().map(ratio -> blend(pair.get(0), pair.get(1), ratio)))
                .distinct()
                .filter(blend -> !run.contains(blend))
                .toList();
        return dyes.stream()
                .flatMap(target -> blends.stream()
                        .flatMap(blend -> candidate(target, blend).stream())
                        .max(Comparator.comparingDouble((Candidate candidate) ->
                                        Numbers.steady(candidate.nearest().gap()))
                                .thenComparing(Candidate::blend))
                        .stream());
    }

    private static Eluent blend(Solvent weaker, Solvent stronger, BlendWishes.Ratio ratio) {
        double strong = ratio.percentOfStronger();
        return Eluent.of(List.of(new Eluent.Part(weaker, 100 - strong), new Eluent.Part(stronger, strong)), List.of());
    }

    private Optional<Candidate> candidate(Dye target, Eluent blend) {
        if (!(estimates.estimate(target, blend) instanceof Reckoned reckoned) || !inWindow(reckoned)) {
            return Optional.empty();
        }
        List<Neighbour> neighbours = dyes.stream()
                .filter(dye -> !dye.equals(target))
                .flatMap(dye -> neighbour(dye, estimates.estimate(dye, blend), reckoned).stream())
                .toList();
        if (neighbours.isEmpty() || neighbours.size() < dyes.size() - 1) {
            return Optional.empty();
        }
        return neighbours.stream()
                .min(Comparator.comparingDouble(Neighbour::gap).thenComparing(Neighbour::dye))
                .filter(nearest -> nearest.gap() > 0)
                .map(nearest -> new Candidate(
                        target,
                        blend,
                        reckoned,
                        nearest,
                        reckoned.retardationFactor().chanceBetween(wishes.from(), wishes.to())));
    }

    private boolean inWindow(Reckoned reckoned) {
        double value = reckoned.retardationFactor().value();
        return value >= wishes.from() && value <= wishes.to();
    }

    /** @param gap from the target; below 0 where it may lie on either side */
    private record Neighbour(Dye dye, double gap, double uncertainty, Ground estimate) {}

    private static Optional<Neighbour> neighbour(Dye dye, Estimate estimate, Reckoned target) {
        RetardationFactor own = target.retardationFactor();
        if (estimate instanceof Reckoned reckoned) {
            RetardationFactor its = reckoned.retardationFactor();
            return Optional.of(new Neighbour(
                    dye,
                    Math.abs(own.value() - its.value()),
                    Math.hypot(own.uncertainty(), its.uncertainty()),
                    reckoned));
        }
        if (estimate instanceof AtMost most) {
            return Optional.of(new Neighbour(dye, own.value() - most.retardation(), own.uncertainty(), most));
        }
        if (estimate instanceof AtLeast least) {
            return Optional.of(new Neighbour(dye, least.retardation() - own.value(), own.uncertainty(), least));
        }
        return Optional.empty();
    }

    private BlendProposal proposal(Candidate candidate) {
        Dye target = candidate.target();
        Eluent blend = candidate.blend();
        Neighbour nearest = candidate.nearest();
        RetardationFactor own = candidate.reckoned().retardationFactor();
        double chance = candidate.chance();
        String statement = blend + " should carry " + target + " to Rf " + own.shown() + ", " + nearest.dye()
                + " next to it " + Numbers.fixed(nearest.gap(), 2) + " ± " + Numbers.fixed(2 * nearest.uncertainty(), 2)
                + " away";
        return new BlendProposal(
                blend,
                target,
                own,
                nearest.dye(),
                nearest.gap(),
                nearest.uncertainty(),
                chance,
                new Reason.Calculated(
                        statement,
                        "the widest gap among the practical ratios of these solvents; chance that Rf lies from "
                                + Numbers.plain(wishes.from(), 3) + " to " + Numbers.plain(wishes.to(), 3) + ": "
                                + Numbers.fixed(100 * chance, 0) + " %",
                        "normal distribution about the reckoned Rf",
                        List.of(
                                candidate.reckoned().reason(),
                                nearest.estimate().reason(),
                                wishes.reason())));
    }
}
