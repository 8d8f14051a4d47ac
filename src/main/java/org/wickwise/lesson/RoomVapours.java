package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.substance.EvaporatedLiquid;
import org.wickwise.substance.MolarVolume;
import org.wickwise.substance.RoomAir;
import org.wickwise.substance.Saturation;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.TableValue;
import org.wickwise.substance.VapourMixture;
import org.wickwise.substance.VapourShare;

/**
 * Several liquids that have evaporated whole into the same still air. No vapour is ever more than what stands over its own
 * liquid: of a mixture that is high, since each liquid lowers the vapour of the others.
 *
 * @param vapours in the order of the solvents' names
 * @param exposureLimits the exposure limits of the table, each list a kind of its own
 */
record RoomVapours(List<Vapour> vapours, RoomAir air, double celsius, List<String> exposureLimits) {

    static final String LOWER_EXPLOSIVE_LIMIT = "lower explosive limit";

    /**
     * One vapour.
     *
     * @param litres of vapour at this temperature and one atmosphere, were there room for it
     * @param share of the air, no more than over the standing liquid
     * @param capped whether more evaporates than the air takes
     */
    record Vapour(
            Solvent solvent,
            EvaporatedLiquid liquid,
            double litres,
            VapourShare share,
            boolean capped,
            Optional<Saturation> saturation) {

        /** A limit of the table as a share of the air; empty where the table has no number for it. */
        Optional<VapourShare> limit(String property) {
            OptionalDouble number = solvent.number(property);
            return number.isEmpty() || number.getAsDouble() <= 0
                    ? Optional.empty()
                    : Optional.of(
                            property.equals(LOWER_EXPLOSIVE_LIMIT)
                                    ? VapourShare.ofVolumePercent(number.getAsDouble())
                                    : new VapourShare(number.getAsDouble()));
        }

        Optional<TableValue> printed(String property) {
            return limit(property).flatMap(limit -> solvent.value(property));
        }
    }

    /** Solvents whose density or molar mass is not known are left out. */
    static RoomVapours of(Map<Solvent, Double> millilitres, RoomAir air, double celsius, List<String> exposureLimits) {
        List<Vapour> vapours = new ArrayList<>();
        MolarVolume molarVolume = MolarVolume.at(celsius);
        millilitres.forEach((solvent, amount) -> EvaporatedLiquid.of(solvent, amount)
                .ifPresent(liquid -> vapours.add(vapour(solvent, liquid, air, molarVolume, celsius))));
        return new RoomVapours(List.copyOf(vapours), air, celsius, exposureLimits);
    }

    private static Vapour vapour(
            Solvent solvent, EvaporatedLiquid liquid, RoomAir air, MolarVolume molarVolume, double celsius) {
        Optional<Saturation> saturation = Saturation.over(solvent, celsius);
        VapourShare free = air.with(liquid, molarVolume);
        boolean capped = saturation.filter(over -> free.exceeds(over.share())).isPresent();
        return new Vapour(
                solvent,
                liquid,
                liquid.vapourLitres(molarVolume),
                capped ? saturation.orElseThrow().share() : free,
                capped,
                saturation);
    }

    /** All vapours together beside their limits of one kind; empty where none of them has such a limit. */
    Optional<VapourMixture> against(String property) {
        List<VapourMixture.Part> parts = vapours.stream()
                .flatMap(vapour ->
                        vapour.limit(property).map(limit -> new VapourMixture.Part(vapour.share(), limit)).stream())
                .toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of(new VapourMixture(parts));
    }

    /** The sum of shares, each vapour over its limit of one kind; 0 where none has such a limit. */
    double sumOfShares(String property) {
        return against(property).map(VapourMixture::sumOfShares).orElse(0.0);
    }

    /** The largest of the sums of shares by the lists of exposure limits; 0 where there is no list. */
    double worstExposure() {
        return exposureLimits.stream().mapToDouble(this::sumOfShares).max().orElse(0);
    }

    double percentOfLowerExplosiveLimit() {
        return 100 * sumOfShares(LOWER_EXPLOSIVE_LIMIT);
    }

    double litres() {
        return vapours.stream().mapToDouble(Vapour::litres).sum();
    }
}
