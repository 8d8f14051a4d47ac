package org.wickwise.lesson;

import java.util.List;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.text.Problem;

/**
 * What one group of a class handed in.
 *
 * @param written its case; empty where no strip of it could be read
 * @param leftOut what is wrong with rows or a file that were left out
 * @param told what was taken in a way that somebody may want to know
 */
public record GroupReadings(String group, Optional<Case> written, List<Problem> leftOut, List<String> told) {

    public GroupReadings {
        leftOut = List.copyOf(leftOut);
        told = List.copyOf(told);
    }
}
