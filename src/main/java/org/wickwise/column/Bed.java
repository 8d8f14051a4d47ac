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

    /** The liquid in millilitres that a bed of so much dry adsorbent holds: mass / packed density x total porosity. */
    public static double holdUpMillilitres(double dryGrams, double packedGramsPerMillilitre, double totalPorosity) {
        return dryGrams / packedGramsPerMillilitre * totalPorosity;
    }

    /** Grams of dry adsorbent for each gram of a load. */
    public static double adsorbentRatio(double dryGrams, double loadMilligrams) {
        return dryGrams * 1000 / loadMilligrams;
    }

    /**
     * Liquid in grams that brings a dry adsorbent to a wanted activity grade, as a share of the whole: m w/(100 - w).
     *
     * @param liquidPercentOfTheWhole 0 to below 100
     */
    public static double deactivatingGramsFor(double dryGrams, double liquidPercentOfTheWhole) {
        return dryGrams * liquidPercentOfTheWhole / (100 - liquidPercentOfTheWhole);
    }
}
