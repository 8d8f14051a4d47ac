package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.wickwise.bench.Case;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.rulebook.Limit;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Change.OfBottle;
import org.wickwise.why.Change.OfLimit;
import org.wickwise.why.Change.OfReading;

/**
 * The smallest change that would bring about what somebody wishes: one reading, one limit or one bottle; two readings where
 * no single one does. Found by trying: every Rf in hundredths for each reading, fifty values over the range of each limit,
 * every bottle of the shelf and the table. Two readings are tried where each alone begins to make some difference, and the
 * pair found is then drawn as near to the readings as it still serves.
 *
 * @param single the smallest change of each kind, readings first
 * @param two two readings; looked for only where no single one serves
 * @param tried how many changes were tried
 */
public record SmallestChange(List<Change> single, List<OfReading> two, int tried) {

    private static final int STEPS_OF_AN_RF = 100;
    private static final int STEPS_OF_A_LIMIT = 50;
    private static final int LOOKS_AT_A_LIMIT = 10;

    public SmallestChange {
        single = List.copyOf(single);
        two = List.copyOf(two);
    }

    /** @param aim that is not met as the case is written */
    public static SmallestChange of(Judgement written, Judge judge, Planner planner, Aim aim) {
        return of(written, judge, planner, aim, STEPS_OF_AN_RF);
    }

    /** @param steps into which the Rf from 0 to 1 is divided */
    static SmallestChange of(Judgement written, Judge judge, Planner planner, Aim aim, int steps) {
        try (LaidOutCase laidOut = judge.layOut(written.judged())) {
            return new Search(written, judge, planner, aim, steps, laidOut).found();
        }
    }

    /** What comes of a change; two changes that come out alike make the same difference. */
    private record Outcome(boolean isMet, Set<Conclusion> conclusions, Optional<String> route) {}

    private static final class Search {

        private final Judgement judgement;
        private final Case written;
        private final Map<String, Limit> limits;
        private final Judge judge;
        private final Planner planner;
        private final Aim aim;
        private final int steps;
        private final LaidOutCase laidOut;
        private int tried;

        Search(Judgement judgement, Judge judge, Planner planner, Aim aim, int steps, LaidOutCase laidOut) {
            this.judgement = judgement;
            this.written = judgement.judged();
            this.limits = judgement.limits();
            this.judge = judge;
            this.planner = planner;
            this.aim = aim;
            this.steps = steps;
            this.laidOut = laidOut;
        }

        SmallestChange found() {
            Map<String, List<OfReading>> edges = new TreeMap<>();
            List<Change> single = new ArrayList<>();
            Optional<OfReading> reading = reading(edges);
            reading.ifPresent(single::add);
            limit().ifPresent(single::add);
            single.addAll(bottles());
            List<OfReading> two = reading.isPresent() ? List.of() : twoReadings(List.copyOf(edges.values()));
            return new SmallestChange(single, two, tried);
        }

        private Outcome outcome(List<? extends Change> changes) {
            tried++;
            try {
                Supposition supposition = SuppositionReader.read(
                        changes.stream().map(Change::words).toList(), written, limits, judge.data());
                Judgement supposed = laidOut.suppose(supposition.supposed(), supposition.limits());
                return new Outcome(
                        aim.isMet(supposed, planner),
                        supposed.reasons().keySet(),
                        planner.route(supposed).map(Route::inShort));
            } catch (ProblemsFound impossible) {
                return new Outcome(false, Set.of(), Optional.empty());
            }
        }

        private boolean serves(Change change) {
            return outcome(List.of(change)).isMet();
        }

        /** @param edges takes, for each reading, the nearest change of each outcome that is not the usual one */
        private Optional<OfReading> reading(Map<String, List<OfReading>> edges) {
            List<OfReading> nearestFirst = OfReading.all(judgement, steps).stream()
                    .sorted(Comparator.comparing(OfReading::size).thenComparing(OfReading::words))
                    .toList();
            Outcome usual = outcome(List.of());
            Map<String, Set<Outcome>> seen = new TreeMap<>();
            for (OfReading change : nearestFirst) {
                Outcome outcome = outcome(List.of(change));
                if (outcome.isMet()) {
                    return Optional.of(change);
                }
                String spot = change.dye() + " on " + change.strip();
                boolean isNew = seen.computeIfAbsent(spot, any -> new HashSet<>(Set.of(usual)))
                        .add(outcome);
                if (isNew) {
                    edges.computeIfAbsent(spot, any -> new ArrayList<>()).add(change);
                }
            }
            return Optional.empty();
        }

        private List<OfReading> twoReadings(List<List<OfReading>> edges) {
            List<List<OfReading>> pairs = new ArrayList<>();
            for (int i = 0; i < edges.size(); i++) {
                for (int j = i + 1; j < edges.size(); j++) {
                    for (OfReading one : edges.get(i)) {
                        for (OfReading other : edges.get(j)) {
                            pairs.add(List.of(one, other));
                        }
                    }
                }
            }
            pairs.sort(Comparator.comparingDouble(Search::size));
            return pairs.stream()
                    .filter(pair -> outcome(pair).isMet())
                    .findFirst()
                    .map(this::drawnNearer)
                    .orElse(List.of());
        }

        private static double size(List<OfReading> pair) {
            return pair.stream().mapToDouble(OfReading::size).sum();
        }

        /** Each of the two in turn a step nearer, as long as they serve. */
        private List<OfReading> drawnNearer(List<OfReading> pair) {
            for (int i = 0; i < pair.size(); i++) {
                Optional<OfReading> nearer = pair.get(i).nearer();
                if (nearer.isPresent()) {
                    List<OfReading> drawn = new ArrayList<>(pair);
                    drawn.set(i, nearer.get());
                    if (outcome(drawn).isMet()) {
                        return drawnNearer(drawn);
                    }
                }
            }
            return pair;
        }

        private Optional<OfLimit> limit() {
            Outcome usual = outcome(List.of());
            return limits.values().stream()
                    .filter(limit -> OfLimit.all(limit, LOOKS_AT_A_LIMIT)
                            .anyMatch(change -> !outcome(List.of(change)).equals(usual)))
                    .flatMap(limit -> OfLimit.all(limit, STEPS_OF_A_LIMIT))
                    .sorted(Comparator.comparing(OfLimit::size).thenComparing(OfLimit::words))
                    .filter(this::serves)
                    .findFirst();
        }

        private List<OfBottle> bottles() {
            return OfBottle.all(written, judge.data()).stream()
                    .filter(this::serves)
                    .toList();
        }
    }
}
