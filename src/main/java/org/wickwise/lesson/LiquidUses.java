package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.plan.Route;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** Every liquid that one group has ready in a lesson: for jars, packing, steps, flushing, rinsing. */
final class LiquidUses {

    private static final String DEFINITION = "by definition";

    private final LaidOutLesson laidOut;
    private final List<LiquidUse> uses = new ArrayList<>();

    private LiquidUses(LaidOutLesson laidOut) {
        this.laidOut = laidOut;
    }

    /** In the order of pouring; the column's share is left out where its size is not known or there is no plan. */
    static List<LiquidUse> of(LaidOutLesson laidOut) {
        LiquidUses found = new LiquidUses(laidOut);
        found.jars();
        OptionalDouble columnVolume = laidOut.columnVolumeMillilitres();
        if (columnVolume.isPresent()) {
            found.column(laidOut.plan().route().orElseThrow(), columnVolume.getAsDouble());
        }
        return List.copyOf(found.uses);
    }

    /** Strips are shared evenly between the eluents. */
    private void jars() {
        List<Eluent> eluents = laidOut.stripEluents();
        if (eluents.isEmpty()) {
            return;
        }
        double strips = (double) laidOut.stripsOfAGroup() / eluents.size() * laidOut.timesWith("reserve of strips");
        double filling = laidOut.value("jar filling");
        double inAJar = laidOut.value("number of strips in a jar");
        String formula = "strips with spare ones / strips in a jar x jar filling: " + Numbers.plain(strips, 2) + " / "
                + Numbers.plain(inAJar, 1) + " x " + Numbers.plain(filling, 1);
        for (Eluent eluent : eluents) {
            add(
                    "jars",
                    eluent,
                    strips / inAJar * filling,
                    formula,
                    List.of(
                            laidOut.stripsStated(),
                            laidOut.limit("reserve of strips").reason(),
                            laidOut.limit("number of strips in a jar").reason(),
                            laidOut.limit("jar filling").reason()));
        }
    }

    private void column(Route route, double columnVolume) {
        String one = "one column volume is " + Numbers.fixed(columnVolume, 1) + " mL";
        List<Reason> size = new ArrayList<>();
        laidOut.plan().judged().column().sizeStated().ifPresent(size::add);
        Reason bed = new Reason.Calculated(one, "total porosity x pi d^2 L / 4", DEFINITION, size);
        columnVolumes("packing and loading", route.packing().packing(), "packing and loading", columnVolume, bed);
        List<Double> ready = laidOut.plan().ranges().orElseThrow().ready();
        for (int i = 0; i < route.steps().size(); i++) {
            double kept = ready.get(i);
            add(
                    "step " + (i + 1),
                    route.steps().get(i).eluent(),
                    kept * columnVolume,
                    "column volumes to keep ready for the step x column volume: " + Numbers.plain(kept, 2) + " x "
                            + Numbers.fixed(columnVolume, 1),
                    List.of(volumeOfStep(i, kept), bed));
        }
        Eluent last = route.steps().get(route.steps().size() - 1).eluent();
        columnVolumes("flushing", last, "flushing of the bed", columnVolume, bed);
        double rinsing = laidOut.value("rinsing of glass");
        add(
                "rinsing",
                last,
                rinsing,
                "as the limit says: " + Numbers.plain(rinsing, 1),
                List.of(laidOut.limit("rinsing of glass").reason()));
    }

    private Reason volumeOfStep(int step, double kept) {
        String label = "volume-" + (step + 1);
        return laidOut.plan()
                .line(label)
                .map(line -> line.reason())
                .orElseGet(() -> new Reason.Chosen(
                        "step " + (step + 1) + " asks for " + Numbers.plain(kept, 2) + " column volumes",
                        List.of(),
                        List.of()));
    }

    private void columnVolumes(String purpose, Eluent eluent, String limit, double columnVolume, Reason bed) {
        double volumes = laidOut.value(limit);
        add(
                purpose,
                eluent,
                volumes * columnVolume,
                "column volumes x column volume: " + Numbers.plain(volumes, 2) + " x " + Numbers.fixed(columnVolume, 1),
                List.of(laidOut.limit(limit).reason(), bed));
    }

    private void add(String purpose, Eluent eluent, double millilitres, String formula, List<Reason> grounds) {
        if (millilitres > 0) {
            String statement = purpose + ", a group: " + Numbers.fixed(millilitres, 1) + " mL of " + eluent;
            uses.add(new LiquidUse(
                    purpose, eluent, millilitres, new Reason.Calculated(statement, formula, DEFINITION, grounds)));
        }
    }
}
