package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.bench.ClimbedStrip;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.FrontConstant;
import org.wickwise.strip.FrontForecast;
import org.wickwise.strip.FrontLiquid;
import org.wickwise.strip.FrontReading;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.substance.StationaryPhase.Climb;
import org.wickwise.text.Numbers;

/**
 * How fast fronts climb: as one's own runs in an eluent say, or reckoned from one's own runs in others, or from what is printed
 * of the strip's material.
 */
final class FrontSpeeds {

    private static final String LAW =
            "z^2 = kappa t above the liquid, kappa in proportion to surface tension / viscosity (Lucas 1918; Washburn, Phys."
                    + " Rev. 1921, 17, 273)";

    private final LaidOutLesson laidOut;
    private final double dip;
    private final List<Run> runs = new ArrayList<>();

    /** One strip whose front was watched. */
    private record Run(Strip strip, FrontConstant constant, String formula) {}

    /**
     * How fast a front climbs.
     *
     * @param from "by your own runs", where the speed comes from
     * @param doubt how many times longer or shorter it may take
     */
    record Speed(FrontConstant constant, String from, Limit doubt, Reason reason) {}

    FrontSpeeds(LaidOutLesson laidOut, List<ClimbedStrip> climbed) {
        this.laidOut = laidOut;
        this.dip = laidOut.value("origin above the liquid");
        for (ClimbedStrip told : climbed) {
            laidOut.lesson().basis().strips().stream()
                    .filter(strip -> strip.place().equals(told.strip())
                            && strip.mishaps().isEmpty())
                    .forEach(strip -> run(strip, told).ifPresent(runs::add));
        }
    }

    private Optional<Run> run(Strip strip, ClimbedStrip told) {
        List<FrontReading> looks = told.looks();
        if (looks.size() > 1) {
            FrontReading first = aboveTheLiquid(looks.get(0));
            FrontReading last = aboveTheLiquid(looks.get(looks.size() - 1));
            return Optional.of(new Run(
                    strip,
                    new FrontForecast(first, last).constant(),
                    "(z2^2 - z1^2) / (t2 - t1) = (" + shown(last.millimetres()) + "^2 - "
                            + shown(first.millimetres()) + "^2) / (" + shown(last.minutes()) + " - "
                            + shown(first.minutes()) + ")"));
        }
        Optional<FrontReading> only = looks.stream().findFirst();
        if (only.isEmpty()
                && told.minutes().isPresent()
                && strip.frontMillimetres().isPresent()) {
            only = Optional.of(new FrontReading(
                    told.minutes().getAsDouble(), strip.frontMillimetres().getAsDouble()));
        }
        return only.map(this::aboveTheLiquid)
                .map(reading -> new Run(
                        strip,
                        FrontConstant.of(reading),
                        "z^2 / t = " + shown(reading.millimetres()) + "^2 / " + shown(reading.minutes())));
    }

    private FrontReading aboveTheLiquid(FrontReading fromTheOrigin) {
        return new FrontReading(fromTheOrigin.minutes(), fromTheOrigin.millimetres() + dip);
    }

    /** Empty where nothing is known of a strip like this, or surface tension or viscosity is missing. */
    Optional<Speed> of(Eluent eluent, StationaryPhase phase) {
        List<Run> own = runs.stream()
                .filter(run -> run.strip().phase().name().equals(phase.name())
                        && run.strip().eluent().equals(eluent))
                .toList();
        if (!own.isEmpty()) {
            return Optional.of(speed(
                    eluent,
                    meanOf(own.stream().map(Run::constant).toList()),
                    "by your own " + (own.size() == 1 ? "run" : "runs"),
                    laidOut.limit("doubt of a front by its own runs"),
                    own.stream().map(this::reason).toList()));
        }
        Optional<FrontLiquid> liquid = FrontLiquid.of(eluent);
        return liquid.isEmpty() ? Optional.empty() : reckoned(eluent, liquid.get(), phase);
    }

    private Optional<Speed> reckoned(Eluent eluent, FrontLiquid liquid, StationaryPhase phase) {
        Limit doubt =
                laidOut.limit(eluent.parts().size() > 1 ? "doubt of a front in a blend" : "doubt of a reckoned front");
        List<FrontConstant> constants = new ArrayList<>();
        List<Reason> grounds = new ArrayList<>(values(eluent));
        for (Run run : runs) {
            Optional<FrontLiquid> ran = FrontLiquid.of(run.strip().eluent());
            if (run.strip().phase().name().equals(phase.name()) && ran.isPresent()) {
                constants.add(run.constant().inAnother(ran.get(), liquid));
                grounds.add(reason(run));
                grounds.addAll(values(run.strip().eluent()));
            }
        }
        if (!constants.isEmpty()) {
            return Optional.of(
                    speed(eluent, meanOf(constants), "reckoned from your runs in other eluents", doubt, grounds));
        }
        return printed(phase).map(climb -> {
            FrontLiquid known = FrontLiquid.of(Eluent.neat(solvent(climb))).orElseThrow();
            grounds.addAll(values(Eluent.neat(solvent(climb))));
            grounds.add(new Reason.Tabled(
                    climb.liquid() + " climbs " + shown(climb.millimetres()) + " mm on " + phase + " in "
                            + shown(climb.minutes()) + " min",
                    List.of(climb.from()),
                    "as printed for such strips, not for yours"));
            return speed(
                    eluent,
                    FrontConstant.of(new FrontReading(climb.minutes(), climb.millimetres()))
                            .inAnother(known, liquid),
                    "reckoned, not run",
                    doubt,
                    grounds);
        });
    }

    private Optional<Climb> printed(StationaryPhase phase) {
        return phase.climb()
                .filter(climb -> FrontLiquid.of(Eluent.neat(solvent(climb))).isPresent());
    }

    private Solvent solvent(Climb climb) {
        return laidOut.data().solvent(climb.liquid()).orElseThrow();
    }

    /** The geometric mean, since speeds differ by factors. */
    private static FrontConstant meanOf(List<FrontConstant> constants) {
        return new FrontConstant(Math.exp(constants.stream()
                .mapToDouble(constant -> Math.log(constant.squareMillimetresPerMinute()))
                .average()
                .orElseThrow()));
    }

    private Speed speed(Eluent eluent, FrontConstant constant, String from, Limit doubt, List<Reason> grounds) {
        List<Reason> all = new ArrayList<>(grounds);
        String statement = "front constant of " + eluent + ": "
                + Numbers.plain(constant.squareMillimetresPerMinute(), 0) + " mm2/min, " + from;
        String formula =
                "geometric mean; from one liquid to another by surface tension / viscosity; of a blend the mean"
                        + " surface tension and the mean logarithm of the viscosity, by volume";
        return new Speed(constant, from, doubt, new Reason.Calculated(statement, formula, LAW, all));
    }

    private Reason reason(Run run) {
        return new Reason.Calculated(
                "front constant of the strip in " + run.strip().eluent() + ": "
                        + Numbers.plain(run.constant().squareMillimetresPerMinute(), 0) + " mm2/min",
                run.formula() + ", heights from the origin and " + shown(dip) + " mm more",
                LAW,
                List.of(
                        new Reason.Observed(
                                "the front of the strip in " + run.strip().eluent() + " was watched",
                                run.strip().place()),
                        laidOut.limit("origin above the liquid").reason()));
    }

    private static List<Reason> values(Eluent eluent) {
        List<Reason> values = new ArrayList<>();
        eluent.parts().forEach(part -> {
            part.solvent().value("surface tension").ifPresent(value -> values.add(value.reason()));
            part.solvent().value("viscosity").ifPresent(value -> values.add(value.reason()));
        });
        return values;
    }

    /** How far from the origin the fronts in an eluent are let run: as on the lesson's own strips, the middle one of several. */
    double frontMillimetres(Eluent eluent) {
        List<Strip> own = laidOut.lesson().basis().strips();
        OptionalDouble inIt = middle(
                own.stream().filter(strip -> strip.eluent().equals(eluent)).toList());
        OptionalDouble inAny = middle(own);
        return inIt.isPresent() ? inIt.getAsDouble() : inAny.orElse(laidOut.value("front of an unrun strip"));
    }

    private static OptionalDouble middle(List<Strip> strips) {
        double[] fronts = strips.stream()
                .flatMapToDouble(strip -> strip.frontMillimetres().stream())
                .sorted()
                .toArray();
        return fronts.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(fronts[fronts.length / 2]);
    }

    private static String shown(double value) {
        return Numbers.plain(value, 1);
    }
}
