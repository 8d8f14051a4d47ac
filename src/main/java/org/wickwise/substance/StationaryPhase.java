package org.wickwise.substance;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a strip is made of or a column is filled with.
 *
 * @param kind the way it holds dyes; strips speak best for columns of the same phase
 * @param ladder how solvents are ranked on it; empty where no table ranks them
 * @param activity how strongly it holds; empty where blends cannot be reckoned on it from solvent strengths
 * @param packedDensityGramsPerMillilitre dry mass in a millilitre of packed bed
 * @param totalPorosity share of the bed volume that holds liquid, 0 to 1
 * @param figuresFrom where density and porosity come from
 * @param conditioning what to do with the bed before the load
 * @param holds for each class of dye how the phase holds it, in words
 * @param keepAway what may not be poured through, and why, in words; the rules judge, this explains
 * @param climb how one liquid climbs on it; empty where nobody knows
 * @param mineralPercentOfDust how much of its dust is amorphous mineral, above 0 and at most 100; empty for another dust
 * @param stripsThatSpeakForIt other phases whose strips give at least the order of the dyes on this one
 */
public record StationaryPhase(
        String name,
        List<String> also,
        String kind,
        Optional<LadderScale> ladder,
        Optional<AdsorbentActivity> activity,
        double packedDensityGramsPerMillilitre,
        double totalPorosity,
        String figuresFrom,
        String conditioning,
        Map<String, String> holds,
        List<String> keepAway,
        Optional<Climb> climb,
        OptionalDouble mineralPercentOfDust,
        List<String> stripsThatSpeakForIt) {

    /** How a dye of this class is held, in words; empty where nothing is said of it. */
    public Optional<String> howItHolds(DyeClass dyeClass) {
        return Optional.ofNullable(holds.get(dyeClass.word()));
    }

    /**
     * @param property the property that ranks solvents
     * @param weakestIsLowest whether the lowest value marks the weakest solvent
     * @param margin values nearer than this are not ranked
     */
    public record LadderScale(String property, boolean weakestIsLowest, double margin, String because) {}

    /**
     * Snyder's adsorbent activity alpha', without unit.
     *
     * @param value above 0, 1 for a dry adsorbent
     * @param from where the figure comes from
     */
    public record AdsorbentActivity(double value, String from) {}

    /**
     * How high one liquid climbed above its surface, and in what time.
     *
     * @param liquid a solvent of the table
     * @param millimetres above 0
     * @param minutes above 0
     * @param from where the figures come from
     */
    public record Climb(String liquid, double millimetres, double minutes, String from) {}

    @Override
    public String toString() {
        return name;
    }
}
