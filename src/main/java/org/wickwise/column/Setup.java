package org.wickwise.column;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/**
 * How the column is set up, as far as the writer says.
 *
 * @param tubeMillimetres length of the tube
 * @param particles size of the adsorbent's grains
 * @param headMillimetres liquid that stands above the bed
 * @param flowMillilitresPerMinute as measured
 * @param plates N as measured on an earlier run
 * @param place where the column is written down
 */
public record Setup(
        OptionalDouble tubeMillimetres,
        Optional<Particles> particles,
        Optional<Drive> drive,
        OptionalDouble headMillimetres,
        OptionalDouble flowMillilitresPerMinute,
        OptionalDouble plates,
        Place place) {

    /** Grains from one size to another, in micrometres. */
    public record Particles(double fromMicrometres, double toMicrometres) {

        public double meanMicrometres() {
            return (fromMicrometres + toMicrometres) / 2;
        }

        /** "63 to 200 um". */
        public String shown() {
            return Numbers.plain(fromMicrometres, 1)
                    + (fromMicrometres == toMicrometres ? "" : " to " + Numbers.plain(toMicrometres, 1)) + " um";
        }
    }

    /** What drives the liquid through the bed. */
    public enum Drive {
        GRAVITY,
        PRESSURE;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        public static Optional<Drive> named(String word) {
            return Arrays.stream(values())
                    .filter(known -> known.word().equals(word))
                    .findFirst();
        }

        public static List<String> words() {
            return Arrays.stream(values()).map(Drive::word).toList();
        }
    }
}
