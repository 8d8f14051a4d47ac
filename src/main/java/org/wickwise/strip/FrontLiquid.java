package org.wickwise.strip;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Amounts;

/**
 * What makes a liquid climb a strip: its surface tension draws, its viscosity holds back.
 *
 * @param surfaceTensionMillinewtonsPerMetre above 0
 * @param viscosityMillipascalSeconds above 0, at the same temperature
 * @param cosineOfContactAngle above 0 and at most 1; 1 where the liquid wets the strip, as organic liquids do on bare
 *     adsorbents
 */
public record FrontLiquid(
        double surfaceTensionMillinewtonsPerMetre, double viscosityMillipascalSeconds, double cosineOfContactAngle) {

    public FrontLiquid {
        Amounts.above0("surface tension", surfaceTensionMillinewtonsPerMetre, "mN/m");
        Amounts.above0("viscosity", viscosityMillipascalSeconds, "mPa.s");
        if (!(cosineOfContactAngle > 0 && cosineOfContactAngle <= 1)) {
            throw new IllegalArgumentException("the cosine of the contact angle is " + cosineOfContactAngle
                    + "; expected above 0 and at most 1, since a liquid that does not wet does not climb");
        }
    }

    /** A liquid that wets the strip. */
    public static FrontLiquid wetting(double surfaceTensionMillinewtonsPerMetre, double viscosityMillipascalSeconds) {
        return new FrontLiquid(surfaceTensionMillinewtonsPerMetre, viscosityMillipascalSeconds, 1);
    }

    /**
     * A solvent of the table, taken to wet the strip.
     *
     * @return empty where its surface tension or its viscosity is unknown
     */
    public static Optional<FrontLiquid> of(Solvent solvent) {
        OptionalDouble tension = solvent.number("surface tension");
        OptionalDouble viscosity = solvent.number("viscosity");
        return tension.isPresent() && viscosity.isPresent()
                ? Optional.of(wetting(tension.getAsDouble(), viscosity.getAsDouble()))
                : Optional.empty();
    }

    /**
     * An eluent, taken to wet the strip. Of a blend the surface tension is the mean by volume and the logarithm of the viscosity
     * too, which is fair for liquids that are alike; some blends are thicker than both their parts (from memory).
     *
     * @return empty where a value of a part is unknown
     */
    public static Optional<FrontLiquid> of(Eluent eluent) {
        double tension = 0;
        double logOfViscosity = 0;
        for (Eluent.Part part : eluent.parts()) {
            Optional<FrontLiquid> liquid = of(part.solvent());
            if (liquid.isEmpty()) {
                return Optional.empty();
            }
            tension += part.percent() / 100 * liquid.get().surfaceTensionMillinewtonsPerMetre();
            logOfViscosity += part.percent() / 100 * Math.log(liquid.get().viscosityMillipascalSeconds());
        }
        return Optional.of(wetting(tension, Math.exp(logOfViscosity)));
    }

    /** Surface tension over viscosity times the cosine, in metres per second: what the front constant is in proportion to. */
    public double drawMetresPerSecond() {
        return surfaceTensionMillinewtonsPerMetre / viscosityMillipascalSeconds * cosineOfContactAngle;
    }
}
