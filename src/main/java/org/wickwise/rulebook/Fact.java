package org.wickwise.rulebook;

import java.time.Period;
import java.util.List;
import org.wickwise.bench.Setting;
import org.wickwise.notebook.RunMishap;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Additive;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.TableValue;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/** What the rules are given to judge: each fact is one small statement that can say where it comes from. */
public sealed interface Fact {

    /** How many dyes the mixture has. */
    record MixtureSize(long dyes) implements Fact {}

    record ClassOf(Dye dye) implements Fact, Ground {
        public DyeClass dyeClass() {
            return dye.dyeClass();
        }

        @Override
        public Reason reason() {
            return dye.stated();
        }
    }

    record SettingIs(Setting setting, Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Stated("the setting is " + setting.word(), place);
        }
    }

    record MishapOn(Strip strip, Mishap mishap) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed(strip + ": " + mishap.word(), strip.place());
        }
    }

    record StreakOf(Strip strip, Dye dye) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed(dye + " left a streak on " + strip, strip.place());
        }
    }

    record AtTheEdge(Strip strip, Dye dye) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed("the spot of " + dye + " touched the edge of " + strip, strip.place());
        }
    }

    record FrontOf(Strip strip, double millimetres) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed(
                    "the front of " + strip + " is at " + Numbers.plain(millimetres, 2) + " mm", strip.place());
        }
    }

    /** A strip on another stationary phase than the column's. */
    record OtherPhase(Strip strip, String columnPhase) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Stated(
                    strip + " was run on " + strip.phase() + ", the column is " + columnPhase, strip.place());
        }
    }

    /**
     * One of many strips of a dye in an eluent, and how far it lies from the others.
     *
     * @param timesScatter distance from the median in units of the usual scatter, 0 or more
     */
    record OutOfLine(Strip strip, Dye dye, double timesScatter, Reason reason) implements Fact, Ground {}

    /**
     * One of three or a few more strips of a dye in an eluent, and how far it lies from the others.
     *
     * @param shareOfCritical Grubbs' statistic over its critical value; above 1 the test calls it an outlier
     */
    record SuspectReading(Strip strip, Dye dye, double shareOfCritical, Reason reason) implements Fact, Ground {}

    record PartOf(Eluent eluent, Solvent solvent, double percent) implements Fact, Ground {
        public String family() {
            return solvent.family();
        }

        public boolean aqueous() {
            return solvent.aqueous();
        }

        @Override
        public Reason reason() {
            String share = eluent.parts().size() == 1
                    ? eluent + " is all " + solvent
                    : eluent + " is " + Numbers.plain(percent, 1) + " % " + solvent + " by volume";
            return new Reason.Calculated(
                    share + " (family: " + solvent.family() + ")",
                    "shares by volume from the ratio as written",
                    "common practice, no source",
                    List.of());
        }
    }

    /**
     * How much of an eluent is of one kind, all its parts together.
     *
     * @param kind a family, or {@link #WATERY}
     */
    record ShareOf(Eluent eluent, String kind, double percent) implements Fact, Ground {

        /** The kind of all aqueous families together. */
        public static final String WATERY = "watery";

        @Override
        public Reason reason() {
            return new Reason.Calculated(
                    Numbers.plain(percent, 1) + " % of " + eluent + " is " + kind,
                    "sum of the shares by volume as written",
                    "common practice, no source",
                    List.of());
        }
    }

    /** @param percent the share of the part that has the property */
    record PropertyOf(Eluent eluent, double percent, TableValue value) implements Fact, Ground {
        public String property() {
            return value.property();
        }

        public double number() {
            return value.number().orElseThrow();
        }

        @Override
        public Reason reason() {
            return value.reason();
        }
    }

    /** One word or code among those the table gives for a property of a part of the eluent. */
    record WordOf(Eluent eluent, String word, TableValue value) implements Fact, Ground {
        public String property() {
            return value.property();
        }

        @Override
        public Reason reason() {
            return value.reason();
        }
    }

    record AdditiveIn(Eluent eluent, Additive additive) implements Fact, Ground {
        public String kind() {
            return additive.kind();
        }

        @Override
        public Reason reason() {
            return new Reason.Calculated(
                    eluent + " contains " + additive.name() + ", a kind of " + additive.kind(),
                    "as the eluent is written",
                    "common practice, no source",
                    List.of());
        }
    }

    record OffTheShelf(Eluent eluent, Solvent solvent, Place shelf) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Stated(solvent + " is not on the shelf", shelf);
        }
    }

    record Banned(Eluent eluent, String bottle, String because, Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Stated(bottle + " is banned here: " + because, place);
        }
    }

    /** How long a bottle of the eluent has been open on the day of the column. */
    record OpenFor(Eluent eluent, String bottle, Period open, Place place) implements Fact, Ground {

        private static final double DAYS_OF_A_LONG_MONTH = 31;

        /** Whole months, and the days beyond them as a part of a month. */
        public double months() {
            return open.toTotalMonths() + open.getDays() / DAYS_OF_A_LONG_MONTH;
        }

        @Override
        public Reason reason() {
            return new Reason.Stated(bottle + " has been open for " + inWords(), place);
        }

        private String inWords() {
            String months = open.toTotalMonths() + (open.toTotalMonths() == 1 ? " month" : " months");
            String days = open.getDays() + (open.getDays() == 1 ? " day" : " days");
            if (open.toTotalMonths() == 0) {
                return days;
            }
            return open.getDays() == 0 ? months : months + " and " + days;
        }
    }

    /** A part of the eluent and a solvent that part into two layers. */
    record PartsFrom(Eluent eluent, Solvent solvent, Reason reason) implements Fact, Ground {}

    /** The writer says that the mixture fades in light. */
    record FadesInLight(Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Stated("the mixture fades in light", place);
        }
    }

    record TwoLayers(Eluent eluent, Reason reason) implements Fact, Ground {}

    record DoNotMix(Eluent before, Eluent after, Reason reason) implements Fact, Ground {}

    record WeakerThan(Eluent weak, Eluent strong, Reason reason) implements Fact, Ground {}

    /** A neat solvent that is the weakest part of a blend. */
    record WeakestPart(Eluent part, Eluent blend, Reason reason) implements Fact, Ground {}

    /** What went wrong with a finished column, as the writer says. */
    record RunWentWrong(RunMishap mishap, Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed("the run went wrong: " + mishap.word(), place);
        }
    }

    /**
     * When a dye came off a finished column, beside when the strips let one expect it.
     *
     * @param eluent in which it was to leave
     * @param late in column volumes, below 0 when it came early
     */
    record CameAt(Dye dye, Eluent eluent, double late, Reason reason) implements Fact, Ground {
        public double early() {
            return -late;
        }
    }

    /**
     * By how much every dye came early, or every dye late, that came and was expected; two dyes at least.
     *
     * @param early in column volumes, the least of all; below 0 when one came late
     * @param late in column volumes, the least of all; below 0 when one came early
     */
    record AllCameAt(double early, double late, Reason reason) implements Fact, Ground {}

    /** @param times width of the band that came over that expected */
    record CameWide(Dye dye, double times, Reason reason) implements Fact, Ground {}

    record StillOnBed(Dye dye, Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed(dye + " is still on the bed at the end", place);
        }
    }

    /** @param percentAtMost of the load that was found in the fractions, with two standard uncertainties */
    record Found(Dye dye, double percentAtMost, Reason reason) implements Fact, Ground {}

    /** @param timesMore k on the column over k on the strip */
    record HeldOnColumn(Dye dye, Eluent eluent, double timesMore, Reason reason) implements Fact, Ground {
        public double timesLess() {
            return 1 / timesMore;
        }
    }

    /** The resolution of two dyes that were to leave one after the other. */
    record PairExpected(Dye ahead, Dye behind, double resolution, Reason reason) implements Fact, Ground {}

    /** The resolution with which two dyes left one after the other. */
    record PairCame(Dye ahead, Dye behind, double resolution, Reason reason) implements Fact, Ground {}

    /** Two dyes in one fraction; the first by name comes first. */
    record SharedFraction(Dye one, Dye other, int fraction, Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed(one + " and " + other + " are both in fraction " + fraction, place);
        }
    }

    /** A dye that had begun to come in an eluent and was still coming when the next eluent reached the outlet. */
    record NotAllLeft(Dye dye, Eluent eluent, Reason reason) implements Fact, Ground {}

    /** @param percent volume of the load over the liquid in the bed */
    record LoadFills(double percent, Reason reason) implements Fact, Ground {}

    /** @param times dry mass of the bed over that of the load */
    record AdsorbentOverLoad(double times, Reason reason) implements Fact, Ground {}

    /** @param columnVolumes poured and not collected */
    record NotCollected(double columnVolumes, Reason reason) implements Fact, Ground {}

    /**
     * A dye in the first or the last of several fractions; of the first only where it ends before the dye was to come. One
     * fraction alone, or a first one that goes on to where the dye was to come, tells of neither haste nor a missing end.
     *
     * @param last whether it is the last one
     */
    record AtTheEndOfARun(Dye dye, boolean last, Place place) implements Fact, Ground {
        @Override
        public Reason reason() {
            return new Reason.Observed(dye + " was there in the " + (last ? "last" : "first") + " fraction", place);
        }
    }
}
