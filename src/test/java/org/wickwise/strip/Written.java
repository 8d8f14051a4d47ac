package org.wickwise.strip;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason;
import org.wickwise.strip.BlendWishes.Ratio;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;

/** Short ways to write down dyes, eluents and readings for the tests of estimates. */
final class Written {

    static final Place HERE = new Place("test", 1);
    static final Estimates.Allowances ALLOWANCES = new Estimates.Allowances(
            0.1, 0.25, 0.1, 0.1, 0.05, 0.95, List.of(new Reason.Limited("the scatter", HERE, "test")));

    private Written() {}

    static Dye neutral(String name) {
        return new Dye(name, DyeClass.NEUTRAL, "", HERE);
    }

    static Solvent solvent(String name) {
        return Shipped.data().solvent(name).orElseThrow();
    }

    static StationaryPhase phase(String name) {
        return Shipped.data().stationaryPhase(name).orElseThrow();
    }

    static Eluent neat(String name) {
        return Eluent.neat(solvent(name));
    }

    static Eluent blend(String weak, String strong, double percentOfStrong) {
        if (percentOfStrong == 0 || percentOfStrong == 100) {
            return neat(percentOfStrong == 0 ? weak : strong);
        }
        return Eluent.of(
                List.of(
                        new Eluent.Part(solvent(weak), 100 - percentOfStrong),
                        new Eluent.Part(solvent(strong), percentOfStrong)),
                List.of());
    }

    static Eluent withAdditive(Eluent eluent) {
        return Eluent.of(
                eluent.parts(),
                List.of(new Eluent.Addition(Shipped.data().additives().get(0), OptionalDouble.of(1))));
    }

    static Movement.Measured reading(Dye dye, Eluent eluent, String phase, double rf) {
        return new Movement.Measured(
                dye,
                eluent,
                phase(phase),
                new RetardationFactor(rf, 0.01),
                List.of(new Reason.Observed(dye + " at Rf " + rf + " in " + eluent, HERE)));
    }

    static Estimates on(String phase, Movement.Measured... readings) {
        return Estimates.of(Arrays.asList(readings), phase(phase), ALLOWANCES);
    }

    static BlendWishes wishes(int most) {
        return new BlendWishes(
                List.of(new Ratio(9, 1), new Ratio(4, 1), new Ratio(3, 2), new Ratio(1, 1), new Ratio(1, 4)),
                0.2,
                0.35,
                "test",
                most,
                HERE);
    }
}
