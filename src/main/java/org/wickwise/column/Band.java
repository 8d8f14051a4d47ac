package org.wickwise.column;

import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How one dye leaves a column: the middle and the width of its band at the outlet, counted in millilitres from the moment
 * the first pour meets the loaded bed.
 *
 * @param middleMillilitres elution volume of the middle
 * @param sigmaMillilitres standard deviation of the band
 */
public record Band(double middleMillilitres, double sigmaMillilitres) {

    private static final double SIGMAS_EACH_SIDE = 2;

    /**
     * Steps of eluent in closed form. While an eluent is poured, a dye moves the share dV/(V0 k) of the bed, counted in
     * inlet volume; it is out when the shares add up to 1, and V_R = V0 + inlet volume used (fundamental equation of
     * gradient elution: Drake 1955, Freiling 1955; Jandera and Churacek, Gradient Elution in Column Liquid
     * Chromatography, 1985). The variance along the bed grows by dx/N and is multiplied by G^2 where the front of the next
     * eluent overtakes the band, G = k2 (1 + k1)/(k1 (1 + k2)); at the outlet sigma_V = V0 (1 + k) sqrt(variance).
     * Holds for unretained sharp fronts and dilute dyes.
     *
     * @param pours in the order of pouring; the last one goes on as long as it takes
     * @param columnVolumeMillilitres V0, the liquid in the bed, above 0
     * @param plates N of the column, above 0
     * @return empty when the dye does not move in the last pour
     */
    public static Optional<Band> of(List<Pour> pours, double columnVolumeMillilitres, double plates) {
        return of(BandOnBed.loaded(), pours, columnVolumeMillilitres, plates);
    }

    /** The same for a load that stands on the bed otherwise than as a thin band at its top. */
    public static Optional<Band> of(BandOnBed load, List<Pour> pours, double columnVolumeMillilitres, double plates) {
        BandOnBed band = load;
        for (int i = 0; i < pours.size(); i++) {
            BandOnBed next = band.after(pours.get(i), columnVolumeMillilitres, plates);
            if (next.position() >= 1 || i == pours.size() - 1) {
                return band.leavingIn(pours.get(i).retentionFactor(), columnVolumeMillilitres, plates);
            }
            band = next;
        }
        return Optional.empty();
    }

    /** Where the colour begins: the middle less two standard deviations, not below 0. */
    public double fromMillilitres() {
        return Math.max(0, middleMillilitres - SIGMAS_EACH_SIDE * sigmaMillilitres);
    }

    /** Where the colour ends: the middle and two standard deviations. */
    public double toMillilitres() {
        return middleMillilitres + SIGMAS_EACH_SIDE * sigmaMillilitres;
    }

    /** Four standard deviations, the width between the tangents at the base line. */
    public double baseWidthMillilitres() {
        return 2 * SIGMAS_EACH_SIDE * sigmaMillilitres;
    }

    /** How many fractions of a size, above 0, the band fills. */
    public double fractionsOf(double millilitres) {
        return baseWidthMillilitres() / Expected.aboveZero("the size of a fraction", millilitres);
    }

    /** The share of the dye that leaves between two volumes, 0 to 1; the band is Gaussian. */
    public double shareBetween(double fromMillilitres, double toMillilitres) {
        NormalDistribution leaving = new NormalDistribution(middleMillilitres, sigmaMillilitres);
        return leaving.cumulativeProbability(toMillilitres) - leaving.cumulativeProbability(fromMillilitres);
    }

    /** Resolution from a band that leaves later, Rs = (V2 - V1)/(2 (sigma1 + sigma2)); 1.5 is parted to the base line. */
    public double resolutionTo(Band later) {
        return (later.middleMillilitres - middleMillilitres) / (2 * (sigmaMillilitres + later.sigmaMillilitres));
    }
}
