package org.wickwise.column;

/** The front of an eluent that follows another one. */
public final class EluentFront {

    private EluentFront() {}

    /**
     * When a new eluent shows at the outlet: what was poured before it and V0 (1 + k), k of its own strong part.
     *
     * @param pouredBeforeMillilitres 0 or more
     * @param columnVolumeMillilitres V0, above 0
     * @param retentionFactor of the strong part on the bed, 0 where it is not held
     */
    public static double atOutletMillilitres(
            double pouredBeforeMillilitres, double columnVolumeMillilitres, double retentionFactor) {
        return Expected.notBelowZero("what was poured before", pouredBeforeMillilitres)
                + Expected.aboveZero("the column volume", columnVolumeMillilitres)
                        * (1 + Expected.notBelowZero("k of the strong part", retentionFactor));
    }
}
