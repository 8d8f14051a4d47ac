package org.wickwise.strip;

import java.util.List;
import java.util.Optional;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;

/** What the strips that can be read say of one dye in one eluent. */
public sealed interface Movement extends Ground {

    Dye dye();

    Eluent eluent();

    /** The stationary phase of the strips this rests on. */
    StationaryPhase phase();

    /** Rf with its uncertainty, read or reckoned; empty where the movement was only watched. */
    Optional<RetardationFactor> retardation();

    /** Whether it was reckoned and not seen. */
    default boolean isReckoned() {
        return this instanceof Estimated;
    }

    /** @param readings the readings it rests on, at least one */
    record Measured(
            Dye dye, Eluent eluent, StationaryPhase phase, RetardationFactor retardationFactor, List<Reason> readings)
            implements Movement {

        public Measured {
            readings = List.copyOf(readings);
        }

        @Override
        public Optional<RetardationFactor> retardation() {
            return Optional.of(retardationFactor);
        }

        public double value() {
            return Numbers.steady(retardationFactor.value());
        }

        /** The chance in per cent that the true Rf is at most this; 50 where the reading lies on the limit itself. */
        public double percentAtMost(double limit) {
            return Numbers.steady(100 * retardationFactor.chanceAtMost(limit));
        }

        /** The chance in per cent that the true Rf is above this. */
        public double percentAbove(double limit) {
            return 100 - percentAtMost(limit);
        }

        public double lowest() {
            return Numbers.steady(retardationFactor.lowest());
        }

        public double highest() {
            return Numbers.steady(retardationFactor.highest());
        }

        @Override
        public Reason reason() {
            if (readings.size() == 1) {
                return readings.get(0);
            }
            return new Reason.Calculated(
                    "Rf of " + dye + " in " + eluent + " is " + retardationFactor.shown() + " from " + readings.size()
                            + " strips",
                    "mean weighted by 1/u^2, widened by the Birge ratio where the strips scatter",
                    "JCGM 100:2008, 4.2; Birge, Phys. Rev. 1932, 40, 207",
                    readings);
        }
    }

    /** @param readings what was written down, at least one */
    record Watched(Dye dye, Eluent eluent, StationaryPhase phase, Behaviour behaviour, List<Reason> readings)
            implements Movement {

        public Watched {
            readings = List.copyOf(readings);
        }

        @Override
        public Optional<RetardationFactor> retardation() {
            return Optional.empty();
        }

        @Override
        public Reason reason() {
            return readings.get(0);
        }
    }

    /**
     * Reckoned for an eluent in which nobody ran a strip.
     *
     * @param retardationFactor with the prediction interval as its uncertainty
     * @param reason the model with its inputs, down to the readings it was fitted to
     */
    record Estimated(Dye dye, Eluent eluent, StationaryPhase phase, RetardationFactor retardationFactor, Reason reason)
            implements Movement {

        @Override
        public Optional<RetardationFactor> retardation() {
            return Optional.of(retardationFactor);
        }

        public double value() {
            return Numbers.steady(retardationFactor.value());
        }

        /** The chance in per cent that the Rf a strip would show is at most this. */
        public double percentAtMost(double limit) {
            return Numbers.steady(100 * retardationFactor.chanceAtMost(limit));
        }

        /** The chance in per cent that the Rf a strip would show is above this. */
        public double percentAbove(double limit) {
            return 100 - percentAtMost(limit);
        }
    }
}
