package org.wickwise.notebook;

import java.util.List;
import org.wickwise.reason.Reason;

/**
 * How far strips usually scatter, before any were run.
 *
 * @param withinAClass standard deviation of the Rf of strips that one class runs on one day
 * @param betweenClasses standard deviation of the RM that classes find on different days
 * @param reasons where both figures stand
 */
public record Scatter(double withinAClass, double betweenClasses, List<Reason> reasons) {

    public Scatter {
        reasons = List.copyOf(reasons);
    }
}
