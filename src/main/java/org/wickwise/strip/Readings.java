package org.wickwise.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.wickwise.reason.Reason;
import org.wickwise.strip.RetentionScale.Position;
import org.wickwise.text.Numbers;

/**
 * The readings of one dye, placed on one scale. A reading whose interval reaches the origin or the front gives a bound of
 * RM and no point.
 */
final class Readings {

    private static final double COVERAGE = 2;

    private final List<Placed> points = new ArrayList<>();
    private final List<Placed> atOrigin = new ArrayList<>();
    private final List<Placed> atFront = new ArrayList<>();

    private record Placed(double x, Movement.Measured movement, List<Reason> grounds) {

        RetardationFactor rf() {
            return movement.retardationFactor();
        }

        /** Lowest RM of a spot at the origin. */
        double rmAtLeast() {
            return rm(rf().highest());
        }

        /** Highest RM of a spot at the front. */
        double rmAtMost() {
            return rm(rf().lowest());
        }

        private static double rm(double retardation) {
            return Math.log10(1 / retardation - 1);
        }
    }

    static Readings of(RetentionScale scale, List<Movement.Measured> measured) {
        Readings readings = new Readings();
        measured.stream()
                .sorted(Comparator.comparing(Movement.Measured::eluent))
                .forEach(movement -> scale.of(movement.eluent())
                        .map(position -> placed(movement, position))
                        .ifPresent(readings::add));
        return readings;
    }

    private static Placed placed(Movement.Measured movement, Position position) {
        return new Placed(position.x(), movement, position.grounds());
    }

    private void add(Placed placed) {
        boolean reachesOrigin = placed.rf().lowest() <= 0;
        boolean reachesFront = placed.rf().highest() >= 1;
        if (reachesOrigin && !reachesFront) {
            atOrigin.add(placed);
        } else if (reachesFront && !reachesOrigin) {
            atFront.add(placed);
        } else if (!reachesOrigin) {
            points.add(placed);
        }
    }

    boolean isEmpty() {
        return count() == 0;
    }

    int count() {
        return points.size() + atOrigin.size() + atFront.size();
    }

    double lowest() {
        return positions().min().orElseThrow();
    }

    double highest() {
        return positions().max().orElseThrow();
    }

    /** Whether x lies between the eluents of the strips, or beyond by no more than a share of their span. */
    boolean covers(double x, double reachBeyond) {
        double span = highest() - lowest();
        double beyond = Math.max(lowest() - x, x - highest());
        boolean isWithinReach = beyond <= 0 || span > 0 && Numbers.steady(beyond / span) <= reachBeyond;
        return isWithinReach && count() > 1;
    }

    List<RetentionLine.Point> points() {
        return points.stream()
                .map(placed -> new RetentionLine.Point(
                        placed.x(), placed.rf().rm(), placed.rf().rmUncertainty()))
                .toList();
    }

    /** A spot at the origin or the front that the line would put clearly elsewhere. */
    Optional<Movement.Measured> boundOffTheLine(RetentionLine line) {
        Optional<Placed> low = atOrigin.stream()
                .filter(placed ->
                        line.rmAt(placed.x()) + COVERAGE * line.uncertaintyAt(placed.x()) < placed.rmAtLeast())
                .findFirst();
        return low.or(() -> atFront.stream()
                        .filter(placed ->
                                line.rmAt(placed.x()) - COVERAGE * line.uncertaintyAt(placed.x()) > placed.rmAtMost())
                        .findFirst())
                .map(Placed::movement);
    }

    /** The RM below which the dye does not fall at x, from spots at the origin; empty where nothing bounds it. */
    Optional<Double> rmAtLeast(double x, double scatter) {
        OptionalDouble stillAtOrigin = atOrigin.stream()
                .filter(placed -> placed.x() >= x)
                .mapToDouble(Placed::rmAtLeast)
                .max();
        OptionalDouble chord = atOrigin.stream()
                .flatMapToDouble(bound -> points.stream()
                        .filter(point -> bound.x() <= x && x <= point.x() && bound.x() < point.x())
                        .mapToDouble(point -> chord(x, point, bound.x(), Math.max(bound.rmAtLeast(), rm(point)))
                                - COVERAGE * doubt(point, scatter)))
                .max();
        return higher(stillAtOrigin, chord);
    }

    /** The RM above which the dye does not rise at x, from spots at the front; empty where nothing bounds it. */
    Optional<Double> rmAtMost(double x, double scatter) {
        OptionalDouble alreadyAtFront = atFront.stream()
                .filter(placed -> placed.x() <= x)
                .mapToDouble(placed -> -placed.rmAtMost())
                .max();
        OptionalDouble chord = atFront.stream()
                .flatMapToDouble(bound -> points.stream()
                        .filter(point -> point.x() <= x && x <= bound.x() && point.x() < bound.x())
                        .mapToDouble(point -> -(chord(x, point, bound.x(), Math.min(bound.rmAtMost(), rm(point)))
                                + COVERAGE * doubt(point, scatter))))
                .max();
        return higher(alreadyAtFront, chord).map(negative -> -negative);
    }

    List<Reason> reasons() {
        List<Reason> reasons = new ArrayList<>();
        List.of(points, atOrigin, atFront)
                .forEach(several -> several.forEach(placed -> {
                    reasons.add(placed.movement().reason());
                    reasons.addAll(placed.grounds());
                }));
        return reasons;
    }

    private static double chord(double x, Placed point, double boundX, double boundRm) {
        return rm(point) + (boundRm - rm(point)) * (x - point.x()) / (boundX - point.x());
    }

    private static double doubt(Placed point, double scatter) {
        return Math.hypot(point.rf().rmUncertainty(), scatter);
    }

    private static double rm(Placed point) {
        return point.rf().rm();
    }

    private static Optional<Double> higher(OptionalDouble one, OptionalDouble other) {
        return DoubleStream.concat(one.stream(), other.stream()).boxed().max(Comparator.naturalOrder());
    }

    private DoubleStream positions() {
        return DoubleStream.concat(
                points.stream().mapToDouble(Placed::x),
                DoubleStream.concat(
                        atOrigin.stream().mapToDouble(Placed::x),
                        atFront.stream().mapToDouble(Placed::x)));
    }
}
