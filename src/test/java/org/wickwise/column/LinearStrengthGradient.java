package org.wickwise.column;

/**
 * A dye in a linear gradient whose log k falls in a straight line with the share of strong solvent (linear solvent
 * strength; Snyder and Dolan, High-Performance Gradient Elution, 2007, from memory): log k = log k0 - S phi, phi rising by
 * {@code change} over {@code gradientTime}. Times may be volumes at constant flow.
 *
 * @param k0 k where the gradient starts, above 0
 * @param slope S, above 0
 * @param change of the share of strong solvent, above 0, up to 1
 * @param deadTime t0, above 0
 * @param gradientTime t_G, above 0, in the unit of t0
 * @param delay t_D until the gradient reaches the bed, 0 or more; the dye is taken not to move during it
 */
public record LinearStrengthGradient(
        double k0, double slope, double change, double deadTime, double gradientTime, double delay) {

    public LinearStrengthGradient {
        Expected.aboveZero("k at the start", k0);
        Expected.aboveZero("the slope of log k", slope);
        Expected.aboveZero("the change of the share", change);
        Expected.aboveZero("the dead time", deadTime);
        Expected.aboveZero("the gradient time", gradientTime);
        Expected.notBelowZero("the delay", delay);
    }

    /** b = S (change of phi) t0/t_G. */
    public double steepness() {
        return slope * change * deadTime / gradientTime;
    }

    /** t_R = (t0/b) log10(ln 10 k0 b + 1) + t0 + t_D. Holds while the dye leaves before the gradient has ended. */
    public double retention() {
        return deadTime / steepness() * Math.log10(growth()) + deadTime + delay;
    }

    /** k of the dye as it leaves, k0/(ln 10 k0 b + 1). */
    public double retentionFactorAtOutlet() {
        return k0 / growth();
    }

    private double growth() {
        return Math.log(10) * k0 * steepness() + 1;
    }
}
