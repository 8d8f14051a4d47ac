package org.wickwise.column;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one dye came off a column, reckoned from what fractions hold of it. Volumes are in millilitres at the outlet, from the
 * moment the first pour meets the loaded bed; uncertainties are standard uncertainties.
 *
 * @param middleMillilitres elution volume of the middle
 * @param sigmaMillilitres standard deviation of the band; empty where too few fractions hold the dye
 * @param sigmaUncertainty 0 where there is no standard deviation
 * @param fromMillilitres where the first fraction that holds it begins
 * @param toMillilitres where the last one ends
 * @param inTheFirst whether it was there in the first fraction of all, so that its beginning may be missing
 * @param inTheLast whether it was there in the last fraction of all, so that its end is missing
 */
public record CollectedBand(
        double middleMillilitres,
        double middleUncertainty,
        OptionalDouble sigmaMillilitres,
        double sigmaUncertainty,
        double fromMillilitres,
        double toMillilitres,
        boolean inTheFirst,
        boolean inTheLast) {

    private static final int FEWEST_FOR_A_WIDTH = 3;
    private static final double BEGINNING_TO_END_IN_SIGMAS = 4;
    private static final double EVEN_SPREAD = Math.sqrt(12);
    /** How surely the eye finds the beginning and the end at two standard deviations, as a share of the width. Our choice. */
    private static final double EYE = 0.2;

    private static final double SURELY_THERE = 3;
    /** How far the width of a band that is not quite Gaussian may be off, as a share of it. Our choice. */
    private static final double SHAPE = 0.03;

    /**
     * One fraction, as one dye knows it.
     *
     * @param amount of the dye in any unit, the same for all fractions; 0 or more
     * @param uncertainty of the amount, 0 or more
     */
    public record Portion(double fromMillilitres, double toMillilitres, double amount, double uncertainty) {

        public Portion {
            if (!(toMillilitres > fromMillilitres)) {
                throw new IllegalArgumentException("a fraction goes from " + fromMillilitres + " to " + toMillilitres
                        + " mL; expected an end behind its beginning");
            }
            Expected.notBelowZero("the amount of a dye", amount);
            Expected.notBelowZero("the uncertainty of an amount", uncertainty);
        }

        double width() {
            return toMillilitres - fromMillilitres;
        }

        double middle() {
            return (fromMillilitres + toMillilitres) / 2;
        }

        boolean isFilled() {
            return amount > SURELY_THERE * uncertainty;
        }
    }

    /**
     * From amounts; of a dye that came in several pieces, the one with the fullest fraction. The mean and the standard
     * deviation are those of the {@link LikeliestBand}, so wide and unequal fractions do not widen the band as plain moments
     * would; a little of the band may be too faint in the fractions around. The uncertainty takes the amounts' own and the
     * width of the fractions, each of which hides where its share lies within it. A standard deviation needs three fractions
     * that hold the dye.
     *
     * @param portions in order, each beginning where the one before ends
     * @return empty when no fraction surely holds the dye
     */
    public static Optional<CollectedBand> ofAmounts(List<Portion> portions) {
        List<Portion> filled = stretch(portions);
        if (filled.isEmpty()) {
            return Optional.empty();
        }
        double total = filled.stream().mapToDouble(Portion::amount).sum();
        double[] moments = LikeliestBand.moments(filled, total);
        if (filled.size() >= FEWEST_FOR_A_WIDTH) {
            moments = LikeliestBand.of(filled, total, moments);
        }
        double mean = moments[0];
        double variance = moments[1];
        double ofMean = 0;
        double ofVariance = 0;
        double hidden = 0;
        double hiddenVariance = 0;
        for (Portion portion : filled) {
            double share = portion.amount() / total;
            double off = portion.middle() - mean;
            ofMean += Math.pow(off * portion.uncertainty() / total, 2);
            ofVariance += Math.pow((off * off - variance) * portion.uncertainty() / total, 2);
            hidden += Math.pow(share * portion.width() / EVEN_SPREAD, 2);
            hiddenVariance += Math.pow(share * portion.width() * portion.width() / 12, 2);
        }
        boolean hasWidth = filled.size() >= FEWEST_FOR_A_WIDTH && variance > 0;
        double sigma = Math.sqrt(Math.max(variance, 0));
        return Optional.of(new CollectedBand(
                mean,
                Math.sqrt(ofMean + hidden),
                hasWidth ? OptionalDouble.of(sigma) : OptionalDouble.empty(),
                hasWidth ? Math.hypot(Math.sqrt(ofVariance + hiddenVariance) / (2 * sigma), SHAPE * sigma) : 0,
                filled.get(0).fromMillilitres(),
                filled.get(filled.size() - 1).toMillilitres(),
                filled.get(0).equals(portions.get(0)),
                filled.get(filled.size() - 1).equals(portions.get(portions.size() - 1))));
    }

    /** The fullest fraction and its neighbours, on each side up to where two in a row do not surely hold the dye. */
    private static List<Portion> stretch(List<Portion> portions) {
        int fullest = 0;
        for (int i = 1; i < portions.size(); i++) {
            fullest = portions.get(i).amount() > portions.get(fullest).amount() ? i : fullest;
        }
        if (portions.isEmpty() || !portions.get(fullest).isFilled()) {
            return List.of();
        }
        return portions.subList(end(portions, fullest, -1), end(portions, fullest, 1) + 1);
    }

    private static int end(List<Portion> portions, int fullest, int step) {
        int end = fullest;
        for (int i = fullest; i >= 0 && i < portions.size() && Math.abs(i - end) <= 2; i += step) {
            end = portions.get(i).isFilled() ? i : end;
        }
        return end;
    }

    /**
     * From what was seen: the colour begins somewhere in the first and ends somewhere in the last of these fractions, which
     * are taken for two standard deviations before and behind the middle. In one fraction alone there is no width.
     *
     * @param first the first fraction that shows the dye; its amount is not looked at
     * @param last the last one
     */
    public static CollectedBand seen(Portion first, Portion last, boolean inTheFirst, boolean inTheLast) {
        boolean oneFraction = first.equals(last);
        double ends = oneFraction ? first.width() : Math.hypot(first.width(), last.width()) / 2;
        double width = last.middle() - first.middle();
        double sigma = width / BEGINNING_TO_END_IN_SIGMAS;
        return new CollectedBand(
                (first.middle() + last.middle()) / 2,
                ends / EVEN_SPREAD,
                oneFraction ? OptionalDouble.empty() : OptionalDouble.of(sigma),
                oneFraction ? 0 : Math.hypot(2 * ends / EVEN_SPREAD / BEGINNING_TO_END_IN_SIGMAS, EYE * sigma),
                first.fromMillilitres(),
                last.toMillilitres(),
                inTheFirst,
                inTheLast);
    }

    /** Whether a part of the band may have gone by uncollected, so that middle and width are bounds. */
    public boolean isCut() {
        return inTheFirst || inTheLast;
    }

    /** The Gaussian band of this middle and width; empty where there is no width. */
    public Optional<Band> band() {
        return sigmaMillilitres.isPresent()
                ? Optional.of(new Band(middleMillilitres, sigmaMillilitres.getAsDouble()))
                : Optional.empty();
    }
}
