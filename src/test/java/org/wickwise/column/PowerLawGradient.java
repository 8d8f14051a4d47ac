package org.wickwise.column;

/**
 * A dye in a linear gradient with k = k0 phi^-m, the usual law on polar adsorbents; phi = A + B V at the inlet (Jandera and
 * Churacek 1974, from memory; the integral of dV/k = V0 solved).
 *
 * @param k0 k in the strong solvent alone, above 0
 * @param exponent m, 0 or more
 * @param startShare A, share of strong solvent at the start, 0 or more
 * @param sharePerMillilitre B, above 0
 */
public record PowerLawGradient(double k0, double exponent, double startShare, double sharePerMillilitre) {

    public PowerLawGradient {
        Expected.aboveZero("k in the strong solvent", k0);
        Expected.notBelowZero("the exponent", exponent);
        Expected.notBelowZero("the share at the start", startShare);
        Expected.aboveZero("the rise of the share", sharePerMillilitre);
    }

    /**
     * V_R = V0 + ([(m + 1) B k0 V0 + A^(m + 1)]^(1/(m + 1)) - A)/B. Holds while phi stays at 1 or less until the dye has
     * been overtaken.
     *
     * @param columnVolumeMillilitres V0, above 0
     */
    public double elutionMillilitres(double columnVolumeMillilitres) {
        Expected.aboveZero("the column volume", columnVolumeMillilitres);
        double power = exponent + 1;
        double share = Math.pow(
                power * sharePerMillilitre * k0 * columnVolumeMillilitres + Math.pow(startShare, power), 1 / power);
        return columnVolumeMillilitres + (share - startShare) / sharePerMillilitre;
    }

    /** k while the share of strong solvent is {@code share}, above 0. */
    public double retentionFactor(double share) {
        return k0 * Math.pow(Expected.aboveZero("the share of strong solvent", share), -exponent);
    }
}
