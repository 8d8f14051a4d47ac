package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import org.wickwise.bench.Case;
import org.wickwise.plan.Plan;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** Plans for all groups of a class. No plan is kept: each is handed on, in the order of the groups, and forgotten. */
public final class ClassPlans {

    /** So many groups are planned side by side before the first of them is handed on. */
    private static final int SIDE_BY_SIDE = 32;

    private ClassPlans() {}

    /**
     * @param planning makes the plan of a case; asked from several threads
     * @param each takes every group's plan, one after the other
     * @param progress hears how many groups are done
     */
    public static void sideBySide(
            ClassGroups groups, Function<Case, Plan> planning, Consumer<GroupPlan> each, IntConsumer progress) {
        List<String> names = groups.names();
        for (int first = 0; first < names.size(); first += SIDE_BY_SIDE) {
            List<String> some = names.subList(first, Math.min(names.size(), first + SIDE_BY_SIDE));
            some.parallelStream()
                    .map(name -> planOf(groups.of(name), planning))
                    .toList()
                    .forEach(each);
            progress.accept(first + some.size());
        }
    }

    /** The same one group after the other, as {@link BriefPlans} wants it. */
    public static void inTurn(
            ClassGroups groups, Function<Case, Plan> planning, Consumer<GroupPlan> each, IntConsumer progress) {
        int done = 0;
        for (String name : groups.names()) {
            each.accept(planOf(groups.of(name), planning));
            progress.accept(++done);
        }
    }

    /** The plan of one group; whatever is wrong with it is told and stops nobody else. */
    public static GroupPlan planOf(GroupReadings read, Function<Case, Plan> planning) {
        List<Problem> leftOut = new ArrayList<>(read.leftOut());
        Optional<Plan> plan = Optional.empty();
        try {
            plan = read.written().map(planning);
        } catch (ProblemsFound problems) {
            leftOut.addAll(problems.problems());
        } catch (IllegalArgumentException | IllegalStateException fault) {
            leftOut.add(new Problem(
                    read.written().map(Case::settingPlace).orElse(Place.wholeFile("")),
                    "no plan could be made for group " + read.group() + " (" + fault.getMessage() + ")",
                    "readings that can be planned with",
                    "look at its readings; the fault may be the program's, so please report it with them"));
        }
        return new GroupPlan(read.group(), plan, leftOut, read.told());
    }
}
