package org.wickwise.plan;

import org.wickwise.text.Numbers;

/**
 * What one route is better at than another: the first criterion of the preferences that tells them apart.
 *
 * @param words what is counted, less of it being better
 * @param counted against the better route
 * @param against what is counted against the other, more than {@code counted}
 * @param onlyByCost whether nothing but the cost tells the two apart
 */
public record Advantage(String words, double counted, double against, boolean onlyByCost) {

    public double difference() {
        return against - counted;
    }

    /**
     * Whether it makes a plan a better one.
     *
     * @param leastSaving what it has to save where nothing but the cost tells the two apart
     */
    public boolean isBetterBy(double leastSaving) {
        return !onlyByCost || Numbers.steady(difference()) >= leastSaving;
    }

    /** "which counts fewer bands too fast to be held (0 against 1)". */
    public String told() {
        String figures = Numbers.plain(counted, 1) + " against " + Numbers.plain(against, 1);
        return onlyByCost
                ? "which costs less by the weights of the preferences (" + figures + ")"
                : "which counts fewer " + words + " (" + figures + ")";
    }
}
