package org.wickwise.bench;

import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.strip.FrontReading;
import org.wickwise.text.Place;

/**
 * How fast the front of one strip climbed, as somebody watched it. Heights are counted from the origin.
 *
 * @param minutes from the moment the strip touched the liquid until its front was marked
 * @param looks at the front on its way, the earliest first
 * @param strip the line of the strip, which a {@link org.wickwise.strip.Strip} knows too
 */
public record ClimbedStrip(OptionalDouble minutes, List<FrontReading> looks, Place strip) {

    public ClimbedStrip {
        looks = List.copyOf(looks);
    }
}
