package org.wickwise.substance;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The most vapour that stands over a liquid: more of it cannot be in the air.
 *
 * @param share of the air
 * @param from the value of the table it was reckoned from
 */
public record Saturation(VapourShare share, TableValue from) {

    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;
    private static final double ATMOSPHERE_KILOPASCAL = 101.325;

    /**
     * Over a solvent of the table, by its Antoine constants where they reach that temperature, else by its printed vapour
     * pressure; above its boiling point the air may be all vapour.
     *
     * @return empty where neither is known
     */
    public static Optional<Saturation> over(Solvent solvent, double celsius) {
        double kelvin = celsius + KELVIN_AT_ZERO_CELSIUS;
        Optional<Antoine> fitted =
                Antoine.of(solvent).filter(antoine -> kelvin >= antoine.fromKelvin() && kelvin <= antoine.toKelvin());
        if (fitted.isPresent()) {
            return Optional.of(new Saturation(
                    share(fitted.get().kilopascalAt(celsius)),
                    solvent.value("Antoine constants").orElseThrow()));
        }
        OptionalDouble printed = solvent.number("vapour pressure");
        return printed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Saturation(
                        share(printed.getAsDouble()),
                        solvent.value("vapour pressure").orElseThrow()));
    }

    private static VapourShare share(double kilopascal) {
        return VapourShare.saturated(Math.min(kilopascal, ATMOSPHERE_KILOPASCAL));
    }
}
