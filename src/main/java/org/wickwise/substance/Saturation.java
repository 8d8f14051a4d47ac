package org.wickwise.substance;

import java.util.Optional;

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
     * pressure where that was printed for it or for a warmer liquid; above its boiling point the air may be all vapour.
     *
     * @return empty where neither is known: in a warmer room there may be more vapour than was printed
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
        return solvent.value("vapour pressure")
                .filter(printed -> printed.number().isPresent())
                .filter(printed -> printed.celsius().orElse(Double.NEGATIVE_INFINITY) >= celsius)
                .map(printed -> new Saturation(share(printed.number().getAsDouble()), printed));
    }

    private static VapourShare share(double kilopascal) {
        return VapourShare.saturated(Math.min(kilopascal, ATMOSPHERE_KILOPASCAL));
    }
}
