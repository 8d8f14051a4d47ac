package org.wickwise.column;

/**
 * How fast a liquid runs through a bed: Darcy's law with the Kozeny-Carman permeability, u = dP dp^2 e^3 / (180 eta L (1 -
 * e)^2). For even, round grains; irregular grains, taps and plugs make it slower.
 *
 * @param particleMicrometres mean diameter of the grains, above 0
 * @param interstitialPorosity share of the bed between the grains, 0 to 1
 * @param bedMillimetres height of the bed, above 0
 */
public record Percolation(double particleMicrometres, double interstitialPorosity, double bedMillimetres) {

    private static final double KOZENY_CARMAN = 180;
    private static final double GRAVITY = 9.81;
    private static final double CENTIMETRES_PER_MINUTE = 100 * 60;

    public Percolation {
        if (!(particleMicrometres > 0)
                || !(bedMillimetres > 0)
                || !(interstitialPorosity > 0 && interstitialPorosity < 1)) {
            throw new IllegalArgumentException("grains of " + particleMicrometres + " um, " + interstitialPorosity
                    + " between them, in a bed of " + bedMillimetres
                    + " mm; expected lengths above 0 and a porosity between 0 and 1");
        }
    }

    /** Pressure in pascal of a standing liquid, rho g h, of a density in g/mL. */
    public static double headPascals(double liquidMillimetres, double gramsPerMillilitre) {
        return gramsPerMillilitre * 1000 * GRAVITY * liquidMillimetres / 1000;
    }

    /** How fast the surface falls, in cm/min, under a pressure. */
    public double surfaceCentimetresPerMinute(double pascals, double viscosityMilliPascalSeconds) {
        return pascals
                * permeability()
                / (viscosityMilliPascalSeconds / 1000 * bedMillimetres / 1000)
                * CENTIMETRES_PER_MINUTE;
    }

    /** The pressure in pascal that lets the surface fall so fast. */
    public double pascalsFor(double surfaceCentimetresPerMinute, double viscosityMilliPascalSeconds) {
        return surfaceCentimetresPerMinute
                / CENTIMETRES_PER_MINUTE
                * (viscosityMilliPascalSeconds / 1000 * bedMillimetres / 1000)
                / permeability();
    }

    /** Flow in millilitres per minute of a surface that falls in a tube. */
    public static double millilitresPerMinute(double surfaceCentimetresPerMinute, double boreMillimetres) {
        double boreCentimetres = boreMillimetres / 10;
        return surfaceCentimetresPerMinute * Math.PI * boreCentimetres * boreCentimetres / 4;
    }

    /** How many times the pressure it takes to push another liquid as fast: the ratio of the viscosities. */
    public static double pressureRatio(double viscosityBefore, double viscosityAfter) {
        return viscosityAfter / viscosityBefore;
    }

    /** How many times as fast another liquid runs under the same pressure. */
    public static double flowRatio(double viscosityBefore, double viscosityAfter) {
        return viscosityBefore / viscosityAfter;
    }

    /** In square metres. */
    private double permeability() {
        double metres = particleMicrometres * 1e-6;
        double solid = 1 - interstitialPorosity;
        return metres * metres * Math.pow(interstitialPorosity, 3) / (KOZENY_CARMAN * solid * solid);
    }
}
