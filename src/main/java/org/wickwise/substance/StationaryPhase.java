package org.wickwise.substance;

import java.util.List;
import java.util.Map;
import java.util.Optional;

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

    @Override
    public String toString() {
        return name;
    }
}
