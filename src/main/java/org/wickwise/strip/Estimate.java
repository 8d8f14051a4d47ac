package org.wickwise.strip;

import java.util.function.Supplier;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;

/** What the strips let one reckon of a dye in an eluent that nobody ran. */
public sealed interface Estimate {

    /**
     * @param retardationFactor with the uncertainty of a prediction
     * @param why tells it in full; of most estimates only the number is wanted
     */
    record Reckoned(RetardationFactor retardationFactor, Supplier<Reason> why) implements Estimate, Ground {
        @Override
        public Reason reason() {
            return why.get();
        }
    }

    /**
     * Only one side is known.
     *
     * @param retardation the dye runs no further than this Rf, at about 95 %
     * @param why tells it in full
     */
    record AtMost(double retardation, Supplier<Reason> why) implements Estimate, Ground {
        @Override
        public Reason reason() {
            return why.get();
        }
    }

    /**
     * Only one side is known.
     *
     * @param retardation the dye runs at least to this Rf, at about 95 %
     * @param why tells it in full
     */
    record AtLeast(double retardation, Supplier<Reason> why) implements Estimate, Ground {
        @Override
        public Reason reason() {
            return why.get();
        }
    }

    /** @param why in words, for a person */
    record NotReckoned(String why) implements Estimate {}
}
