package org.wickwise.plan;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.BandOnBed;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Conclusion.PackingKind;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * What the search may choose from, looked up once. Dyes and eluents go by their numbers; a set of dyes is an int with a
 * bit for each.
 *
 * @param pourable every eluent that may enter the column
 * @param plates N of the column
 * @param comfortableColumnVolumes bands of one step should be this far apart
 * @param creepLimit the share of the bed that a dye may move before its own step
 * @param unmeasuredColumnVolumes how much of an eluent brings a dye off that nobody measured in it
 * @param leastColumnVolumes no eluent is poured for less
 */
record Choices(
        List<Dye> dyes,
        List<Pourable> pourable,
        double plates,
        double comfortableColumnVolumes,
        double creepLimit,
        double unmeasuredColumnVolumes,
        double leastColumnVolumes) {

    /**
     * What one dye does in one eluent.
     *
     * @param doubtful whether the reading is doubtful or lies near a limit
     * @param retardation empty where it was only watched
     */
    record Reach(Behaviour behaviour, boolean estimated, boolean doubtful, Optional<RetardationFactor> retardation) {}

    /**
     * What the column may be packed and loaded with before an eluent.
     *
     * @param columnVolumes how much packing and loading take
     * @param loaded how each dye stands on the bed once it is loaded, by the number of the dye
     */
    record Packing(
            MayPack conclusion,
            boolean tried,
            double burden,
            double columnVolumes,
            double pricePerColumnVolume,
            List<BandOnBed> loaded) {

        Packing {
            loaded = List.copyOf(loaded);
        }

        /** 0 when every dye is known to stay in it, more the less is known. */
        int notHolding() {
            return conclusion.kind().ordinal() - PackingKind.HOLDS_ALL.ordinal();
        }
    }

    /**
     * An eluent that may enter the column.
     *
     * @param reach what each dye does in it, by the number of the dye; empty where that is not known
     * @param leavesBefore for each dye the set of dyes that leave after it, cleanly
     * @param notAfter the numbers of the eluents it may not directly follow
     * @param lastOnly whether it may be poured as the last step only
     * @param heldColumnVolumes what the bottles give; empty where they do not say
     * @param pricePerColumnVolume 0 where no price is known
     * @param minutesPerColumnVolume 0 where the flow is not known
     * @param packings what may be packed before it, the best first
     */
    record Pourable(
            Eluent eluent,
            List<Optional<Reach>> reach,
            List<Integer> leavesBefore,
            BitSet notAfter,
            boolean lastOnly,
            int untriedSolvents,
            double burden,
            OptionalDouble heldColumnVolumes,
            double pricePerColumnVolume,
            double minutesPerColumnVolume,
            List<Packing> packings) {

        Pourable {
            reach = List.copyOf(reach);
            leavesBefore = List.copyOf(leavesBefore);
            packings = List.copyOf(packings);
        }

        boolean isBefore(int first, int second) {
            return (leavesBefore.get(first) & 1 << second) != 0;
        }
    }

    int everyDye() {
        return (1 << dyes.size()) - 1;
    }

    /** The dyes of a set, in the order of their names. */
    List<Dye> named(int set) {
        return dyes.stream().filter(dye -> (set & 1 << dyes.indexOf(dye)) != 0).toList();
    }

    /** Whether no dye moves more in the first than in the second, and some dye moves less. */
    boolean isWeaker(int weak, int strong) {
        boolean someLess = false;
        for (int dye = 0; dye < dyes.size(); dye++) {
            int less = compare(
                    pourable.get(weak).reach().get(dye),
                    pourable.get(strong).reach().get(dye));
            if (less > 0) {
                return false;
            }
            someLess |= less < 0;
        }
        return someLess;
    }

    /** Measured values count as different when their intervals do not meet; where one was only watched, the words do. */
    private static int compare(Optional<Reach> one, Optional<Reach> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return 0;
        }
        Optional<RetardationFactor> here = one.get().retardation();
        Optional<RetardationFactor> there = other.get().retardation();
        if (here.isPresent() && there.isPresent()) {
            boolean apart = here.get().highest() < there.get().lowest()
                    || there.get().highest() < here.get().lowest();
            return apart ? Double.compare(here.get().value(), there.get().value()) : 0;
        }
        return one.get().behaviour().compareTo(other.get().behaviour());
    }
}
