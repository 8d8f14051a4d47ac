package org.wickwise.why;

import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** Finds the line of an answer that is asked about. */
public final class Questions {

    private Questions() {}

    /** @throws ProblemsFound with the labels that can be asked about, the nearest first, when there is no such line */
    public static PlanLine lineAsked(List<PlanLine> lines, String label, String file) {
        return lines.stream()
                .filter(line -> line.label().equals(label))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> labels = lines.stream().map(PlanLine::label).toList();
                    return new ProblemsFound(List.of(new Problem(
                            Place.wholeFile(file),
                            "this answer has no line `" + label + "`",
                            "the label of a line, as the answer prints it in front of each",
                            NearMiss.suggestion(label, labels))));
                });
    }
}
