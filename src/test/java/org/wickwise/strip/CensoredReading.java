package org.wickwise.strip;

import java.util.Optional;

/**
 * A spot that has not visibly left the origin, or not visibly stayed behind the front. The strip then gives a bound and
 * no number: Rf is at most r/L or at least 1 - r/L, with r the smallest shift that shows and L the front distance.
 *
 * @param end where the spot was seen
 * @param retardationBound highest Rf at the origin, lowest Rf at the front; above 0 and below 1
 */
public record CensoredReading(End end, double retardationBound) {

    /** An end of the run. */
    public enum End {
        ORIGIN,
        FRONT
    }

    /**
     * A spot on the origin.
     *
     * @param smallestShiftMillimetres above 0 and below the front
     */
    public static CensoredReading atOrigin(double smallestShiftMillimetres, double frontMillimetres) {
        return new CensoredReading(End.ORIGIN, share(smallestShiftMillimetres, frontMillimetres));
    }

    /**
     * A spot at the front.
     *
     * @param smallestShiftMillimetres above 0 and below the front
     */
    public static CensoredReading atFront(double smallestShiftMillimetres, double frontMillimetres) {
        return new CensoredReading(End.FRONT, 1 - share(smallestShiftMillimetres, frontMillimetres));
    }

    /**
     * What a reading amounts to that lies less than one division of the ruler from the origin or the front.
     *
     * @return empty where the spot visibly moved and visibly stayed behind
     */
    public static Optional<CensoredReading> of(double travelMillimetres, double frontMillimetres, Ruler ruler) {
        double division = ruler.divisionMillimetres();
        if (travelMillimetres < division) {
            return Optional.of(atOrigin(division, frontMillimetres));
        }
        return frontMillimetres - travelMillimetres < division
                ? Optional.of(atFront(division, frontMillimetres))
                : Optional.empty();
    }

    /** Lowest k at the origin, highest k at the front. */
    public double retentionBound() {
        return (1 - retardationBound) / retardationBound;
    }

    /** "k at least 79" or "k at most 0.017". */
    public String retentionShown() {
        return end == End.ORIGIN ? RetentionWords.atLeast(retentionBound()) : RetentionWords.atMost(retentionBound());
    }

    private static double share(double smallestShiftMillimetres, double frontMillimetres) {
        if (!(smallestShiftMillimetres > 0 && smallestShiftMillimetres < frontMillimetres)) {
            throw new IllegalArgumentException("the smallest shift is " + smallestShiftMillimetres
                    + " mm and the front at " + frontMillimetres + " mm; expected a shift above 0 and below the front");
        }
        return smallestShiftMillimetres / frontMillimetres;
    }
}
