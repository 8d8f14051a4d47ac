package org.wickwise.strip;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.wickwise.text.Numbers;

/**
 * Rf, the distance a spot travelled over the distance of the solvent front, both from the origin (IUPAC; Ettre, Pure
 * Appl. Chem. 1993, 65, 819), with its standard uncertainty.
 *
 * @param value 0 to 1
 * @param uncertainty standard uncertainty, above 0
 */
public record RetardationFactor(double value, double uncertainty) {

    /** Coverage factor for about 95 %. */
    private static final double COVERAGE = 2;

    /**
     * Up to this u/Rf, k and RM are taken as linear in Rf; there a step of u downwards changes 1/Rf by a fifth more than one
     * upwards. How much is too much is our choice.
     */
    private static final double LINEAR_WITHIN = 0.1;

    /** @throws IllegalArgumentException when the value is not 0 to 1 */
    public RetardationFactor {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("an Rf of " + value + "; expected 0 to 1");
        }
    }

    /**
     * From ruler readings. The origin enters both distances, so its error is shared (JCGM 100:2008, 5.1.2, equation
     * 10): u(Rf) = sqrt(u_s^2 + Rf^2 u_f^2 + (1 - Rf)^2 u_o^2) / front.
     *
     * @param travelMillimetres 0 to the front
     * @param frontMillimetres above 0
     */
    public static RetardationFactor measured(double travelMillimetres, double frontMillimetres, Ruler ruler) {
        double value = travelMillimetres / frontMillimetres;
        double reading = ruler.readingMillimetres();
        double uncertainty = Math.hypot(ruler.spotMillimetres(), Math.hypot(value * reading, (1 - value) * reading))
                / frontMillimetres;
        return new RetardationFactor(value, uncertainty);
    }

    /**
     * Several strips of the same dye in the same eluent: mean weighted by 1/u^2, uncertainty widened by the Birge
     * ratio where the strips scatter more than their uncertainties allow (Birge, Phys. Rev. 1932, 40, 207).
     *
     * @param several at least one
     */
    public static RetardationFactor combined(List<RetardationFactor> several) {
        WeightedMean mean = WeightedMean.of(
                several.stream().map(RetardationFactor::asNumber).toList());
        // Rounding may carry the mean of several spots at the front a last digit beyond it.
        return new RetardationFactor(Math.min(1, mean.value()), mean.uncertainty());
    }

    /**
     * From RM = log10 k: Rf = 1/(1 + 10^RM), u(Rf) = 2.3026 Rf (1 - Rf) u(RM) (Bate-Smith and Westall, Biochim. Biophys.
     * Acta 1950, 4, 427, from memory; JCGM 100:2008, 5.1.2).
     *
     * @param rm any finite number
     * @param uncertainty standard uncertainty of RM, above 0
     */
    public static RetardationFactor ofRm(double rm, double uncertainty) {
        double value = 1 / (1 + Math.pow(10, rm));
        return new RetardationFactor(value, Math.log(10) * value * (1 - value) * uncertainty);
    }

    /** The same as a number like any other. */
    public Uncertain asNumber() {
        return new Uncertain(value, uncertainty);
    }

    /** The low end of the 95 % interval, not below 0. */
    public double lowest() {
        return Math.max(0, value - COVERAGE * uncertainty);
    }

    /** The high end of the 95 % interval, not above 1. */
    public double highest() {
        return Math.min(1, value + COVERAGE * uncertainty);
    }

    /** Retention factor k = (1 - Rf)/Rf; infinite for a spot read at 0. */
    public double retentionFactor() {
        return (1 - value) / value;
    }

    /**
     * Standard uncertainty of k, u(Rf)/Rf^2 (JCGM 100:2008, 5.1.2). Meant where {@link #isFarFromBothEnds()}; nearer
     * to the ends the interval is lopsided, and {@link #retentionShown()} maps its ends.
     *
     * @throws IllegalStateException for a spot read at the origin or the front
     */
    public double retentionUncertainty() {
        return uncertainty / (insideTheStrip() * value);
    }

    /**
     * RM = log10((1 - Rf)/Rf), which is log10 k on the plane. It adds up over groups and follows the strength of an
     * eluent along a straight line, which Rf does not (Bate-Smith and Westall, Biochim. Biophys. Acta 1950, 4, 427,
     * from memory).
     *
     * @throws IllegalStateException for a spot read at the origin or the front
     */
    public double rm() {
        return Math.log10(1 / insideTheStrip() - 1);
    }

    /**
     * Standard uncertainty of RM, u(Rf)/(2.3026 Rf (1 - Rf)) (JCGM 100:2008, 5.1.2).
     *
     * @throws IllegalStateException for a spot read at the origin or the front
     */
    public double rmUncertainty() {
        return uncertainty / (Math.log(10) * insideTheStrip() * (1 - value));
    }

    /** Whether RM and k are numbers here: the spot was read neither at the origin nor at the front. */
    public boolean isInsideTheStrip() {
        return value > 0 && value < 1;
    }

    /**
     * Whether the uncertainty is under a tenth of the way to either end, so that RM and k scatter evenly to both sides.
     * The tenth is our choice.
     */
    public boolean isFarFromBothEnds() {
        return isInsideTheStrip()
                && Numbers.steady(uncertainty / value) < LINEAR_WITHIN
                && Numbers.steady(uncertainty / (1 - value)) < LINEAR_WITHIN;
    }

    /** k in words: "k 2.0 ± 0.2", "k 4 to 11", or a bound where the 95 % interval reaches an end of the strip. */
    public String retentionShown() {
        return RetentionWords.of(this);
    }

    /**
     * The chance that the true Rf is at most this, the reading taken as Gaussian; one half where the limit is the reading
     * itself (JCGM 100:2008, 4.3.6 and G.1).
     *
     * @return 0 to 1
     */
    public double chanceAtMost(double limit) {
        return asNumber().chanceAtMost(limit);
    }

    /**
     * The chance that the true Rf is above the lower and at most the upper of two limits.
     *
     * @param to not below {@code from}
     * @return 0 to 1
     */
    public double chanceBetween(double from, double to) {
        return chanceAtMost(to) - chanceAtMost(from);
    }

    /** How far this lies from another Rf, in units of the standard uncertainty of the difference; both independent. */
    public double timesUncertaintyFrom(RetardationFactor other) {
        return Math.abs(value - other.value) / Math.hypot(uncertainty, other.uncertainty);
    }

    /**
     * Whether two independent readings are different: |Rf1 - Rf2| / sqrt(u1^2 + u2^2) is above the Gaussian quantile,
     * 1.96 at 95 % (JCGM 100:2008, equation 10).
     *
     * @param confidence above 0 and below 1
     */
    public boolean differsFrom(RetardationFactor other, double confidence) {
        return timesUncertaintyFrom(other)
                > new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2);
    }

    /** Column volumes until the middle of the band leaves: 1/Rf. Infinite for a spot read at 0. */
    public double columnVolumes() {
        return 1 / value;
    }

    /** "0.33 ± 0.02", the half-width being the 95 % one. */
    public String shown() {
        return Numbers.fixed(value, 2) + " ± " + Numbers.fixed(COVERAGE * uncertainty, 2);
    }

    private double insideTheStrip() {
        if (!isInsideTheStrip()) {
            throw new IllegalStateException("an Rf of " + Numbers.plain(value, 3)
                    + " gives no RM and no k, only a bound; expected a spot between origin and front");
        }
        return value;
    }
}
