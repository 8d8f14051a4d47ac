package org.wickwise.column;

/** A packed bed in numbers: geometry and the balance of its volumes. */
public final class Bed {

    private static final double ANGSTROMS_OF_A_CYLINDRICAL_PORE = 40_000;
    private static final double CUBIC_MILLIMETRES_PER_MILLILITRE = 1000;

    private Bed() {}

    /** Volume of a packed bed in millilitres, pi d^2 L / 4. */
    public static double millilitres(double boreMillimetres, double heightMillimetres) {
        return Math.PI * boreMillimetres * boreMillimetres / 4 * heightMillimetres / CUBIC_MILLIMETRES_PER_MILLILITRE;
    }

    /**
     * Share of a bed that holds liquid, from what the grains weigh: 1 - packed density / skeletal density (volume balance).
     *
     * @param skeletalGramsPerMillilitre density of the solid itself, above the packed density
     */
    public static double porosityFromSkeleton(double packedGramsPerMillilitre, double skeletalGramsPerMillilitre) {
        return 1 - packedGramsPerMillilitre / skeletalGramsPerMillilitre;
    }

    /**
     * Share of a bed that holds liquid, between and in the grains: interstitial porosity + packed density x pore volume
     * (volume balance).
     */
    public static double porosityFromPores(
            double interstitialPorosity, double packedGramsPerMillilitre, double poreMillilitresPerGram) {
        return interstitialPorosity + packedGramsPerMillilitre * poreMillilitresPerGram;
    }

    /**
     * Pore volume in millilitres per gram of an adsorbent with cylindrical pores, width x area / 40000 (an adsorbent
     * maker prints 60 angstrom, 500 m2/g, 0.75 mL/g).
     */
    public static double poreMillilitresPerGram(double poreAngstroms, double squareMetresPerGram) {
        return poreAngstroms * squareMetresPerGram / ANGSTROMS_OF_A_CYLINDRICAL_PORE;
    }

    /**
     * Water in grams that brings a dry adsorbent to a share of water of the whole, m w/(100 - w).
     *
     * @param waterPercentOfTheWhole 0 to below 100
     */
    public static double waterGramsFor(double dryGrams, double waterPercentOfTheWhole) {
        return dryGrams * waterPercentOfTheWhole / (100 - waterPercentOfTheWhole);
    }

    /**
     * How far a held dye moves while so many column volumes of an eluent run through, as a share of the bed: x = n/k.
     *
     * @param retentionFactor k, above 0
     */
    public static double creep(double columnVolumes, double retentionFactor) {
        return columnVolumes / retentionFactor;
    }

    /**
     * The share of the bed that a load fills when it has soaked in: V/(V0 (1 + k)) for a dye of this k in the loading
     * liquid.
     */
    public static double plug(double loadMillilitres, double columnVolumeMillilitres, double retentionFactor) {
        return loadMillilitres / (columnVolumeMillilitres * (1 + retentionFactor));
    }

    /**
     * The volume in millilitres in which such a load leaves, without its spreading: V k2/k1 for a load in k1 released
     * at k2.
     */
    public static double plugOutMillilitres(double loadMillilitres, double loadedAt, double releasedAt) {
        return loadMillilitres * releasedAt / loadedAt;
    }
}
