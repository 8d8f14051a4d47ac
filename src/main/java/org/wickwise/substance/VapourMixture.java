package org.wickwise.substance;

import java.util.List;
import org.wickwise.text.Amounts;

/**
 * Several vapours in the same air, each beside a limit of its own; all limits of one kind.
 *
 * @param parts at least one
 */
public record VapourMixture(List<Part> parts) {

    /**
     * One vapour.
     *
     * @param limit of this vapour alone, above 0
     */
    public record Part(VapourShare share, VapourShare limit) {

        public Part {
            Amounts.above0("limit", limit.partsPerMillion(), "ppm");
        }

        private double shareOfLimit() {
            return share.partsPerMillion() / limit.partsPerMillion();
        }
    }

    public VapourMixture {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a mixture of no vapours; expected at least one");
        }
    }

    /** E_m = sum of C/L, each vapour against its limit (29 CFR 1910.1000(d)(2)). */
    public double sumOfShares() {
        return parts.stream().mapToDouble(Part::shareOfLimit).sum();
    }

    /** Whether the sum of shares is 1 or less (29 CFR 1910.1000(d)(2)). */
    public boolean isWithinLimits() {
        return sumOfShares() <= 1;
    }

    /**
     * The limit of the vapours together, 1/sum(y/L) with y the share of each among the vapours. With lower explosive limits
     * it is the rule of Le Chatelier, fair for liquids that are alike.
     *
     * @throws IllegalArgumentException if there is no vapour at all
     */
    public VapourShare limit() {
        double vapour = parts.stream()
                .mapToDouble(part -> part.share().partsPerMillion())
                .sum();
        return new VapourShare(Amounts.above0("vapour", vapour, "ppm") / sumOfShares());
    }
}
