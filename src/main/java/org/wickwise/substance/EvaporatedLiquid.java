package org.wickwise.substance;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.text.Amounts;

/**
 * A volume of liquid that has evaporated whole: the worst case.
 *
 * @param millilitres of liquid, 0 or more
 * @param gramsPerMillilitre density of the liquid, above 0
 * @param gramsPerMole molar mass, above 0
 */
public record EvaporatedLiquid(double millilitres, double gramsPerMillilitre, double gramsPerMole) {

    public EvaporatedLiquid {
        Amounts.atLeast0("liquid", millilitres, "mL");
        Amounts.above0("density", gramsPerMillilitre, "g/mL");
        Amounts.above0("molar mass", gramsPerMole, "g/mol");
    }

    /**
     * So much of a solvent of the table.
     *
     * @return empty where its density or its molar mass is unknown
     */
    public static Optional<EvaporatedLiquid> of(Solvent solvent, double millilitres) {
        OptionalDouble density = solvent.number("density");
        OptionalDouble molarMass = solvent.number("molar mass");
        return density.isPresent() && molarMass.isPresent()
                ? Optional.of(new EvaporatedLiquid(millilitres, density.getAsDouble(), molarMass.getAsDouble()))
                : Optional.empty();
    }

    public double moles() {
        return millilitres * gramsPerMillilitre / gramsPerMole;
    }

    /** Litres of vapour, (mL rho/M) V_m, as an ideal gas. */
    public double vapourLitres(MolarVolume molarVolume) {
        return moles() * molarVolume.litresPerMole();
    }
}
