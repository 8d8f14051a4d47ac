package org.wickwise.substance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.substance.StationaryPhase.AdsorbentActivity;
import org.wickwise.substance.StationaryPhase.LadderScale;
import org.wickwise.text.Numbers;

/**
 * How strong an eluent is on one adsorbent. A neat solvent has the strength of the table; a blend is reckoned with
 * Snyder's competition for the surface (L. R. Snyder, Principles of Adsorption Chromatography, 1968, from memory):
 * strength = A + log10(N 10^(activity area (B - A)) + 1 - N) / (activity area), N the mole fraction of the stronger part.
 */
public final class EluentStrength {

    private static final String REFERENCE =
            "L. R. Snyder, Principles of Adsorption Chromatography, 1968, from memory; exact at both ends";
    private static final String AREA = "displaced area";
    private static final String DENSITY = "density";
    private static final String MOLAR_MASS = "molar mass";

    private final LadderScale scale;
    private final AdsorbentActivity activity;

    private EluentStrength(LadderScale scale, AdsorbentActivity activity) {
        this.scale = scale;
        this.activity = activity;
    }

    /**
     * A strength that was looked up or reckoned.
     *
     * @param value without unit, on the scale of the adsorbent
     */
    public record Strength(double value, Reason reason) implements Ground {}

    /** Empty where no table of strengths or no activity is known for the phase. */
    public static Optional<EluentStrength> on(StationaryPhase phase) {
        return phase.ladder().filter(LadderScale::weakestIsLowest).flatMap(scale -> phase.activity()
                .map(activity -> new EluentStrength(scale, activity)));
    }

    /** The strength of an eluent without additives; empty when a table value is missing. */
    public Optional<Strength> of(Eluent eluent) {
        if (!eluent.additions().isEmpty()) {
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        for (Eluent.Part part : eluent.parts()) {
            strengthOf(part.solvent()).ifPresent(strength -> parts.add(new Part(part, strength)));
        }
        if (parts.size() < eluent.parts().size()) {
            return Optional.empty();
        }
        parts.sort(Comparator.comparing(Part::strength)
                .thenComparing(part -> part.share().solvent().name()));
        return parts.size() == 1
                ? Optional.of(new Strength(
                        parts.get(0).strength(),
                        value(parts.get(0).solvent(), scale.property()).reason()))
                : blend(eluent, parts);
    }

    /**
     * The share of the stronger of two solvents that gives a wanted strength, in per cent by volume; empty when a table
     * value is missing or the strength does not lie between the two.
     */
    public OptionalDouble percentFor(double wanted, Solvent weak, Solvent strong) {
        OptionalDouble low = strengthOf(weak);
        OptionalDouble high = strengthOf(strong);
        boolean known = low.isPresent() && high.isPresent() && hasMoles(weak) && hasMoles(strong) && hasArea(strong);
        if (!known || !(low.getAsDouble() < high.getAsDouble())) {
            return OptionalDouble.empty();
        }
        if (wanted < low.getAsDouble() || wanted > high.getAsDouble()) {
            return OptionalDouble.empty();
        }
        double moles =
                moleFractionFor(wanted, low.getAsDouble(), high.getAsDouble(), activity.value(), number(strong, AREA));
        return OptionalDouble.of(100 * volumeShare(moles, molesPerMillilitre(weak), molesPerMillilitre(strong)));
    }

    /**
     * Snyder's equation for two solvents.
     *
     * @param weak strength of the weaker solvent
     * @param strong strength of the stronger solvent
     * @param activity of the adsorbent, above 0
     * @param area that a molecule of the stronger covers, in units of 0.085 nm2, above 0
     * @param moleFraction of the stronger, 0 to 1
     */
    public static double ofBinary(double weak, double strong, double activity, double area, double moleFraction) {
        double gain = Math.pow(10, activity * area * (strong - weak));
        return weak + Math.log10(moleFraction * gain + 1 - moleFraction) / (activity * area);
    }

    /**
     * The inverse: the mole fraction of the stronger solvent that gives a wanted strength.
     *
     * @param wanted between the two strengths, which differ
     * @return 0 to 1
     */
    public static double moleFractionFor(double wanted, double weak, double strong, double activity, double area) {
        double gain = Math.pow(10, activity * area * (strong - weak));
        return (Math.pow(10, activity * area * (wanted - weak)) - 1) / (gain - 1);
    }

    /**
     * From shares by volume to a mole fraction, volumes taken as additive.
     *
     * @param volumeShare of the second solvent, 0 to 1
     * @param molesOfFirst moles in a millilitre of the first, density over molar mass
     * @param molesOfSecond moles in a millilitre of the second
     */
    public static double moleFraction(double volumeShare, double molesOfFirst, double molesOfSecond) {
        double second = volumeShare * molesOfSecond;
        return second / (second + (1 - volumeShare) * molesOfFirst);
    }

    /** The inverse of {@link #moleFraction}: the share by volume of the second solvent, 0 to 1. */
    public static double volumeShare(double moleFraction, double molesOfFirst, double molesOfSecond) {
        double second = moleFraction / molesOfSecond;
        return second / (second + (1 - moleFraction) / molesOfFirst);
    }

    /** A part of a blend with the strength the table gives it. */
    private record Part(Eluent.Part share, double strength) {

        private Part(Eluent.Part share, OptionalDouble strength) {
            this(share, strength.getAsDouble());
        }

        Solvent solvent() {
            return share.solvent();
        }

        double moles() {
            return share.percent() * molesPerMillilitre(share.solvent());
        }
    }

    /** Each stronger part in turn competes with all that is weaker; for two parts this is Snyder's equation itself. */
    private Optional<Strength> blend(Eluent eluent, List<Part> weakestFirst) {
        boolean known = weakestFirst.stream().allMatch(part -> hasMoles(part.solvent()))
                && weakestFirst.stream().skip(1).allMatch(part -> hasArea(part.solvent()));
        if (!known) {
            return Optional.empty();
        }
        double strength = weakestFirst.get(0).strength();
        double moles = weakestFirst.get(0).moles();
        List<String> formulas = new ArrayList<>();
        List<Reason> grounds = new ArrayList<>(groundsOf(weakestFirst.get(0).solvent(), false));
        for (Part part : weakestFirst.subList(1, weakestFirst.size())) {
            moles += part.moles();
            double fraction = part.moles() / moles;
            double area = number(part.solvent(), AREA);
            formulas.add(filledIn(strength, part.strength(), area, fraction));
            strength = ofBinary(strength, part.strength(), activity.value(), area, fraction);
            grounds.addAll(groundsOf(part.solvent(), true));
        }
        grounds.add(new Reason.Tabled(
                "adsorbent activity: " + Numbers.plain(activity.value(), 3), List.of(activity.from()), "our choice"));
        return Optional.of(new Strength(
                strength,
                new Reason.Calculated(
                        scale.property() + " of " + eluent + ": " + Numbers.fixed(strength, 3),
                        String.join("; then ", formulas),
                        REFERENCE,
                        grounds)));
    }

    private String filledIn(double weak, double strong, double area, double fraction) {
        double exponent = activity.value() * area;
        return String.format(
                Locale.ROOT,
                "%.3f + log10(%.3f x 10^(%.2f x %.1f x %.3f) + %.3f) / %.2f",
                weak,
                fraction,
                activity.value(),
                area,
                strong - weak,
                1 - fraction,
                exponent);
    }

    private List<Reason> groundsOf(Solvent solvent, boolean withArea) {
        List<Reason> grounds = new ArrayList<>();
        grounds.add(value(solvent, scale.property()).reason());
        if (withArea) {
            grounds.add(value(solvent, AREA).reason());
        }
        grounds.add(value(solvent, DENSITY).reason());
        grounds.add(value(solvent, MOLAR_MASS).reason());
        return grounds;
    }

    private OptionalDouble strengthOf(Solvent solvent) {
        return solvent.number(scale.property());
    }

    private static boolean hasMoles(Solvent solvent) {
        return solvent.number(DENSITY).isPresent() && solvent.number(MOLAR_MASS).isPresent();
    }

    private static boolean hasArea(Solvent solvent) {
        return solvent.number(AREA).isPresent();
    }

    private static double molesPerMillilitre(Solvent solvent) {
        return number(solvent, DENSITY) / number(solvent, MOLAR_MASS);
    }

    private static double number(Solvent solvent, String property) {
        return solvent.number(property).orElseThrow();
    }

    private static TableValue value(Solvent solvent, String property) {
        return solvent.value(property).orElseThrow();
    }
}
