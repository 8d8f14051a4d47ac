package org.wickwise.strip;

import java.util.List;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/**
 * One spot of a strip.
 *
 * @param dyes more than one where they did not part; in the order of their names
 * @param place the line where the spot was written down
 */
public record Spot(List<Dye> dyes, Position position, Place place) {

    /** Where the spot is. */
    public sealed interface Position {
        String words();
    }

    /** @param millimetres from the origin to the middle of the spot */
    public record Travelled(double millimetres) implements Position {
        @Override
        public String words() {
            return "travelled " + Numbers.plain(millimetres, 2) + " mm";
        }
    }

    /** An Rf that somebody printed without the ruler readings behind it. */
    public record Quoted(double retardationFactor) implements Position {
        @Override
        public String words() {
            return "is reported at Rf " + Numbers.plain(retardationFactor, 3);
        }
    }

    /**
     * An Rf that earlier strips showed, of which none belongs to this case.
     *
     * @param retardationFactor with the uncertainty of what the next strip will show
     * @param from "12 strips of 2 days"
     * @param reason down to the lines of the notebook
     */
    public record Remembered(RetardationFactor retardationFactor, String from, Reason reason) implements Position {
        @Override
        public String words() {
            return "is remembered at Rf " + retardationFactor.shown() + " from " + from;
        }
    }

    /** What was seen where nobody measured. */
    public record Seen(Behaviour behaviour) implements Position {
        @Override
        public String words() {
            return "was seen: it " + behaviour.word();
        }
    }
}
