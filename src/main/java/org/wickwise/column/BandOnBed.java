package org.wickwise.column;

import java.util.Optional;

/**
 * A dye's band on the bed between two pours.
 *
 * @param position its middle, as a share of the bed from the top; 0 when loaded
 * @param variance of its length, as a share of the bed squared
 * @param inletMillilitres what has been poured since it was loaded
 * @param retentionFactor k in the eluent it last met; infinite before the first
 */
public record BandOnBed(double position, double variance, double inletMillilitres, double retentionFactor) {

    public static BandOnBed loaded() {
        return new BandOnBed(0, 0, 0, Double.POSITIVE_INFINITY);
    }

    public Optional<Band> leavingIn(double k, double columnVolumeMillilitres, double plates) {
        if (k == Double.POSITIVE_INFINITY) {
            return Optional.empty();
        }
        double rest = Math.max(0, 1 - position);
        double inlet = inletMillilitres + rest * columnVolumeMillilitres * k;
        double length = variance * Math.pow(compression(retentionFactor, k), 2) + rest / plates;
        return Optional.of(
                new Band(columnVolumeMillilitres + inlet, columnVolumeMillilitres * (1 + k) * Math.sqrt(length)));
    }

    public BandOnBed after(Pour pour, double columnVolumeMillilitres, double plates) {
        double k = pour.retentionFactor();
        double moved = pour.millilitres() / (columnVolumeMillilitres * k);
        return new BandOnBed(
                position + moved,
                variance * Math.pow(compression(retentionFactor, k), 2) + moved / plates,
                inletMillilitres + pour.millilitres(),
                k);
    }

    private static double compression(double k1, double k2) {
        double before = k1 == Double.POSITIVE_INFINITY ? 1 : k1 / (1 + k1);
        double after = k2 == Double.POSITIVE_INFINITY ? 1 : k2 / (1 + k2);
        return before == 0 ? 1 : after / before;
    }
}
