package org.wickwise.strip;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.wickwise.text.Numbers;

/**
 * The straight line of RM over a measure x of the eluent, fitted to strips with weights 1/(u^2 + scatter^2). The scatter
 * is that of the model: real dyes lie off their line by so much, in the strips and in what is reckoned from them, so a
 * prediction is never surer than it. With three or more strips that scatter more than this allows, everything is widened
 * by the Birge ratio (Birge, Phys. Rev. 1932, 40, 207; JCGM 100:2008, H.3).
 *
 * @param middle weighted mean of x
 * @param rmAtMiddle RM there
 * @param slope change of RM for one unit of x
 * @param variance of RM at the middle, before any widening
 * @param slopeVariance of the slope, before any widening
 * @param scatter standard deviation of single eluents about the line, in RM
 * @param birgeRatio 1 or more
 */
public record RetentionLine(
        double middle,
        double rmAtMiddle,
        double slope,
        double variance,
        double slopeVariance,
        double scatter,
        double birgeRatio) {

    /**
     * What one strip says.
     *
     * @param x the measure of its eluent
     * @param rm log10 k
     * @param uncertainty standard uncertainty of RM
     */
    public record Point(double x, double rm, double uncertainty) {}

    /**
     * The line through strips in eluents of at least two different measures.
     *
     * @param scatter of the model in RM, above 0
     * @return empty for fewer: one strip fixes no line
     */
    public static Optional<RetentionLine> through(List<Point> points, double scatter) {
        if (!(scatter > 0)) {
            throw new IllegalArgumentException(
                    "the scatter of the line is " + scatter + "; expected a number above 0, or a line looks exact");
        }
        long measures =
                points.stream().map(Point::x).map(Numbers::steady).distinct().count();
        if (measures < 2) {
            return Optional.empty();
        }
        ToDoubleFunction<Point> weight = point -> 1 / (Math.pow(point.uncertainty(), 2) + scatter * scatter);
        double weights = points.stream().mapToDouble(weight).sum();
        double middle = mean(points, weight, Point::x, weights);
        double rmAtMiddle = mean(points, weight, Point::rm, weights);
        double spread = points.stream()
                .mapToDouble(point -> weight.applyAsDouble(point) * Math.pow(point.x() - middle, 2))
                .sum();
        double slope = points.stream()
                        .mapToDouble(
                                point -> weight.applyAsDouble(point) * (point.x() - middle) * (point.rm() - rmAtMiddle))
                        .sum()
                / spread;
        double chiSquare = points.stream()
                .mapToDouble(point -> weight.applyAsDouble(point)
                        * Math.pow(point.rm() - rmAtMiddle - slope * (point.x() - middle), 2))
                .sum();
        double birge = points.size() == 2 ? 1 : Math.max(1, Math.sqrt(chiSquare / (points.size() - 2)));
        return Optional.of(new RetentionLine(middle, rmAtMiddle, slope, 1 / weights, 1 / spread, scatter, birge));
    }

    /** RM at a measure. */
    public double rmAt(double x) {
        return rmAtMiddle + slope * (x - middle);
    }

    /** Standard uncertainty of the RM that a strip at this measure would show, never below the scatter of the model. */
    public double uncertaintyAt(double x) {
        return birgeRatio * Math.sqrt(scatter * scatter + variance + slopeVariance * Math.pow(x - middle, 2));
    }

    /** Standard uncertainty of the slope. */
    public double slopeUncertainty() {
        return birgeRatio * Math.sqrt(slopeVariance);
    }

    /** The Rf that a strip at this measure would show. */
    public RetardationFactor retardationAt(double x) {
        return RetardationFactor.ofRm(rmAt(x), uncertaintyAt(x));
    }

    private static double mean(
            List<Point> points, ToDoubleFunction<Point> weight, ToDoubleFunction<Point> value, double weights) {
        return points.stream()
                        .mapToDouble(point -> weight.applyAsDouble(point) * value.applyAsDouble(point))
                        .sum()
                / weights;
    }
}
