package org.wickwise.strip;

import org.wickwise.text.Amounts;

/**
 * Two looks at a climbing front and what follows from them. The difference of the squares is used, kappa = (z2^2 -
 * z1^2)/(t2 - t1), so that it does not matter when the clock was started. Heights count from the surface of the liquid.
 */
public record FrontForecast(FrontReading earlier, FrontReading later) {

    /** @throws IllegalArgumentException if the second look is not later and higher than the first */
    public FrontForecast {
        if (!(later.minutes() > earlier.minutes() && later.millimetres() > earlier.millimetres())) {
            throw new IllegalArgumentException("the front was at " + earlier.millimetres() + " mm after "
                    + earlier.minutes() + " min and at " + later.millimetres() + " mm after " + later.minutes()
                    + " min; expected a second look that is later and higher");
        }
    }

    public FrontConstant constant() {
        return new FrontConstant(
                (square(later.millimetres()) - square(earlier.millimetres())) / (later.minutes() - earlier.minutes()));
    }

    /**
     * Standard uncertainty of the front constant over the constant, 2 u sqrt(z1^2 + z2^2)/(z2^2 - z1^2) (JCGM 100:2008,
     * equation 10; the times count as exact).
     *
     * @param readingMillimetres u, standard uncertainty of one height, 0 or more
     */
    public double relativeUncertainty(double readingMillimetres) {
        Amounts.atLeast0("uncertainty of a height", readingMillimetres, "mm");
        return 2
                * readingMillimetres
                * Math.hypot(earlier.millimetres(), later.millimetres())
                / (square(later.millimetres()) - square(earlier.millimetres()));
    }

    /**
     * When the front reaches a height, on the clock of the readings.
     *
     * @param millimetres not below the later reading
     */
    public double minutesAt(double millimetres) {
        return later.minutes() + minutesLeftTo(millimetres);
    }

    /**
     * How long after the later reading the front reaches a height.
     *
     * @param millimetres not below the later reading
     */
    public double minutesLeftTo(double millimetres) {
        if (!(millimetres >= later.millimetres() && millimetres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the front is to reach " + millimetres + " mm and was at "
                    + later.millimetres() + " mm already; expected a height it has not passed");
        }
        return (square(millimetres) - square(later.millimetres())) / constant().squareMillimetresPerMinute();
    }

    private static double square(double value) {
        return value * value;
    }
}
