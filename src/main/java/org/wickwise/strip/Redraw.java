package org.wickwise.strip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * Reads a strip again as somebody else might have read it: every reading moved by a Gaussian error of its own standard
 * uncertainty, the origin's error shared by all distances (JCGM 101:2008, propagation by drawing).
 *
 * @param strip as redrawn; what was only watched stays as it is
 * @param errors by spot, in the order of the strip, how far its Rf moved in units of its standard uncertainty; 0 for a
 *     spot that was only watched
 */
public record Redraw(Strip strip, List<Double> errors) {

    public Redraw {
        errors = List.copyOf(errors);
    }

    /** @param quotedUncertainty standard uncertainty of an Rf that came without ruler readings */
    public static Redraw of(Strip strip, Ruler ruler, double quotedUncertainty, RandomGenerator random) {
        double origin = ruler.readingMillimetres() * random.nextGaussian();
        double frontError = ruler.readingMillimetres() * random.nextGaussian();
        OptionalDouble front = strip.frontMillimetres().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(strip.frontMillimetres().getAsDouble() + frontError - origin);
        Map<String, Double> errors = new HashMap<>();
        strip.spots().stream()
                .map(spot -> spot.dyes().toString())
                .sorted()
                .forEach(dyes -> errors.put(dyes, random.nextGaussian()));
        List<Spot> spots = strip.spots().stream()
                .map(spot -> new Spot(
                        spot.dyes(),
                        position(
                                spot.position(),
                                front,
                                origin,
                                ruler,
                                quotedUncertainty,
                                errors.get(spot.dyes().toString())),
                        spot.place()))
                .toList();
        Strip redrawn = strip.with(front, spots);
        return new Redraw(redrawn, errors(strip, redrawn, ruler, quotedUncertainty));
    }

    private static Spot.Position position(
            Spot.Position position,
            OptionalDouble front,
            double origin,
            Ruler ruler,
            double quotedUncertainty,
            double error) {
        if (position instanceof Spot.Travelled travelled) {
            double moved = travelled.millimetres() + ruler.spotMillimetres() * error - origin;
            return new Spot.Travelled(between(0, moved, front.orElseThrow()));
        }
        if (position instanceof Spot.Quoted quoted) {
            return new Spot.Quoted(between(0, quoted.retardationFactor() + quotedUncertainty * error, 1));
        }
        if (position instanceof Spot.Remembered remembered) {
            RetardationFactor known = remembered.retardationFactor();
            double drawn = between(0, known.value() + known.uncertainty() * error, 1);
            return new Spot.Remembered(
                    new RetardationFactor(drawn, known.uncertainty()), remembered.from(), remembered.reason());
        }
        return position;
    }

    private static double between(double least, double value, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private static List<Double> errors(Strip read, Strip redrawn, Ruler ruler, double quotedUncertainty) {
        return IntStream.range(0, read.spots().size())
                .mapToObj(spot -> error(read, redrawn, spot, ruler, quotedUncertainty))
                .toList();
    }

    private static double error(Strip read, Strip redrawn, int spot, Ruler ruler, double quotedUncertainty) {
        Spot.Position before = read.spots().get(spot).position();
        Spot.Position after = redrawn.spots().get(spot).position();
        if (before instanceof Spot.Travelled from && after instanceof Spot.Travelled to) {
            RetardationFactor first = RetardationFactor.measured(
                    from.millimetres(), read.frontMillimetres().orElseThrow(), ruler);
            return (to.millimetres() / redrawn.frontMillimetres().orElseThrow() - first.value()) / first.uncertainty();
        }
        if (before instanceof Spot.Quoted from && after instanceof Spot.Quoted to) {
            return (to.retardationFactor() - from.retardationFactor()) / quotedUncertainty;
        }
        if (before instanceof Spot.Remembered from && after instanceof Spot.Remembered to) {
            RetardationFactor known = from.retardationFactor();
            return (to.retardationFactor().value() - known.value()) / known.uncertainty();
        }
        return 0;
    }
}
