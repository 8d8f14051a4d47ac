package org.wickwise.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wickwise.reason.Levels;
import org.wickwise.reason.Reason;

/**
 * Where the boxes of a reason stand: in columns, each statement left of everything it rests on, and where lines pass the
 * columns between. Confined to one picture.
 */
final class ReasonLayout {

    private static final int SWEEPS = 4;
    private static final double PASSING = 8;
    private static final double GAP = 16;

    /** A box, or a line that passes a column on its way to a box further right. */
    static final class Place {

        private final int column;
        private final double height;
        private final List<Place> restsOn = new ArrayList<>();
        private final List<Place> carries = new ArrayList<>();
        private double middle;

        private Place(int column, double height) {
            this.column = column;
            this.height = height;
        }

        int column() {
            return column;
        }

        double top() {
            return middle - height / 2;
        }

        double middle() {
            return middle;
        }

        List<Place> restsOn() {
            return restsOn;
        }
    }

    private final Map<Reason, ReasonBox> boxes = new LinkedHashMap<>();
    private final Map<Reason, Place> places = new LinkedHashMap<>();
    private final Map<Reason, Integer> columns = new HashMap<>();
    private final List<List<Place>> byColumn = new ArrayList<>();
    private final int leftOut;
    private double height;

    /** @param levels how many steps below the statement are drawn, 0 or more */
    ReasonLayout(Reason statement, int levels) {
        Map<Reason, Integer> depths = Levels.of(statement);
        Set<Reason> drawn = new LinkedHashSet<>();
        depths.forEach((reason, depth) -> {
            if (depth <= levels) {
                drawn.add(reason);
            }
        });
        leftOut = depths.size() - drawn.size();
        findColumns(drawn);
        lay(drawn);
        connect(drawn);
        order();
        stack();
    }

    Map<Reason, ReasonBox> boxes() {
        return boxes;
    }

    Place placeOf(Reason reason) {
        return places.get(reason);
    }

    /** Every box and every passing of a line. */
    List<Place> all() {
        return byColumn.stream().flatMap(List::stream).toList();
    }

    boolean isPassing(Place place) {
        return place.height == PASSING;
    }

    /** How many reasons lie deeper than is drawn. */
    int leftOut() {
        return leftOut;
    }

    int columnCount() {
        return byColumn.size();
    }

    double height() {
        return height;
    }

    /** A reason stands one column right of the rightmost statement that needs it; every statement is seen to first. */
    private void findColumns(Set<Reason> drawn) {
        Map<Reason, Integer> stillNeeding = new HashMap<>();
        drawn.forEach(
                reason -> groundsIn(drawn, reason).forEach(ground -> stillNeeding.merge(ground, 1, Integer::sum)));
        List<Reason> ready = new ArrayList<>();
        ready.add(drawn.iterator().next());
        columns.put(ready.get(0), 0);
        for (int next = 0; next < ready.size(); next++) {
            Reason reason = ready.get(next);
            for (Reason ground : groundsIn(drawn, reason)) {
                columns.merge(ground, columns.get(reason) + 1, Math::max);
                if (stillNeeding.merge(ground, -1, Integer::sum) == 0) {
                    ready.add(ground);
                }
            }
        }
    }

    private void lay(Set<Reason> drawn) {
        for (Reason reason : drawn) {
            int notDrawn = (int) reason.grounds().stream()
                    .distinct()
                    .filter(ground -> !drawn.contains(ground))
                    .count();
            ReasonBox box = ReasonBox.of(reason, notDrawn);
            boxes.put(reason, box);
            places.put(reason, add(new Place(columns.get(reason), box.height())));
        }
    }

    /** Lines to the same box share their way through the columns between. */
    private void connect(Set<Reason> drawn) {
        record Way(Reason to, int column) {}
        Map<Way, Place> ways = new HashMap<>();
        for (Reason reason : drawn) {
            for (Reason ground : groundsIn(drawn, reason)) {
                Place from = places.get(reason);
                for (int column = from.column + 1; column < columns.get(ground); column++) {
                    int here = column;
                    Place through = ways.computeIfAbsent(new Way(ground, column), way -> add(new Place(here, PASSING)));
                    join(from, through);
                    from = through;
                }
                join(from, places.get(ground));
            }
        }
    }

    private static void join(Place from, Place to) {
        if (!from.restsOn.contains(to)) {
            from.restsOn.add(to);
            to.carries.add(from);
        }
    }

    private Place add(Place place) {
        while (byColumn.size() <= place.column) {
            byColumn.add(new ArrayList<>());
        }
        byColumn.get(place.column).add(place);
        return place;
    }

    /** Each column in the order of the middles of its neighbours, from left to right and back (barycentre method). */
    private void order() {
        stack();
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int i = 1; i < byColumn.size(); i++) {
                sort(byColumn.get(i), true);
            }
            for (int i = byColumn.size() - 2; i > 0; i--) {
                sort(byColumn.get(i), false);
            }
        }
        for (int i = 1; i < byColumn.size(); i++) {
            sort(byColumn.get(i), true);
        }
    }

    private static void sort(List<Place> column, boolean fromTheLeft) {
        Map<Place, Double> wanted = new HashMap<>();
        column.forEach(place -> wanted.put(place, mean(fromTheLeft ? place.carries : place.restsOn, place.middle)));
        column.sort(Comparator.comparingDouble(wanted::get));
        double top = 0;
        for (Place place : column) {
            place.middle = top + place.height / 2;
            top += place.height + GAP;
        }
    }

    private static double mean(List<Place> neighbours, double otherwise) {
        return neighbours.stream().mapToDouble(Place::middle).average().orElse(otherwise);
    }

    /** The fullest column from top to bottom, the others beside what they belong to. */
    private void stack() {
        height = byColumn.stream().mapToDouble(ReasonLayout::needed).max().orElse(0);
        for (List<Place> column : byColumn) {
            double[] sizes =
                    column.stream().mapToDouble(place -> place.height + GAP).toArray();
            double[] wanted = new double[sizes.length];
            double least = 0;
            for (int i = 0; i < wanted.length; i++) {
                least = Math.max(least, mean(column.get(i).carries, height / 2));
                wanted[i] = least;
            }
            double[] middles = Spread.apart(wanted, sizes, 0, height);
            for (int i = 0; i < middles.length; i++) {
                column.get(i).middle = middles[i];
            }
        }
    }

    private static double needed(List<Place> column) {
        return column.stream().mapToDouble(place -> place.height + GAP).sum();
    }

    private static List<Reason> groundsIn(Set<Reason> drawn, Reason reason) {
        return reason.grounds().stream().distinct().filter(drawn::contains).toList();
    }
}
