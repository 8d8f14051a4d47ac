package org.wickwise.substance;

import org.wickwise.text.Amounts;

/**
 * The air of a room, a cupboard or a drying box, taken as evenly mixed and still. Near a spill there is more vapour than
 * that, since vapour heavier than air gathers low.
 *
 * @param cubicMetres above 0
 */
public record RoomAir(double cubicMetres) {

    private static final double LITRES_PER_CUBIC_METRE = 1000;
    private static final double CUBIC_METRES_PER_CUBIC_FOOT = 0.028316846592;
    private static final double MILLIGRAMS_PER_GRAM = 1000;
    private static final double WHOLE_PARTS_PER_MILLION = 1e6;

    public RoomAir {
        Amounts.above0("room", cubicMetres, "m3");
    }

    /** @param cubicFeet above 0 */
    public static RoomAir ofCubicFeet(double cubicFeet) {
        return new RoomAir(cubicFeet * CUBIC_METRES_PER_CUBIC_FOOT);
    }

    public double litres() {
        return cubicMetres * LITRES_PER_CUBIC_METRE;
    }

    /**
     * The vapour in the air when all of a liquid has evaporated, 1e6 vapour/room; where more vapour forms than there is
     * room, the air is all vapour.
     */
    public VapourShare with(EvaporatedLiquid liquid, MolarVolume molarVolume) {
        double partsPerMillion = WHOLE_PARTS_PER_MILLION * liquid.vapourLitres(molarVolume) / litres();
        return new VapourShare(Math.min(partsPerMillion, WHOLE_PARTS_PER_MILLION));
    }

    /**
     * The mass of vapour that brings this air to a limit.
     *
     * @param milligramsPerLitre 0 or more
     */
    public double gramsToReach(double milligramsPerLitre) {
        return Amounts.atLeast0("limit", milligramsPerLitre, "mg/L") * litres() / MILLIGRAMS_PER_GRAM;
    }
}
