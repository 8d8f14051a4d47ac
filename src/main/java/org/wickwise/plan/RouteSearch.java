package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Eluent;

/**
 * Finds the best routes exactly, over everything the column may be packed with, every order of eluents and every tail
 * that may be waited for. For each set of dyes on the column it first works out the least that the way on can count,
 * whatever came before; then it follows, the most promising first, only ways that can still be among the best.
 */
final class RouteSearch {

    private final Choices choices;
    private final Preferences preferences;
    private final Set<Eluent> forbidden;
    private final boolean stocked;
    private final int wanted;
    private final Optional<Eluent> required;
    private final double creptAtMost;
    private final Map<OnBed, List<WayOn>> waysOn = new HashMap<>();
    private final List<Route> best = new ArrayList<>();
    private boolean searched;
    private long stepsTried;

    /**
     * Dyes still on the column, as bits.
     *
     * @param crept those among them that have crept too far already; of their way on nothing is certain
     * @param due whether the eluent that is asked for has still to be poured
     */
    private record OnBed(int all, int crept, boolean due) {

        OnBed without(int leaving, boolean stillDue) {
            return new OnBed(all & ~leaving, crept & ~leaving, stillDue);
        }
    }

    /**
     * One step from a set of dyes.
     *
     * @param least by criterion, the least that the step and everything after it count
     */
    private record WayOn(Move move, double tail, double[] least) {}

    /** A plan on its way, the step it takes next, and the least it will count in the end. */
    private record Prospect(Pouring pouring, WayOn next, double[] least) {}

    /**
     * @param stocked whether no step may take more than the bottles hold
     * @param wanted how many of the best routes are looked for, at least 1
     */
    RouteSearch(Choices choices, Preferences preferences, Set<Eluent> forbidden, boolean stocked, int wanted) {
        this(choices, preferences, forbidden, stocked, wanted, Optional.empty());
    }

    /** The best routes that pour this eluent. */
    static List<Route> pouring(Eluent required, Choices choices, Preferences preferences) {
        return new RouteSearch(choices, preferences, Set.of(), true, 1, Optional.of(required)).routes();
    }

    private RouteSearch(
            Choices choices,
            Preferences preferences,
            Set<Eluent> forbidden,
            boolean stocked,
            int wanted,
            Optional<Eluent> required) {
        this.choices = choices;
        this.preferences = preferences;
        this.forbidden = forbidden;
        this.stocked = stocked;
        this.wanted = wanted;
        this.required = required;
        this.creptAtMost = preferences.creepingComesBeforeCost() ? choices.creepLimit() : 1;
    }

    /** The best route; empty when no order of eluents brings every dye off. */
    Optional<Route> best() {
        return routes().stream().findFirst();
    }

    /** The best routes, the best first, no two with the same order of eluents; fewer than wanted when there are no more. */
    List<Route> routes() {
        if (!searched) {
            searched = true;
            follow(beginnings());
        }
        return List.copyOf(best);
    }

    /** How many steps were followed, counting every pouring of an eluent after a different history. */
    long stepsTried() {
        return stepsTried;
    }

    private List<Prospect> beginnings() {
        List<Prospect> beginnings = new ArrayList<>();
        for (int eluent = 0; eluent < choices.pourable().size(); eluent++) {
            for (Packing packing : choices.pourable().get(eluent).packings()) {
                Pouring packed = Pouring.packed(packing, choices, preferences);
                for (WayOn way : waysOn(new OnBed(choices.everyDye(), packed.crept(), required.isPresent()))) {
                    if (way.move().eluent() == eluent && !partsNothing(way)) {
                        beginnings.add(prospect(packed, way));
                    }
                }
            }
        }
        return beginnings;
    }

    private static boolean partsNothing(WayOn way) {
        return way.move().staying() == 0 && way.move().fractions().size() == 1;
    }

    private void follow(List<Prospect> prospects) {
        prospects.sort(Comparator.comparing(Prospect::least, Counts::compare));
        for (Prospect prospect : prospects) {
            if (best.size() == wanted && Counts.compare(prospect.least(), worst().counts()) > 0) {
                return;
            }
            stepsTried++;
            Pouring pouring = prospect.pouring()
                    .then(prospect.next().move(), prospect.next().tail());
            if (stocked && !pouring.isWithinTheBottle()) {
                continue;
            }
            if (pouring.on() == 0) {
                if (best.size() < wanted || Counts.compare(pouring.counts(), worst().counts()) <= 0) {
                    keep(Route.of(pouring));
                }
            } else {
                follow(continuations(pouring));
            }
        }
    }

    private List<Prospect> continuations(Pouring pouring) {
        List<Prospect> prospects = new ArrayList<>();
        int last = pouring.lastEluent().orElseThrow();
        for (WayOn way : waysOn(new OnBed(pouring.on(), pouring.crept(), isDue(pouring)))) {
            int next = way.move().eluent();
            if (best.size() == wanted
                    && Counts.compare(Counts.sum(pouring.counts(), way.least()), worst().counts()) > 0) {
                break;
            }
            if (next != last && !choices.pourable().get(next).notAfter().get(last)) {
                prospects.add(prospect(pouring, way));
            }
        }
        return prospects;
    }

    private Prospect prospect(Pouring pouring, WayOn way) {
        double[] least = Counts.sum(pouring.counts(), way.least());
        OptionalInt last = pouring.lastEluent();
        for (int i = 0; i < least.length; i++) {
            least[i] +=
                    preferences.criteria().get(i).countAfter(last, way.move().eluent(), choices);
        }
        return new Prospect(pouring, way, least);
    }

    private boolean isDue(Pouring pouring) {
        return required.isPresent()
                && pouring.moves().stream()
                        .noneMatch(move -> move.pourable(choices).eluent().equals(required.get()));
    }

    private Route worst() {
        return best.get(best.size() - 1);
    }

    private void keep(Route route) {
        Optional<Route> alike = best.stream()
                .filter(known -> known.names().equals(route.names()))
                .findFirst();
        if (alike.isPresent() && alike.get().compareTo(route) <= 0) {
            return;
        }
        alike.ifPresent(best::remove);
        best.add(route);
        best.sort(Comparator.naturalOrder());
        if (best.size() > wanted) {
            best.remove(wanted);
        }
    }

    /** The steps that are possible with these dyes on the column, by the least they lead to. */
    private List<WayOn> waysOn(OnBed on) {
        List<WayOn> known = waysOn.get(on);
        if (known == null) {
            known = new ArrayList<>();
            for (int eluent = 0; eluent < choices.pourable().size(); eluent++) {
                known.addAll(waysOn(on, eluent));
            }
            known.sort(Comparator.comparing(WayOn::least, Counts::compare));
            waysOn.put(on, known);
        }
        return known;
    }

    private List<WayOn> waysOn(OnBed on, int eluent) {
        Pourable pourable = choices.pourable().get(eluent);
        Optional<Move> move =
                forbidden.contains(pourable.eluent()) ? Optional.empty() : Move.of(on.all(), eluent, choices);
        if (move.isEmpty() || pourable.lastOnly() && move.get().staying() != 0) {
            return List.of();
        }
        boolean stillDue = on.due() && !required.get().equals(pourable.eluent());
        Optional<double[]> rest = leastFrom(on.without(move.get().leaving(), stillDue));
        if (rest.isEmpty()) {
            return List.of();
        }
        double[] leastButCost = Counts.sum(countsButCost(move.get()), rest.get());
        List<WayOn> ways = new ArrayList<>();
        for (double tail : preferences.wishes().tailsToWaitFor()) {
            ways.add(new WayOn(move.get(), tail, withCost(leastButCost, move.get(), on.crept(), tail)));
        }
        return ways;
    }

    private Optional<double[]> leastFrom(OnBed on) {
        if (on.all() == 0) {
            return on.due()
                    ? Optional.empty()
                    : Optional.of(new double[preferences.criteria().size()]);
        }
        return waysOn(on).stream().findFirst().map(WayOn::least);
    }

    /** What a step counts whatever was poured before it. */
    private double[] countsButCost(Move move) {
        double[] counts = new double[preferences.criteria().size()];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = preferences.criteria().get(i).count(move, choices);
        }
        return counts;
    }

    private double[] withCost(double[] counts, Move move, int crept, double tail) {
        int cost = preferences.criteria().indexOf(Criterion.COST);
        if (cost < 0) {
            return counts;
        }
        double[] with = counts.clone();
        with[cost] += Pouring.costOf(
                move.pourable(choices),
                leastColumnVolumes(move, crept, tail),
                preferences.wishes().cost());
        return with;
    }

    /**
     * A dye that has not crept too far has most of the bed before it; if it creeps too far before its step, that counts
     * more than any volume. A dye that has crept may be out with the least pour.
     */
    private double leastColumnVolumes(Move move, int crept, double tail) {
        double rest = 1 - creptAtMost;
        double least = choices.leastColumnVolumes();
        int held = move.leaving() & ~crept;
        for (int dye = 0; rest > 0 && dye < choices.dyes().size(); dye++) {
            Optional<RetardationFactor> retardation = (held & 1 << dye) == 0
                    ? Optional.empty()
                    : move.pourable(choices).reach().get(dye).flatMap(Reach::retardation);
            if (retardation.isPresent()) {
                double k = retardation.get().retentionFactor();
                double sigma = (1 + k) * Math.sqrt(rest / choices.plates());
                least = Math.max(least, 1 + rest * k + tail * sigma);
            }
        }
        return least;
    }
}
