package org.wickwise.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.wickwise.column.BandOnBed;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Conclusion.PackingKind;
import org.wickwise.rulebook.Wishes;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Place;

/**
 * Invented neutral dyes on an invented shelf, all its blends of two half and half among what may be poured. RM of each dye
 * falls along a straight line with the strength of an eluent, and scatters about it.
 */
final class NeutralMixture {

    private static final double PARTING_GAP = 0.1;
    private static final double SCATTER_OF_RM = 0.15;
    private static final Place NOWHERE = Place.wholeFile("invented");
    private static final double[] BURDENS = {0, 0, 1, 3, 6};

    private final Random random = new Random(26);
    private final List<Dye> dyes;
    private final int solvents;

    NeutralMixture(int dyes, int solvents) {
        this.dyes = IntStream.range(0, dyes)
                .mapToObj(i -> new Dye("dye " + (char) ('a' + i), DyeClass.NEUTRAL, "", NOWHERE))
                .toList();
        this.solvents = solvents;
    }

    static Preferences preferences() {
        List<Criterion> shipped = List.of(Criterion.values()).stream()
                .filter(criterion -> criterion != Criterion.BURDEN && criterion != Criterion.STEPS)
                .toList();
        Wishes.Cost cost = new Wishes.Cost(1, 1, 20, 1, 0.05, 1, 5);
        return new Preferences(
                shipped,
                new Wishes(
                        shipped.stream()
                                .map(criterion -> new Wishes.Wish(criterion.words(), NOWHERE))
                                .toList(),
                        Map.of(),
                        cost,
                        List.of(2.0, 3.0)));
    }

    Choices choices() {
        double[] strengths = random.doubles(solvents, 0, 0.9).toArray();
        double[] burdens = IntStream.range(0, solvents)
                .mapToDouble(any -> BURDENS[random.nextInt(BURDENS.length)])
                .toArray();
        int eluents = solvents + solvents * (solvents - 1) / 2;
        List<Pourable> pourable = new ArrayList<>();
        for (int a = 0; a < solvents; a++) {
            for (int b = a; b < solvents; b++) {
                String name = a == b ? "solvent " + a : "solvents " + a + " and " + b;
                pourable.add(
                        pourable(name, (strengths[a] + strengths[b]) / 2, Math.max(burdens[a], burdens[b]), eluents));
            }
        }
        return new Choices(dyes, pourable, 100, 1, 0.25, 4, 0.5);
    }

    private Pourable pourable(String name, double strength, double burden, int eluents) {
        Eluent eluent = eluent(name);
        List<Optional<Reach>> reach = IntStream.range(0, dyes.size())
                .mapToObj(dye -> reach(2 + 0.35 * dye - 7 * strength + SCATTER_OF_RM * random.nextGaussian()))
                .toList();
        BitSet notAfter = new BitSet();
        IntStream.range(0, eluents).filter(any -> random.nextInt(20) == 0).forEach(notAfter::set);
        return new Pourable(
                eluent,
                reach,
                IntStream.range(0, dyes.size())
                        .mapToObj(dye -> leavesBefore(dye, reach))
                        .toList(),
                notAfter,
                random.nextInt(10) == 0,
                random.nextInt(2),
                burden,
                OptionalDouble.empty(),
                0,
                0,
                packings(eluent, dyes.size()));
    }

    private static Eluent eluent(String name) {
        return Eluent.neat(new Solvent(name, List.of(), "invented", false, Map.of()));
    }

    private Optional<Reach> reach(double rm) {
        double value = 1 / (1 + Math.pow(10, rm));
        Behaviour behaviour = value <= 0.05
                ? Behaviour.STAYS
                : value <= 0.15 ? Behaviour.CREEPS : value <= 0.7 ? Behaviour.TRAVELS : Behaviour.RUNS_AHEAD;
        return Optional.of(new Reach(
                behaviour,
                random.nextInt(3) == 0,
                random.nextInt(10) == 0,
                Optional.of(new RetardationFactor(value, 0.015))));
    }

    private static int leavesBefore(int dye, List<Optional<Reach>> reach) {
        int after = 0;
        Reach first = reach.get(dye).orElseThrow();
        for (int other = 0; other < reach.size(); other++) {
            Reach second = reach.get(other).orElseThrow();
            boolean parted = value(first) - value(second) >= PARTING_GAP;
            after |=
                    parted && first.behaviour().leaves() && second.behaviour() != Behaviour.RUNS_AHEAD ? 1 << other : 0;
        }
        return after;
    }

    private static double value(Reach reach) {
        return reach.retardation().orElseThrow().value();
    }

    private List<Packing> packings(Eluent first, int dyes) {
        List<BandOnBed> thin = Collections.nCopies(dyes, BandOnBed.loaded());
        Packing itself = new Packing(new MayPack(first, first, PackingKind.FIRST_ELUENT), true, 0, 3, 0, thin);
        Packing holder = new Packing(new MayPack(eluent("holder"), first, PackingKind.HOLDS_ALL), true, 1, 3, 0, thin);
        return random.nextInt(4) == 0 ? List.of(itself) : List.of(holder, itself);
    }
}
