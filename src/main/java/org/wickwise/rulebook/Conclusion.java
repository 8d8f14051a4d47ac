package org.wickwise.rulebook;

import java.util.Arrays;
import java.util.List;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** What the rules may conclude. A conclusion holds as long as a rule says so; its reason is kept beside it. */
public sealed interface Conclusion {

    /** How far a strip can be trusted. */
    enum Reading {
        USABLE,
        DOUBTFUL,
        VOID;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Whether a behaviour was seen or reckoned from the ladder. */
    enum Basis {
        OBSERVED,
        ESTIMATED
    }

    /** What lies between two dyes. */
    enum Separation {
        PARTED,
        TOUCHING,
        TOGETHER;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        public static Separation named(String word) {
            return Arrays.stream(values())
                    .filter(known -> known.word().equals(word))
                    .findFirst()
                    .orElseThrow();
        }

        public static List<String> words() {
            return Arrays.stream(values()).map(Separation::word).toList();
        }
    }

    /** Whether an eluent may enter the column. */
    enum Fit {
        FIT,
        LAST_ONLY,
        UNFIT
    }

    record StripVerdict(Strip strip, Reading reading) implements Conclusion {}

    record SpotVerdict(Strip strip, Dye dye, Reading reading) implements Conclusion {}

    record Behaves(Dye dye, Eluent eluent, Behaviour behaviour, Basis basis) implements Conclusion {
        public boolean leaves() {
            return behaviour.leaves();
        }
    }

    record Borderline(Dye dye, Eluent eluent) implements Conclusion {}

    /** The dye's band has no middle and no end that could be reckoned. */
    record Tails(Dye dye, Eluent eluent) implements Conclusion {}

    record Between(Eluent eluent, Dye ahead, Dye behind, Separation separation) implements Conclusion {}

    /** On a column, the first dye leaves before the second in this eluent, cleanly. */
    record LeavesBefore(Eluent eluent, Dye first, Dye second) implements Conclusion {}

    record Fitness(Eluent eluent, Fit fit) implements Conclusion {
        public boolean mayEnter() {
            return fit != Fit.UNFIT;
        }
    }

    /** A blend that is thicker than the thickest of its parts. */
    record Thickened(Eluent eluent) implements Conclusion {}

    record MayNotFollow(Eluent before, Eluent after) implements Conclusion {}

    record Holds(Eluent eluent) implements Conclusion {}

    record Releases(Eluent eluent, Dye dye) implements Conclusion {}

    record Sweeps(Eluent eluent) implements Conclusion {}

    /** How far a packing eluent is backed, best first. */
    enum PackingKind {
        HOLDS_ALL,
        WEAKEST_PART,
        FIRST_ELUENT
    }

    record MayPack(Eluent packing, Eluent first, PackingKind kind) implements Conclusion {}

    record Crossing(Dye one, Dye other, Eluent here, Eluent there) implements Conclusion {}

    record Caution(String rule, String topic) implements Conclusion {}

    record EluentCaution(String rule, String topic, Eluent eluent) implements Conclusion {}

    /** A caution about what a dye does in an eluent. */
    record DyeCaution(String rule, String topic, Dye dye, Eluent eluent) implements Conclusion {}

    record RunNext(String rule) implements Conclusion {}

    record RunNextDye(String rule, Dye dye) implements Conclusion {}

    record RunNextEluent(String rule, Eluent eluent) implements Conclusion {}

    record RunAgain(String rule, Strip strip) implements Conclusion {}

    /** A likely reason why a finished column differed from what was expected. */
    record LikelyReason(String rule) implements Conclusion {}

    /** A likely reason why a dye did. */
    record LikelyReasonFor(String rule, Dye dye) implements Conclusion {}
}
