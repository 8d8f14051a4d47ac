package org.wickwise.column;

/**
 * The stretch of bed that a load fills evenly, before dispersion.
 *
 * @param shareOfBed its length over that of the bed
 * @param retentionFactor k of the dye in the eluent around it
 */
public record LoadPlug(double shareOfBed, double retentionFactor) {

    /**
     * V_load/(V0 (1 + k)).
     *
     * @param loadMillilitres above 0
     * @param columnVolumeMillilitres V0, above 0
     * @param retentionFactor k in the liquid of the load, 0 or more
     */
    public static LoadPlug of(double loadMillilitres, double columnVolumeMillilitres, double retentionFactor) {
        Expected.aboveZero("the load", loadMillilitres);
        Expected.aboveZero("the column volume", columnVolumeMillilitres);
        Expected.notBelowZero("k in the load", retentionFactor);
        return new LoadPlug(loadMillilitres / (columnVolumeMillilitres * (1 + retentionFactor)), retentionFactor);
    }

    /** After an eluent in which the dye has another k, 0 or more, has overtaken it. */
    public LoadPlug overtakenBy(double otherRetentionFactor) {
        Expected.notBelowZero("k in the next eluent", otherRetentionFactor);
        return new LoadPlug(
                shareOfBed * BandOnBed.compression(retentionFactor, otherRetentionFactor), otherRetentionFactor);
    }

    /** The volume in which it leaves: share V0 (1 + k). */
    public double millilitresAtOutlet(double columnVolumeMillilitres) {
        return shareOfBed * Expected.aboveZero("the column volume", columnVolumeMillilitres) * (1 + retentionFactor);
    }
}
