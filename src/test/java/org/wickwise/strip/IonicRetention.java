package org.wickwise.strip;

import org.wickwise.text.Amounts;

/** What salt does to charged dyes in an eluent that is mostly aqueous. */
public final class IonicRetention {

    private static final double DEBYE_NANOMETRES = 0.304;
    private static final double GRAMS_PER_KILOGRAM = 1000;

    private IonicRetention() {}

    /**
     * How far the charge of a dye or a surface reaches, 0.304 nm/sqrt(I): dilute aqueous solution of a salt of two single
     * charges at 25 degC (Israelachvili, Intermolecular and Surface Forces).
     *
     * @param ionicStrengthMolesPerLitre I, above 0; up to about 0.1 the formula holds
     */
    public static double debyeNanometres(double ionicStrengthMolesPerLitre) {
        return DEBYE_NANOMETRES / Math.sqrt(Amounts.above0("ionic strength", ionicStrengthMolesPerLitre, "mol/L"));
    }

    /**
     * Moles of a salt in a kilogram of solvent.
     *
     * @param massPercent of the whole solution, 0 or more and below 100
     * @param gramsPerMole molar mass of the salt, above 0
     */
    public static double molality(double massPercent, double gramsPerMole) {
        Amounts.above0("molar mass", gramsPerMole, "g/mol");
        if (!(massPercent >= 0 && massPercent < 100)) {
            throw new IllegalArgumentException(
                    "the salt is " + massPercent + " % of the solution; expected 0 or more and below 100 %");
        }
        return massPercent / (100 - massPercent) * GRAMS_PER_KILOGRAM / gramsPerMole;
    }

    /**
     * By what k of a dye held by ion exchange is multiplied when the salt becomes stronger: log10 k = a - (z/y) log10 C (the
     * law of mass action of ion exchange).
     *
     * @param dyeCharges z, 1 or more, without sign
     * @param saltCharges y of the ion that takes the dye's place, 1 or more, without sign
     * @param timesSalt the new concentration of the salt over the old one, above 0
     */
    public static double retentionChange(int dyeCharges, int saltCharges, double timesSalt) {
        Amounts.above0("change of the salt", timesSalt, "times");
        if (dyeCharges < 1 || saltCharges < 1) {
            throw new IllegalArgumentException("the dye has " + dyeCharges + " charges and the ion of the salt "
                    + saltCharges + "; expected 1 or more, without sign");
        }
        return Math.pow(timesSalt, -(double) dyeCharges / saltCharges);
    }
}
