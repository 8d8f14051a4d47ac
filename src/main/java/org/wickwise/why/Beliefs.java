package org.wickwise.why;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wickwise.plan.NeverParted;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Draws;
import org.wickwise.strip.Movement;
import org.wickwise.strip.Redraw;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Ladder;

/**
 * What a judged case lets one believe of the true Rf of each dye in each eluent, drawn at random. The draws hang on the
 * seed, the number of the draw and the names of strip, eluent and dye, on nothing else.
 */
final class Beliefs {

    private static final double PER_CENT = 100;
    private static final Set<DyeClass> CHARGED = Set.of(DyeClass.CATIONIC, DyeClass.ANIONIC, DyeClass.AMPHOTERIC);

    private final Judgement judgement;
    private final long seed;
    private final Map<Eluent, List<Named>> strips;
    private final List<NeverParted> neverParted;

    /** A strip by the name that its draws hang on. */
    private record Named(Strip strip, String name) {}

    Beliefs(Judgement judgement, long seed) {
        this.judgement = judgement;
        this.seed = seed;
        this.strips = readable(judgement);
        this.neverParted = NeverParted.all(judgement);
    }

    /** The strips of each eluent that are not void, in an order that does not hang on the file's. */
    private static Map<Eluent, List<Named>> readable(Judgement judgement) {
        List<Strip> all = judgement.judged().strips();
        List<String> names = Draws.names(all);
        return IntStream.range(0, all.size())
                .mapToObj(number -> new Named(all.get(number), names.get(number)))
                .filter(named -> !judgement.holds(new Conclusion.StripVerdict(named.strip(), Reading.VOID)))
                .sorted(Comparator.comparing(Named::name))
                .collect(Collectors.groupingBy(named -> named.strip().eluent()));
    }

    /** One way in which things may be: every eluent of the strips, and the one of the strip to run. */
    Truth draw(StripToRun next, int drawing) {
        Map<Eluent, Map<Dye, Double>> truth = new TreeMap<>();
        strips.keySet().forEach(eluent -> truth.put(eluent, measured(eluent, drawing)));
        Map<Dye, Double> there = truth.computeIfAbsent(next.eluent(), any -> new HashMap<>());
        for (Dye dye : judgement.judged().dyes()) {
            if (!there.containsKey(dye)) {
                RandomGenerator random = random(drawing, next.eluent() + " of " + alikeWith(dye, drawing));
                there.put(dye, unmeasured(dye, next.eluent(), drawing, random));
            } else if (next.kind() == StripToRun.Kind.INSTEAD_OF_DOUBTFUL) {
                RandomGenerator random = random(drawing, next.eluent() + " of " + dye);
                double scatter = judgement.limit("scatter of a doubtful reading");
                there.put(dye, onTheStrip(there.get(dye) + scatter * random.nextGaussian()));
            }
        }
        return new Truth(judgement.judged().dyes(), truth);
    }

    /** The dye whose chance this one shares in this draw: the first of those it was never parted from, or itself. */
    private Dye alikeWith(Dye dye, int drawing) {
        double trust = judgement.limit("trust that dyes never parted are alike") / PER_CENT;
        for (NeverParted pair : neverParted) {
            if (pair.other().equals(dye)
                    && random(drawing, pair.one() + " alike " + pair.other()).nextDouble() < pair.chanceAlike(trust)) {
                return alikeWith(pair.one(), drawing);
            }
        }
        return dye;
    }

    /** What a strip with this truth would be read as. */
    Strip read(Strip truth, int drawing) {
        return redrawn(truth, drawing, "reading of " + truth);
    }

    /**
     * The strips of one eluent read again: the mean of the new readings lies as far from the mean of the old ones as the
     * truth may, times the Birge ratio where the strips scatter.
     */
    private Map<Dye, Double> measured(Eluent eluent, int drawing) {
        Map<Named, Strip> again = new HashMap<>();
        strips.get(eluent)
                .forEach(named -> again.put(named, redrawn(named.strip(), drawing, "truth of " + named.name())));
        Map<Dye, Double> truth = new HashMap<>();
        for (Dye dye : judgement.judged().dyes()) {
            judgement.measured(dye, eluent).ifPresent(movement -> truth.put(dye, truth(dye, movement, again)));
        }
        return truth;
    }

    private double truth(Dye dye, Movement.Measured movement, Map<Named, Strip> again) {
        double weights = 0;
        double shift = 0;
        for (Named named : strips.get(movement.eluent())) {
            Strip strip = named.strip();
            Optional<RetardationFactor> before =
                    isRead(dye, strip) ? judgement.retardationFactor(strip, dye) : Optional.empty();
            if (before.isPresent()
                    && strip.phase().name().equals(movement.phase().name())) {
                double weight = 1 / Math.pow(before.get().uncertainty(), 2);
                double after = judgement
                        .retardationFactor(again.get(named), dye)
                        .orElseThrow()
                        .value();
                weights += weight;
                shift += weight * (after - before.get().value());
            }
        }
        double widened = movement.retardationFactor().uncertainty() * Math.sqrt(weights);
        return onTheStrip(movement.value() + widened * shift / weights);
    }

    private boolean isRead(Dye dye, Strip strip) {
        return strip.spotOf(dye)
                        .filter(spot -> !(spot.position() instanceof Spot.Seen))
                        .isPresent()
                && !judgement.holds(new Conclusion.SpotVerdict(strip, dye, Reading.VOID));
    }

    private double unmeasured(Dye dye, Eluent eluent, int drawing, RandomGenerator random) {
        Optional<Movement> movement = judgement.movement(dye, eluent);
        if (movement.isPresent() && movement.get() instanceof Movement.Estimated estimated) {
            RetardationFactor reckoned = estimated.retardationFactor();
            return retardation(reckoned.rm() + reckoned.rmUncertainty() * random.nextGaussian());
        }
        if (movement.isPresent() && movement.get() instanceof Movement.Watched watched) {
            return within(watched.behaviour(), random);
        }
        if (random.nextDouble() >= judgement.limit("trust in an estimate without a number") / PER_CENT) {
            return retardation(about(commonly(eluent, drawing), lowestRm(), highestRm(), random));
        }
        return judgement
                .behaviour(dye, eluent)
                .map(thought -> within(thought.behaviour(), random))
                .orElseGet(() -> onTheLadder(dye, eluent, commonly(eluent, drawing), random));
    }

    /** Where in their ranges of RM the dyes lie on the whole of which nothing is known in this eluent, 0 to 1. */
    private double commonly(Eluent eluent, int drawing) {
        return random(drawing, "pull of " + eluent).nextDouble();
    }

    /** An RM that scatters about this share of the range, and stays within it. */
    private double about(double share, double from, double to, RandomGenerator random) {
        double middle = from + (to - from) * share;
        double rm = middle + judgement.limit("scatter of unknown dyes") * random.nextGaussian();
        return Math.max(from, Math.min(to, rm));
    }

    /** A neutral dye moves no less in an eluent that stands higher on the ladder than one it was measured in. */
    private double onTheLadder(Dye dye, Eluent eluent, double share, RandomGenerator random) {
        double lowest = lowestRm();
        double highest = highestRm();
        Optional<Ladder> ladder = judgement
                .judged()
                .column()
                .phase()
                .ladder()
                .map(Ladder::new)
                .filter(any -> !CHARGED.contains(dye.dyeClass()));
        for (Eluent run : ladder.isPresent() ? strips.keySet() : Set.<Eluent>of()) {
            Optional<RetardationFactor> seen = judgement.measured(dye, run).map(Movement.Measured::retardationFactor);
            if (seen.isPresent() && ladder.get().weaker(run, eluent).isPresent()) {
                highest = Math.min(highest, rm(seen.get().lowest()));
            } else if (seen.isPresent() && ladder.get().weaker(eluent, run).isPresent()) {
                lowest = Math.max(lowest, rm(seen.get().highest()));
            }
        }
        return retardation(about(share, Math.min(lowest, highestRm()), Math.max(highest, lowestRm()), random));
    }

    /** Rf of which RM is as likely anywhere within what counts as this behaviour. */
    private double within(Behaviour behaviour, RandomGenerator random) {
        double staying = rmOf("staying limit");
        double creeping = rmOf("creeping limit");
        double ahead = rmOf("running-ahead limit");
        return retardation(
                switch (behaviour) {
                    case STAYS -> between(staying, Math.max(staying, highestRm()), random);
                    case CREEPS -> between(creeping, staying, random);
                    case TRAVELS -> between(ahead, creeping, random);
                    case RUNS_AHEAD -> between(Math.min(ahead, lowestRm()), ahead, random);
                });
    }

    private double lowestRm() {
        return judgement.limit("least RM to be expected");
    }

    private double highestRm() {
        return judgement.limit("greatest RM to be expected");
    }

    private double rmOf(String limit) {
        return rm(judgement.limit(limit));
    }

    /** Infinite at the ends of the strip. */
    private static double rm(double retardation) {
        return Math.log10(1 / retardation - 1);
    }

    private static double between(double from, double to, RandomGenerator random) {
        return from + (to - from) * random.nextDouble();
    }

    private static double retardation(double rm) {
        return 1 / (1 + Math.pow(10, rm));
    }

    private static double onTheStrip(double value) {
        return Math.max(0, Math.min(1, value));
    }

    private Strip redrawn(Strip strip, int drawing, String what) {
        Ruler ruler = new Ruler(
                strip.rulerDivisionMillimetres().orElse(judgement.limit("usual ruler division")),
                judgement.limit("spot centre half-width"));
        double quoted = judgement.limit("uncertainty of a reported Rf");
        return Redraw.of(strip, ruler, quoted, random(drawing, what)).strip();
    }

    private RandomGenerator random(int drawing, String what) {
        return Draws.of(seed, drawing, what);
    }
}
