package org.wickwise.why;

import java.util.Optional;
import org.wickwise.rulebook.Conclusion.Basis;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Movement;

/** What a dye does in an eluent, in a few words with its figure and how it is known. */
final class Seen {

    private Seen() {}

    /** "travels (Rf 0.33 ± 0.05)", "stays (by eye)", "probably travels (reckoned Rf 0.41 ± 0.10)". */
    static String words(Behaves behaves, Judgement judgement) {
        Optional<Movement> movement = judgement.movement(behaves.dye(), behaves.eluent());
        String probably = behaves.basis() == Basis.ESTIMATED ? "probably " : "";
        return probably + behaves.behaviour().word() + " ("
                + movement.map(Seen::figure).orElse("estimated") + ")";
    }

    private static String figure(Movement movement) {
        String reckoned = movement.isReckoned() ? "reckoned " : "";
        return movement.retardation().map(rf -> reckoned + "Rf " + rf.shown()).orElse("by eye");
    }
}
