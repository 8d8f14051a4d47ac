package org.wickwise.substance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wickwise.reason.Reason;
import org.wickwise.substance.StationaryPhase.LadderScale;

/**
 * The eluotropic ladder of one stationary phase. A neat solvent stands at its table value; a blend stands somewhere
 * between its parts, so it is ranked only against what lies outside that span, against its own parts, and against
 * other blends of the same two solvents. What cannot be ranked is left unranked.
 */
public record Ladder(LadderScale scale) {

    /** Why one eluent is weaker than another; empty when that is not known. */
    public Optional<Reason> weaker(Eluent weak, Eluent strong) {
        if (weak.equals(strong)
                || !weak.additions().isEmpty()
                || !strong.additions().isEmpty()) {
            return Optional.empty();
        }
        if (!ranked(weak) || !ranked(strong)) {
            return Optional.empty();
        }
        if (isOwnPart(weak, strong) || sharesGrow(weak, strong)) {
            return Optional.of(between(weak, strong));
        }
        boolean apart = strongest(weak) + scale.margin() <= weakest(strong);
        return apart ? Optional.of(onTheScale(weak, strong)) : Optional.empty();
    }

    /** The part of a blend that stands lowest on the ladder; empty when a part has no place on it. */
    public Optional<Solvent> weakestPart(Eluent blend) {
        return ranked(blend) ? Optional.of(byStrength(blend).get(0)) : Optional.empty();
    }

    private boolean ranked(Eluent eluent) {
        return eluent.parts().stream()
                .allMatch(part -> part.solvent().number(scale.property()).isPresent());
    }

    private boolean isOwnPart(Eluent weak, Eluent strong) {
        boolean weakIsLowPart =
                weak.isNeat() && strong.parts().size() > 1 && low(weak).equals(low(strong));
        boolean strongIsHighPart =
                strong.isNeat() && weak.parts().size() > 1 && high(strong).equals(high(weak));
        return weakIsLowPart || strongIsHighPart;
    }

    private boolean sharesGrow(Eluent weak, Eluent strong) {
        if (weak.parts().size() != 2 || strong.parts().size() != 2) {
            return false;
        }
        boolean sameSolvents = low(weak).equals(low(strong)) && high(weak).equals(high(strong));
        return sameSolvents && weak.percentOf(high(weak)) < strong.percentOf(high(strong));
    }

    private double height(Solvent solvent) {
        double value = solvent.number(scale.property()).orElseThrow();
        return scale.weakestIsLowest() ? value : -value;
    }

    private List<Solvent> byStrength(Eluent eluent) {
        return eluent.parts().stream()
                .map(Eluent.Part::solvent)
                .sorted(Comparator.comparingDouble(this::height).thenComparing(Solvent::name))
                .toList();
    }

    private Solvent low(Eluent eluent) {
        return byStrength(eluent).get(0);
    }

    private Solvent high(Eluent eluent) {
        List<Solvent> ordered = byStrength(eluent);
        return ordered.get(ordered.size() - 1);
    }

    private double weakest(Eluent eluent) {
        return height(low(eluent));
    }

    private double strongest(Eluent eluent) {
        return height(high(eluent));
    }

    private Reason between(Eluent weak, Eluent strong) {
        return new Reason.Calculated(
                weak.name() + " is weaker than " + strong.name(),
                "a blend stands between its parts, nearer the part there is more of",
                "common practice, no source",
                List.of(entry(low(strong)), entry(high(strong))));
    }

    private Reason onTheScale(Eluent weak, Eluent strong) {
        return new Reason.Calculated(
                weak.name() + " is weaker than " + strong.name() + " by " + scale.property(),
                "ranked when the values lie at least " + scale.margin() + " apart",
                scale.because(),
                List.of(entry(high(weak)), entry(low(strong))));
    }

    private Reason entry(Solvent solvent) {
        return solvent.value(scale.property()).orElseThrow().reason();
    }
}
