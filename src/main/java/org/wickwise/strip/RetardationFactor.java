package org.wickwise.strip;

import java.util.List;
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
        double weights = several.stream().mapToDouble(RetardationFactor::weight).sum();
        double mean = several.stream().mapToDouble(rf -> rf.weight() * rf.value).sum() / weights;
        double chiSquare = several.stream()
                .mapToDouble(rf -> rf.weight() * Math.pow(rf.value - mean, 2))
                .sum();
        double birge = several.size() == 1 ? 1 : Math.max(1, Math.sqrt(chiSquare / (several.size() - 1)));
        return new RetardationFactor(mean, birge / Math.sqrt(weights));
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

    /** Column volumes until the middle of the band leaves: 1/Rf. Infinite for a spot read at 0. */
    public double columnVolumes() {
        return 1 / value;
    }

    /** "0.33 ± 0.02", the half-width being the 95 % one. */
    public String shown() {
        return Numbers.fixed(value, 2) + " ± " + Numbers.fixed(COVERAGE * uncertainty, 2);
    }

    private double weight() {
        return 1 / (uncertainty * uncertainty);
    }
}
