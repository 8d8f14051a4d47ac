package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Words;

/** What of the readings of a class was left out, and in which way the rest was taken. */
final class ReadingNotes {

    private final Lesson lesson;
    private final ClassGroups groups;
    private final List<GroupOutcome> outcomes;

    ReadingNotes(Lesson lesson, ClassGroups groups, List<GroupOutcome> outcomes) {
        this.lesson = lesson;
        this.groups = groups;
        this.outcomes = outcomes;
    }

    List<PlanLine> leftOut() {
        List<PlanLine> lines = new ArrayList<>();
        groups.leftOut().forEach(problem -> lines.add(leftOut("", problem, lines.size())));
        outcomes.forEach(outcome -> outcome.leftOut()
                .forEach(problem -> lines.add(leftOut("Group " + outcome.group() + ": ", problem, lines.size()))));
        return LongLists.cut(lines, "rows or files were left out");
    }

    private static PlanLine leftOut(String group, Problem problem, int before) {
        String text = group + problem.place() + ": " + problem.found() + "; expected " + problem.expected() + ". "
                + Words.capital(problem.wayOut()) + (problem.wayOut().endsWith("?") ? "" : ".");
        return new PlanLine(
                "left-out-" + (before + 1), Section.DOUBTS, text, new Reason.Stated(problem.found(), problem.place()));
    }

    List<PlanLine> told() {
        List<String> all = new ArrayList<>(groups.told());
        outcomes.forEach(outcome -> all.addAll(outcome.told()));
        countOfGroups().ifPresent(all::add);
        Place place = Place.wholeFile(
                lesson.sheet().or(lesson::cases).orElse(lesson.file()).toString());
        List<PlanLine> lines = IntStream.range(0, all.size())
                .mapToObj(i -> new PlanLine(
                        "told-" + (i + 1), Section.BASIS, all.get(i), new Reason.Stated(all.get(i), place)))
                .toList();
        return LongLists.cut(lines, "things are to be told");
    }

    /** The lesson counts its groups too; a wrong name of a group shows here. */
    private Optional<String> countOfGroups() {
        if (outcomes.size() == lesson.groups() || lesson.groups() == 1) {
            return Optional.empty();
        }
        List<String> names = outcomes.stream().map(GroupOutcome::group).toList();
        List<String> missing = IntStream.rangeClosed(1, lesson.groups())
                .mapToObj(String::valueOf)
                .filter(number -> !names.contains(number))
                .limit(20)
                .toList();
        boolean numbered = names.stream().anyMatch(name -> name.matches("\\d+"));
        return Optional.of("The lesson has " + lesson.groups() + " groups, the readings come from " + outcomes.size()
                + (numbered && !missing.isEmpty() ? "; none from " + Words.joined(missing) : "") + ".");
    }
}
