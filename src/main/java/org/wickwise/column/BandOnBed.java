package org.wickwise.column;

import java.util.Optional;

/**
 * A dye's band on the bed between two pours. How it moves and spreads is told at {@link Band#of}.
 *
 * @param position its middle, as a share of the bed from the top; 0 when loaded
 * @param variance of its length, as a share of the bed squared
 * @param inletMillilitres what has been poured since it was loaded
 * @param retentionFactor k in the eluent it last met; infinite before the first
 */
public record BandOnBed(double position, double variance, double inletMillilitres, double retentionFactor) {

    /** A thin band at the top of the bed, before anything is poured. */
    public static BandOnBed loaded() {
        return new BandOnBed(0, 0, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * A load that has sunk in with its liquid before anything is poured: a plug of even strength. Its middle is as far as
     * half of the liquid takes it, and its variance that of an even plug, length^2/12, beside what it has spread on the way
     * (variances of independent causes add up; Sternberg, Adv. Chromatogr. 1966, 2, 205, from memory). At the outlet the
     * plug adds V_load^2/12 to the variance, times (k/k_load)^2 where another eluent overtakes it.
     *
     * @param loadMillilitres above 0
     * @param k of the dye in the liquid of the load, 0 or more; infinite where it does not move
     * @param columnVolumeMillilitres V0, above 0
     * @param plates N of the column, above 0
     */
    public static BandOnBed loadedIn(double loadMillilitres, double k, double columnVolumeMillilitres, double plates) {
        if (k == Double.POSITIVE_INFINITY) {
            return loaded();
        }
        double share = LoadPlug.of(loadMillilitres, columnVolumeMillilitres, k).shareOfBed();
        double position = Math.min(1, loadMillilitres / (2 * columnVolumeMillilitres * k));
        return new BandOnBed(position, position / plates + share * share / 12, 0, k);
    }

    /**
     * The band at the outlet when one more eluent is poured for as long as it takes.
     *
     * @param k of the dye in it, 0 or more
     * @param columnVolumeMillilitres V0, the liquid in the bed, above 0
     * @param plates N of the column, above 0
     * @return empty when the dye does not move in it
     */
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

    /**
     * The band when the front of the next eluent has reached it, however late: that front starts when this pour ends.
     * Its position is 1 or more when the dye leaves before that.
     *
     * @param columnVolumeMillilitres V0, the liquid in the bed, above 0
     * @param plates N of the column, above 0
     */
    public BandOnBed after(Pour pour, double columnVolumeMillilitres, double plates) {
        double k = pour.retentionFactor();
        double moved = pour.millilitres() / (columnVolumeMillilitres * k);
        return new BandOnBed(
                position + moved,
                variance * Math.pow(compression(retentionFactor, k), 2) + moved / plates,
                inletMillilitres + pour.millilitres(),
                k);
    }

    /** What has been poured when the front of the next eluent, which moves with the liquid, reaches the band. */
    public double overtakenAtMillilitres(double columnVolumeMillilitres) {
        return inletMillilitres + position * columnVolumeMillilitres;
    }

    /**
     * G = k2 (1 + k1)/(k1 (1 + k2)), by how much a band's length in the bed changes when an eluent of k2 overtakes it in
     * one of k1; 1 where a dye that was not held at all cannot be overtaken.
     */
    public static double compression(double k1, double k2) {
        double before = k1 == Double.POSITIVE_INFINITY ? 1 : k1 / (1 + k1);
        double after = k2 == Double.POSITIVE_INFINITY ? 1 : k2 / (1 + k2);
        return before == 0 ? 1 : after / before;
    }
}
