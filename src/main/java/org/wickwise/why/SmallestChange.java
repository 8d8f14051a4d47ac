package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.EluentAlone;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.rulebook.Limit;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Change.OfBottle;
import org.wickwise.why.Change.OfColumn;
import org.wickwise.why.Change.OfLimit;
import org.wickwise.why.Change.OfReading;

/**
 * The smallest change that would bring about what somebody wishes: one reading, one limit, one bottle or another bed; two
 * readings where no single one does. Every Rf in hundredths is tried for each reading, at least fifty values over the range
 * of each limit, every bottle of the shelf and the table, every stationary phase of the table.
 *
 * <p>Where the wish hangs on the strips of one eluent alone ({@link EluentAlone}), cases of which the rules can tell nothing
 * different are judged once, readings in other eluents are left out, and every two readings are tried. Elsewhere only limits of which ten values bring something else
 * are looked at closely, and two readings are tried where each alone begins to bring something else, the smallest of
 * {@value #MOST_PAIRS} first, and the two found are then drawn as near as they still serve.
 *
 * @param single the smallest change of each kind, readings first; every bottle and every bed
 * @param two two readings; looked for only where no single one serves
 * @param tried how many changes were tried
 * @param everyTwo whether every two readings were tried, where two were looked for
 */
public record SmallestChange(List<Change> single, List<OfReading> two, int tried, boolean everyTwo) {

    private static final int STEPS_OF_AN_RF = 100;
    private static final int STEPS_OF_A_LIMIT = 50;
    private static final int LOOKS_AT_A_LIMIT = 10;
    private static final int MOST_PAIRS = 400;

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

    /** What comes of changes: what is concluded, but for what is said of single strips, and the plan where it is asked for. */
    private record Outcome(boolean isMet, Set<Conclusion> conclusions, Optional<String> route) {
        static final Outcome CONTRADICTION = new Outcome(false, Set.of(), Optional.empty());
    }

    private static final class Search {

        private final Judgement written;
        private final Judge judge;
        private final Planner planner;
        private final Aim aim;
        private final int steps;
        private final LaidOutCase laidOut;
        private final Optional<EluentAlone> alone;
        private final Map<Object, Boolean> known = new HashMap<>();
        private final Map<List<Change>, Outcome> outcomes = new HashMap<>();
        private final Map<Outcome, Outcome> same = new HashMap<>();
        private int tried;

        Search(Judgement written, Judge judge, Planner planner, Aim aim, int steps, LaidOutCase laidOut) {
            this.written = written;
            this.judge = judge;
            this.planner = planner;
            this.aim = aim;
            this.steps = steps;
            this.laidOut = laidOut;
            this.alone = aim.saidOf().flatMap(said -> judge.alone(said.getValue(), said.getKey(), written));
        }

        SmallestChange found() {
            List<OfReading> readings = nearestFirst(OfReading.all(written, steps).stream()
                    .filter(reading -> alone.isEmpty()
                            || alone.get().eluent().equals(reading.strip().eluent())));
            List<Change> single = new ArrayList<>();
            Optional<OfReading> reading =
                    readings.stream().filter(one -> serve(List.of(one))).findFirst();
            reading.ifPresent(single::add);
            limit().ifPresent(single::add);
            OfBottle.all(written.judged(), judge.data()).stream()
                    .peek(any -> tried++)
                    .filter(bottle -> isMet(List.of(bottle)))
                    .forEach(single::add);
            OfColumn.all(written.judged(), judge.data()).stream()
                    .peek(any -> tried++)
                    .filter(column -> isMet(List.of(column)))
                    .forEach(single::add);
            List<OfReading> two = reading.isPresent() ? List.of() : twoReadings(readings);
            return new SmallestChange(single, two, tried, alone.isPresent());
        }

        private static <T extends Change> List<T> nearestFirst(Stream<T> changes) {
            return changes.sorted(Comparator.<T>comparingDouble(Change::size).thenComparing(Change::words))
                    .toList();
        }

        /** Whether these changes of readings or limits bring it about. */
        private boolean serve(List<? extends Change> changes) {
            if (alone.isEmpty()) {
                return outcome(changes).isMet();
            }
            tried++;
            Object told = alone.get().told(caseAfter(changes), limitsAfter(changes));
            return known.computeIfAbsent(told, any -> isMet(changes))
                    && judged(changes).isPresent();
        }

        private boolean isMet(List<? extends Change> changes) {
            return judged(changes)
                    .filter(judgement -> aim.isMet(judgement, planner))
                    .isPresent();
        }

        /** Empty where the changed strips would contradict each other. */
        private Optional<Judgement> judged(List<? extends Change> changes) {
            try {
                return Optional.of(laidOut.suppose(caseAfter(changes), limitsAfter(changes)));
            } catch (ProblemsFound contradiction) {
                return Optional.empty();
            }
        }

        private Case caseAfter(List<? extends Change> changes) {
            Case changed = written.judged();
            for (Change change : changes) {
                changed = change.in(changed);
            }
            return changed;
        }

        private Map<String, Limit> limitsAfter(List<? extends Change> changes) {
            Map<String, Limit> changed = written.limits();
            for (Change change : changes) {
                changed = change.in(changed);
            }
            return changed;
        }

        private Optional<OfLimit> limit() {
            return nearestFirst(limitsToTry().flatMap(limit -> OfLimit.all(limit, STEPS_OF_A_LIMIT))).stream()
                    .filter(change -> serve(List.of(change)))
                    .findFirst();
        }

        private Stream<Limit> limitsToTry() {
            Stream<Limit> all = written.limits().values().stream();
            if (alone.isPresent()) {
                return all;
            }
            Outcome usual = outcome(List.of());
            return all.filter(limit -> OfLimit.all(limit, LOOKS_AT_A_LIMIT)
                    .anyMatch(change -> !outcome(List.of(change)).equals(usual)));
        }

        /** What comes of changes; told once. */
        private Outcome outcome(List<? extends Change> changes) {
            return outcomes.computeIfAbsent(List.copyOf(changes), any -> {
                tried++;
                Outcome outcome = judged(changes).map(this::outcome).orElse(Outcome.CONTRADICTION);
                return same.computeIfAbsent(outcome, itself -> itself);
            });
        }

        private Outcome outcome(Judgement judgement) {
            return new Outcome(
                    aim.isMet(judgement, planner),
                    judgement.reasons().keySet().stream()
                            .filter(conclusion -> !isOfAStrip(conclusion))
                            .collect(Collectors.toUnmodifiableSet()),
                    aim.saidOf().isPresent()
                            ? Optional.empty()
                            : planner.route(judgement).map(Route::inShort));
        }

        private static boolean isOfAStrip(Conclusion conclusion) {
            return conclusion instanceof Conclusion.StripVerdict
                    || conclusion instanceof Conclusion.SpotVerdict
                    || conclusion instanceof Conclusion.RunAgain;
        }

        private List<OfReading> twoReadings(List<OfReading> readings) {
            return alone.map(own -> twoOf(worthPairing(own, readings)))
                    .orElseGet(() -> drawnNearer(twoOf(edges(readings))));
        }

        /** The readings in the eluent; where they are told one by one, the nearest of those that tell the same. */
        private List<OfReading> worthPairing(EluentAlone own, List<OfReading> nearestFirst) {
            Set<Object> seen = new HashSet<>();
            return nearestFirst.stream()
                    .filter(reading -> !own.isToldOneByOne()
                            || seen.add(
                                    List.of(reading.spot(), own.told(caseAfter(List.of(reading)), written.limits()))))
                    .toList();
        }

        private List<OfReading> twoOf(List<OfReading> readings) {
            List<List<OfReading>> pairs = new ArrayList<>();
            for (int i = 0; i < readings.size(); i++) {
                for (OfReading other : readings.subList(i + 1, readings.size())) {
                    if (!readings.get(i).spot().equals(other.spot())) {
                        pairs.add(List.of(readings.get(i), other));
                    }
                }
            }
            pairs.sort(Comparator.comparingDouble(Search::size));
            return pairs.stream()
                    .limit(alone.isPresent() ? pairs.size() : MOST_PAIRS)
                    .filter(this::serve)
                    .findFirst()
                    .orElse(List.of());
        }

        private static double size(List<OfReading> pair) {
            return pair.stream().mapToDouble(OfReading::size).sum();
        }

        /** Of each reading the nearest change of each outcome that is not the usual one. */
        private List<OfReading> edges(List<OfReading> nearestFirst) {
            Outcome usual = outcome(List.of());
            Map<String, Set<Outcome>> seen = new TreeMap<>();
            return nearestFirst.stream()
                    .filter(change -> seen.computeIfAbsent(change.spot(), any -> new HashSet<>(Set.of(usual)))
                            .add(outcome(List.of(change))))
                    .toList();
        }

        /** Each of the two in turn a step nearer, as long as they serve. */
        private List<OfReading> drawnNearer(List<OfReading> pair) {
            for (int i = 0; i < pair.size(); i++) {
                Optional<OfReading> nearer = pair.get(i).nearer();
                if (nearer.isPresent()) {
                    List<OfReading> drawn = new ArrayList<>(pair);
                    drawn.set(i, nearer.get());
                    if (serve(drawn)) {
                        return drawnNearer(drawn);
                    }
                }
            }
            return pair;
        }
    }
}
