package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.Percolation;
import org.wickwise.column.Setup.Drive;
import org.wickwise.column.Setup.Particles;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.TableValue;
import org.wickwise.text.Numbers;

/**
 * How fast an eluent runs through the column: as somebody measured, as gravity drives it through the grains, or by pressure
 * as the table of column sizes is run, unless that takes more than a gentle pressure. A blend
 * is taken to be as viscous as its most viscous part, or a few times as viscous where the rules say that it is thicker than
 * each of its parts.
 */
public final class Flow {

    private static final String VISCOSITY = "viscosity";
    private static final String THICKENING = "thickening of a blend";
    private static final String DENSITY = "density";
    private static final String GENTLE = "gentle pressure limit";
    private static final double PASCALS_PER_KILOPASCAL = 1000;
    private static final String DARCY =
            "Darcy's law with the Kozeny-Carman permeability, u = dP dp^2 e^3 / (180 eta L (1 - e)^2), from memory";

    private final Judgement judgement;
    private final Column column;
    private final ColumnSizes sizes;

    public Flow(Judgement judgement, ColumnSizes sizes) {
        this.judgement = judgement;
        this.sizes = sizes;
        this.column = judgement.judged().column();
    }

    /** In millilitres per minute; empty where something it needs is not known. */
    public OptionalDouble millilitresPerMinute(Eluent eluent) {
        OptionalDouble measured = column.setup().flowMillilitresPerMinute();
        return measured.isPresent() ? measured : isRunBy(Drive.GRAVITY) ? byGravity(eluent) : byPressure(eluent);
    }

    /** Empty where the flow or the size of the column is not known. */
    public OptionalDouble minutesPerColumnVolume(Eluent eluent) {
        OptionalDouble flow = millilitresPerMinute(eluent);
        OptionalDouble columnVolume = column.columnVolumeMillilitres();
        return flow.isEmpty() || columnVolume.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(columnVolume.getAsDouble() / flow.getAsDouble());
    }

    /** How many times as slowly an eluent runs as another under the same pressure; empty where a viscosity is missing. */
    OptionalDouble timesSlower(Eluent before, Eluent after) {
        OptionalDouble one = viscosity(before);
        OptionalDouble other = viscosity(after);
        return one.isEmpty() || other.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Percolation.pressureRatio(one.getAsDouble(), other.getAsDouble()));
    }

    private boolean isRunBy(Drive drive) {
        return column.setup().drive().filter(drive::equals).isPresent();
    }

    private OptionalDouble byGravity(Eluent eluent) {
        OptionalDouble density = density(eluent);
        OptionalDouble head = column.setup().headMillimetres();
        if (column.bedMillimetres().isEmpty() || head.isEmpty() || density.isEmpty()) {
            return OptionalDouble.empty();
        }
        double liquid = column.bedMillimetres().getAsDouble() + head.getAsDouble();
        return under(Percolation.headPascals(liquid, density.getAsDouble()), eluent);
    }

    private OptionalDouble byPressure(Eluent eluent) {
        OptionalDouble gentle = isRunBy(Drive.PRESSURE)
                ? under(PASCALS_PER_KILOPASCAL * judgement.limit(GENTLE), eluent)
                : OptionalDouble.empty();
        return gentle.isEmpty()
                ? gentle
                : OptionalDouble.of(Math.min(
                        gentle.getAsDouble(),
                        sizes.flowMillilitresPerMinute(column.boreMillimetres().orElseThrow())));
    }

    /** The flow in a real bed under a pressure; empty where bore, bed, grains or a viscosity is not known. */
    private OptionalDouble under(double pascals, Eluent eluent) {
        Optional<Particles> particles = column.setup().particles();
        OptionalDouble viscosity = viscosity(eluent);
        if (particles.isEmpty()
                || viscosity.isEmpty()
                || column.boreMillimetres().isEmpty()
                || column.bedMillimetres().isEmpty()) {
            return OptionalDouble.empty();
        }
        double surface = new Percolation(
                        particles.get().meanMicrometres(),
                        judgement.limit("share of a bed between its grains"),
                        column.bedMillimetres().getAsDouble())
                .surfaceCentimetresPerMinute(pascals, viscosity.getAsDouble());
        return OptionalDouble.of(Percolation.millilitresPerMinute(
                        surface, column.boreMillimetres().getAsDouble())
                / judgement.limit("slowness of a real bed"));
    }

    /** What a flow was reckoned from; the writer's own figure where it was measured. */
    public Reason reason(Eluent eluent, String statement) {
        OptionalDouble measured = column.setup().flowMillilitresPerMinute();
        if (measured.isPresent()) {
            return new Reason.Stated(
                    "the flow is " + Numbers.plain(measured.getAsDouble(), 2) + " mL/min, measured",
                    column.setup().place());
        }
        List<Reason> grounds = new ArrayList<>();
        grounds.addAll(reasonsOfViscosity(eluent));
        boolean gravity = isRunBy(Drive.GRAVITY);
        if (gravity) {
            eluent.parts()
                    .forEach(part -> part.solvent().value(DENSITY).ifPresent(value -> grounds.add(value.reason())));
        } else {
            grounds.add(judgement.limits().get(GENTLE).reason());
            grounds.add(sizes.reason());
        }
        grounds.add(judgement.limits().get("share of a bed between its grains").reason());
        grounds.add(judgement.limits().get("slowness of a real bed").reason());
        String grains = column.setup().particles().orElseThrow().shown();
        grounds.add(new Reason.Stated(
                "the column is run by " + (gravity ? "gravity" : "pressure") + " and its grains are " + grains
                        + (gravity ? "; " + head() + " mm of liquid stand above the bed" : ""),
                column.setup().place()));
        column.sizeStated().ifPresent(grounds::add);
        String mean = Numbers.plain(column.setup().particles().orElseThrow().meanMicrometres(), 0);
        String driven = gravity
                ? "dP = density g (bed + liquid above)"
                : "dP = the gentle pressure limit; not faster than the surface falls in the table, "
                        + Numbers.plain(sizes.surfaceFallMillimetresPerMinute(), 1) + " mm a minute";
        String formula = driven + "; dp = " + mean + " um; divided by the slowness of a real bed";
        return new Reason.Calculated(statement, formula, DARCY, grounds);
    }

    private String head() {
        return Numbers.plain(column.setup().headMillimetres().orElseThrow(), 0);
    }

    /** The table value of the thickest part, and by which rule and limit the blend is thicker than that. */
    List<Reason> reasonsOfViscosity(Eluent eluent) {
        List<Reason> reasons = new ArrayList<>();
        thickest(eluent).ifPresent(value -> reasons.add(value.reason()));
        if (isThickened(eluent)) {
            reasons.add(judgement.reason(new Conclusion.Thickened(eluent)));
            reasons.add(judgement.limits().get(THICKENING).reason());
        }
        return reasons;
    }

    /** Whether it is reckoned thicker than the thickest of its parts. */
    boolean isThickened(Eluent eluent) {
        return judgement.holds(new Conclusion.Thickened(eluent));
    }

    /** In mPa s; empty where that of a part is missing. */
    private OptionalDouble viscosity(Eluent eluent) {
        double times = isThickened(eluent) ? judgement.limit(THICKENING) : 1;
        return thickest(eluent)
                .map(value -> OptionalDouble.of(times * number(value)))
                .orElse(OptionalDouble.empty());
    }

    private static Optional<TableValue> thickest(Eluent eluent) {
        List<TableValue> values = eluent.parts().stream()
                .flatMap(part -> part.solvent().value(VISCOSITY).stream())
                .toList();
        return values.size() < eluent.parts().size()
                ? Optional.empty()
                : values.stream().max(Comparator.comparingDouble(Flow::number));
    }

    private static OptionalDouble density(Eluent eluent) {
        boolean allKnown = eluent.parts().stream()
                .allMatch(part -> part.solvent().number(DENSITY).isPresent());
        return allKnown
                ? OptionalDouble.of(eluent.parts().stream()
                        .mapToDouble(part -> part.percent()
                                / 100
                                * part.solvent().number(DENSITY).orElseThrow())
                        .sum())
                : OptionalDouble.empty();
    }

    private static double number(TableValue value) {
        return value.number().orElseThrow();
    }
}
