package org.wickwise.lesson;

import java.util.List;
import java.util.Optional;
import org.wickwise.plan.Plan;
import org.wickwise.text.Problem;

/**
 * One group's plan.
 *
 * @param plan empty where no strip of the group could be read
 * @param leftOut rows or a file of the group that could not be taken
 */
public record GroupPlan(String group, Optional<Plan> plan, List<Problem> leftOut, List<String> told) {

    public GroupPlan {
        leftOut = List.copyOf(leftOut);
        told = List.copyOf(told);
    }
}
