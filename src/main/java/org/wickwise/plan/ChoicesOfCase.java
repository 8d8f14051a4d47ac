package org.wickwise.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Basis;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Contradiction;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** Looks up what a judged case leaves to choose from. */
final class ChoicesOfCase {

    static final String UNMEASURED_STEP = "volume of an unmeasured step";

    private final Judgement judgement;
    private final Burden burden;
    private final Supply supply;
    private final Loading loading;
    private final List<Dye> dyes;
    private final Map<Eluent, Map<Dye, Behaves>> behaviours = new HashMap<>();
    private final Map<Eluent, Map<Dye, RetardationFactor>> retardations = new HashMap<>();
    private final Set<Conclusion.LeavesBefore> leavesBefore;
    private final List<MayPack> packings;
    private final Flow flow;
    private final List<Contradiction> contradictions;

    private ChoicesOfCase(Judgement judgement, Burden burden, ColumnSizes sizes) {
        this.judgement = judgement;
        this.burden = burden;
        this.flow = new Flow(judgement, sizes);
        this.supply = new Supply(judgement);
        this.loading = new Loading(judgement);
        this.dyes = judgement.judged().dyes();
        this.contradictions = judgement.contradictions();
        Set<Conclusion> contradicted = contradictions.stream()
                .flatMap(contradiction -> contradiction.conclusions().stream())
                .collect(Collectors.toSet());
        judgement.all(Behaves.class).stream()
                .filter(behaves -> !contradicted.contains(behaves))
                .forEach(behaves -> behaviours
                        .computeIfAbsent(behaves.eluent(), any -> new HashMap<>())
                        .merge(behaves.dye(), behaves, ChoicesOfCase::seenFirst));
        for (Movement movement : judgement.movements()) {
            movement.retardation().ifPresent(retardation -> retardations
                    .computeIfAbsent(movement.eluent(), any -> new HashMap<>())
                    .put(movement.dye(), retardation));
        }
        this.leavesBefore = judgement.all(Conclusion.LeavesBefore.class).stream()
                .filter(leaves -> !isContradicted(leaves))
                .collect(Collectors.toSet());
        this.packings = judgement.all(MayPack.class).stream()
                .filter(may -> contradictions.stream()
                        .noneMatch(contradiction -> contradiction.eluent().equals(may.packing())))
                .toList();
    }

    private static Behaves seenFirst(Behaves one, Behaves other) {
        return one.basis() == Basis.OBSERVED ? one : other;
    }

    /** Nothing is built on two dyes of which the rules say in this eluent what cannot both be so. */
    private boolean isContradicted(Conclusion.LeavesBefore leaves) {
        return contradictions.stream()
                .anyMatch(contradiction -> contradiction.eluent().equals(leaves.eluent())
                        && Set.of(leaves.first(), leaves.second()).containsAll(contradiction.dyes()));
    }

    static Choices of(Judgement judgement, Burden burden, ColumnSizes sizes) {
        return new ChoicesOfCase(judgement, burden, sizes).choices();
    }

    private Choices choices() {
        List<Eluent> entering = judgement.eluents().stream()
                .filter(eluent -> !judgement.holds(new Conclusion.Fitness(eluent, Fit.UNFIT)))
                .filter(behaviours::containsKey)
                .toList();
        List<Pourable> pourable = new ArrayList<>();
        for (Eluent eluent : entering) {
            pourable.add(pourable(eluent, notAfter(eluent, entering)));
        }
        return new Choices(
                dyes,
                pourable,
                Loading.plates(judgement),
                judgement.limit("comfortable distance"),
                judgement.limit("creep before release limit"),
                judgement.limit(UNMEASURED_STEP),
                judgement.limit("least volume of a step"));
    }

    private Pourable pourable(Eluent eluent, BitSet notAfter) {
        return new Pourable(
                eluent,
                dyes.stream().map(dye -> reach(dye, eluent)).toList(),
                dyes.stream().map(dye -> leavesBefore(dye, eluent)).toList(),
                notAfter,
                judgement.holds(new Conclusion.Fitness(eluent, Fit.LAST_ONLY)),
                untriedSolvents(eluent),
                burden.of(eluent),
                supply.heldColumnVolumes(eluent),
                supply.pricePerColumnVolume(eluent),
                flow.minutesPerColumnVolume(eluent).orElse(0),
                packings(eluent));
    }

    private Optional<Reach> reach(Dye dye, Eluent eluent) {
        return Optional.ofNullable(behaviours.get(eluent).get(dye))
                .map(behaves -> new Reach(
                        behaves.behaviour(),
                        behaves.basis() == Basis.ESTIMATED,
                        isDoubtful(dye, eluent),
                        Optional.ofNullable(
                                retardations.getOrDefault(eluent, Map.of()).get(dye))));
    }

    private boolean isDoubtful(Dye dye, Eluent eluent) {
        return judgement.holds(new Conclusion.Borderline(dye, eluent))
                || judgement.judged().strips().stream()
                        .filter(strip -> strip.eluent().equals(eluent))
                        .anyMatch(strip -> isDoubtful(dye, strip));
    }

    /** A void spot was left out, so nothing doubtful rests on it. */
    private boolean isDoubtful(Dye dye, Strip strip) {
        return judgement.holds(new Conclusion.StripVerdict(strip, Reading.DOUBTFUL))
                || judgement.holds(new Conclusion.SpotVerdict(strip, dye, Reading.DOUBTFUL))
                        && !judgement.holds(new Conclusion.SpotVerdict(strip, dye, Reading.VOID));
    }

    private int leavesBefore(Dye first, Eluent eluent) {
        int after = 0;
        for (int second = 0; second < dyes.size(); second++) {
            if (leavesBefore.contains(new Conclusion.LeavesBefore(eluent, first, dyes.get(second)))) {
                after |= 1 << second;
            }
        }
        return after;
    }

    private BitSet notAfter(Eluent eluent, List<Eluent> entering) {
        BitSet notAfter = new BitSet(entering.size());
        for (int before = 0; before < entering.size(); before++) {
            notAfter.set(before, judgement.holds(new Conclusion.MayNotFollow(entering.get(before), eluent)));
        }
        return notAfter;
    }

    private int untriedSolvents(Eluent eluent) {
        return (int) eluent.parts().stream()
                .filter(part -> judgement.judged().strips().stream()
                        .noneMatch(strip -> strip.eluent().contains(part.solvent())))
                .count();
    }

    /** Seen before reckoned, light before burdensome. */
    private List<Packing> packings(Eluent first) {
        return packings.stream()
                .filter(may -> may.first().equals(first))
                .map(may -> new Packing(
                        may,
                        judgement.tried(may.packing()),
                        burden.of(may.packing()),
                        judgement.limit("packing and loading"),
                        supply.pricePerColumnVolume(may.packing()),
                        dyes.stream()
                                .map(dye -> loading.band(dye, may.packing()))
                                .toList()))
                .sorted(Comparator.comparing(Packing::notHolding)
                        .thenComparing(packing -> !packing.tried())
                        .thenComparing(Packing::burden)
                        .thenComparing(packing -> packing.conclusion().packing()))
                .toList();
    }
}
