package org.wickwise.plan;

import java.util.ArrayList;
import java.util.BitSet;
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
import org.wickwise.rulebook.Wishes.Wish;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Place;

/** Random choices for the search: dyes, eluents and readings invented from a seed. */
final class InventedChoices {

    private static final double PARTING_GAP = 0.1;
    private static final double PLATES = 100;
    private static final Place NOWHERE = Place.wholeFile("invented");

    private final Random random;

    InventedChoices(long seed) {
        this.random = new Random(seed);
    }

    static Preferences preferences(List<Criterion> criteria) {
        Wishes.Cost cost = new Wishes.Cost(1, 1, 20, 1, 0.05, 1, 5);
        return new Preferences(
                criteria,
                new Wishes(
                        criteria.stream()
                                .map(criterion -> new Wish(criterion.words(), NOWHERE))
                                .toList(),
                        Map.of(),
                        cost,
                        List.of(2.0, 3.0)));
    }

    Choices choices(int dyes, int eluents) {
        List<Dye> named = IntStream.range(0, dyes)
                .mapToObj(i -> new Dye("dye " + (char) ('a' + i), DyeClass.NEUTRAL, "", NOWHERE))
                .toList();
        List<Pourable> pourable = new ArrayList<>();
        for (int i = 0; i < eluents; i++) {
            pourable.add(pourable(i, dyes, eluents));
        }
        return new Choices(named, pourable, PLATES, 1, 0.25, 4, 0.5);
    }

    private Pourable pourable(int number, int dyes, int eluents) {
        Eluent eluent = eluent("eluent " + number);
        double strength = random.nextDouble();
        List<Double> values = IntStream.range(0, dyes)
                .mapToObj(dye ->
                        Math.min(0.98, Math.max(0, strength * (dyes - dye) / dyes + random.nextGaussian() * 0.15)))
                .toList();
        List<Optional<Reach>> reach = values.stream().map(this::reach).toList();
        BitSet notAfter = new BitSet();
        IntStream.range(0, eluents).filter(any -> random.nextInt(6) == 0).forEach(notAfter::set);
        return new Pourable(
                eluent,
                reach,
                IntStream.range(0, dyes)
                        .mapToObj(dye -> leavesBefore(dye, values, reach))
                        .toList(),
                notAfter,
                random.nextInt(5) == 0,
                random.nextInt(2),
                random.nextInt(4),
                random.nextInt(4) == 0 ? OptionalDouble.of(1 + 5 * random.nextDouble()) : OptionalDouble.empty(),
                random.nextInt(3),
                random.nextInt(8),
                packings(eluent, dyes));
    }

    static Eluent eluent(String name) {
        return Eluent.neat(new Solvent(name, List.of(), "invented", false, Map.of()));
    }

    private Optional<Reach> reach(double value) {
        if (random.nextInt(15) == 0) {
            return Optional.empty();
        }
        Behaviour behaviour = value <= 0.05
                ? Behaviour.STAYS
                : value <= 0.15 ? Behaviour.CREEPS : value <= 0.7 ? Behaviour.TRAVELS : Behaviour.RUNS_AHEAD;
        Optional<RetardationFactor> measured =
                random.nextInt(10) == 0 ? Optional.empty() : Optional.of(new RetardationFactor(value, 0.015));
        return Optional.of(new Reach(behaviour, random.nextInt(6) == 0, random.nextInt(6) == 0, measured));
    }

    private static int leavesBefore(int dye, List<Double> values, List<Optional<Reach>> reach) {
        int after = 0;
        for (int other = 0; other < values.size(); other++) {
            boolean parted = values.get(dye) - values.get(other) >= PARTING_GAP;
            boolean comesOff =
                    reach.get(dye).filter(found -> found.behaviour().leaves()).isPresent();
            after |= parted && comesOff ? 1 << other : 0;
        }
        return after;
    }

    private List<Packing> packings(Eluent first, int dyes) {
        List<Packing> packings = new ArrayList<>();
        packings.add(packing(first, first, PackingKind.FIRST_ELUENT, dyes));
        if (random.nextBoolean()) {
            packings.add(packing(eluent("holder"), first, PackingKind.HOLDS_ALL, dyes));
        }
        if (random.nextBoolean()) {
            packings.add(packing(eluent("weak part"), first, PackingKind.WEAKEST_PART, dyes));
        }
        return packings;
    }

    private Packing packing(Eluent with, Eluent first, PackingKind kind, int dyes) {
        return new Packing(
                new MayPack(with, first, kind),
                random.nextBoolean(),
                random.nextInt(3),
                3,
                random.nextInt(2),
                IntStream.range(0, dyes).mapToObj(dye -> loaded(kind)).toList());
    }

    /** What a packing does not hold may lie anywhere on the bed when the first eluent is poured. */
    private BandOnBed loaded(PackingKind kind) {
        return kind == PackingKind.HOLDS_ALL || random.nextInt(3) > 0
                ? BandOnBed.loaded()
                : BandOnBed.loadedIn(0.1 + random.nextDouble(), 10 * random.nextDouble(), 1, PLATES);
    }
}
