package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.bench.ClimbedStrip;
import org.wickwise.column.ColumnSizes;
import org.wickwise.lesson.Task.Unit;
import org.wickwise.plan.Flow;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.text.Words;

/** A lesson by the clock: what fits, what goes on side by side, and what has to wait for another day. */
public final class TimetableLines {

    private static final String REFERENCE =
            "critical path method: everything begins as soon as what it waits for is done";

    /** How the work may be spread over days, the fewest days first. */
    private static final List<List<Set<Unit>>> SPREADS = List.of(
            List.of(EnumSet.allOf(Unit.class)),
            List.of(EnumSet.of(Unit.STRIPS, Unit.PACKING), EnumSet.of(Unit.COLUMN)),
            List.of(EnumSet.of(Unit.STRIPS), EnumSet.of(Unit.PACKING, Unit.COLUMN)),
            List.of(EnumSet.of(Unit.STRIPS), EnumSet.of(Unit.PACKING), EnumSet.of(Unit.COLUMN)));

    private final LaidOutLesson laidOut;
    private final FrontLines fronts;
    private final GroupTasks tasks;
    private final OptionalDouble bell;
    private final ReasonedLines lines = new ReasonedLines();

    private TimetableLines(LaidOutLesson laidOut, List<ClimbedStrip> climbed, ColumnSizes sizes) {
        this.laidOut = laidOut;
        this.fronts = new FrontLines(laidOut, new FrontSpeeds(laidOut, climbed));
        this.tasks = new GroupTasks(laidOut, new Flow(laidOut.plan().judgement(), sizes), fronts);
        this.bell = laidOut.lesson().minutes();
    }

    /** @param climbed what the strips of the lesson say of their fronts on the way */
    public static List<PlanLine> of(LaidOutLesson laidOut, List<ClimbedStrip> climbed, ColumnSizes sizes) {
        TimetableLines made = new TimetableLines(laidOut, climbed, sizes);
        List<Schedule> days = made.days();
        made.inShort(days);
        made.missing();
        for (int day = 0; day < days.size(); day++) {
            made.day(day + 1, days);
        }
        made.lines.addAll(made.fronts.lines());
        return made.lines.all();
    }

    /** The spread of the fewest days of which each fits; where none does, the one whose longest day is shortest. */
    private List<Schedule> days() {
        if (bell.isEmpty()) {
            return spread(SPREADS.get(0));
        }
        List<Schedule> best = spread(SPREADS.get(0));
        for (List<Set<Unit>> way : SPREADS) {
            List<Schedule> days = spread(way);
            if (longest(days) <= bell.getAsDouble()) {
                return days;
            }
            best = longest(days) < longest(best) ? days : best;
        }
        return best;
    }

    private List<Schedule> spread(List<Set<Unit>> way) {
        List<Schedule> days = new ArrayList<>();
        for (Set<Unit> units : way) {
            List<Task> day = new ArrayList<>(tasks.tasks().stream()
                    .filter(task -> units.contains(task.unit()))
                    .toList());
            if (!day.isEmpty()) {
                day.add(tasks.clearing(day));
                days.add(Schedule.of(day));
            }
        }
        return days;
    }

    private static double longest(List<Schedule> days) {
        return days.stream().mapToDouble(Schedule::minutes).max().orElse(0);
    }

    private void inShort(List<Schedule> days) {
        double together = spread(SPREADS.get(0)).get(0).minutes();
        String takes =
                "All of it in one go takes a group with two pairs of hands " + (isAllKnown() ? "about " : "at least ")
                        + Minutes.shown(together)
                        + (isAllKnown() ? "" : ", and more for what is not known (below)");
        String text = takes + (bell.isEmpty() ? "; how long the lesson is nobody says." : against(days, together));
        List<Reason> grounds = new ArrayList<>();
        bell.ifPresent(minutes ->
                grounds.add(new Reason.Stated("the lesson takes " + Minutes.shown(minutes), laidOut.place())));
        tasks.tasks().forEach(task -> grounds.add(task.reason()));
        grounds.add(laidOut.limit(GroupTasks.CLEARING).reason());
        boolean fits = bell.isEmpty() || longest(days) <= bell.getAsDouble();
        lines.reckoned(
                fits ? Section.VERDICT : Section.DOUBTS,
                "timetable",
                text,
                "the longest way through the tasks: "
                        + shownPath(spread(SPREADS.get(0)).get(0)),
                REFERENCE,
                grounds);
    }

    /** Whether the time of every front and of the column can be told. */
    private boolean isAllKnown() {
        return fronts.unknown().isEmpty()
                && fronts.longestMinutes().isPresent()
                && tasks.isFlowKnown()
                && !laidOut.plan().isRefusal();
    }

    private String against(List<Schedule> days, double together) {
        double minutes = bell.getAsDouble();
        String lesson = "the lesson of " + Minutes.shown(minutes);
        if (together <= minutes) {
            return (isAllKnown() ? "; it fits in " : "; so much fits in ") + lesson + ", with "
                    + Minutes.shown(minutes - together) + " to spare.";
        }
        String spread = days.size() == 1
                ? ""
                : " Spread it over " + days.size() + " days: "
                        + days.stream()
                                .map(day -> unitsOf(day) + " (" + Minutes.shown(day.minutes()) + ")")
                                .collect(Collectors.joining(", then "))
                        + ".";
        List<String> tooLong = days.stream()
                .filter(day -> day.minutes() > minutes)
                .map(TimetableLines::unitsOf)
                .toList();
        return "; it does not fit in " + lesson + "." + spread
                + (tooLong.isEmpty()
                        ? ""
                        : " Even so " + Words.joined(tooLong)
                                + " take longer than a lesson: take a shorter bed, coarser grains or light pressure, share"
                                + " out the strips, or show that part.");
    }

    private static String unitsOf(Schedule day) {
        return Words.joined(day.slots().stream()
                .map(slot -> slot.task().unit())
                .distinct()
                .sorted()
                .map(Unit::words)
                .toList());
    }

    private void missing() {
        if (bell.isEmpty()) {
            lines.said(Section.NEXT, "no-minutes", "Write `lesson minutes` to see what fits into a lesson.", List.of());
        }
        if (laidOut.plan().isRefusal()) {
            lines.addAll(OnlyStrips.lines(laidOut));
        }
        if (!tasks.isFlowKnown()) {
            lines.said(
                    Section.NEXT,
                    "no-flow",
                    "How fast the column runs is not known, so its steps are not in the timetable; write `bore mm`, `bed mm`,"
                            + " `particle um`, `run by` and `head mm` of the column, or `flow mL per min` as measured.",
                    List.of(laidOut.plan().judged().column().reason()));
        }
        if (!fronts.unknown().isEmpty()) {
            lines.said(
                    Section.NEXT,
                    "no-front",
                    "The timetable knows nothing of the fronts in "
                            + Words.joined(fronts.unknown().stream()
                                    .map(eluent -> eluent.name())
                                    .toList())
                            + "; they may take longer than the others.",
                    List.of());
        }
    }

    private void day(int number, List<Schedule> days) {
        Schedule day = days.get(number - 1);
        String prefix = days.size() == 1 ? "" : "day-" + number + "-";
        String dayWords = days.size() == 1 ? "" : "Day " + number + ", ";
        for (Schedule.Slot slot : day.slots()) {
            boolean late = bell.isPresent() && slot.ends() > bell.getAsDouble();
            String text = Words.capital(dayWords + "minute " + Minutes.number(slot.begins()) + " to "
                    + Minutes.number(slot.ends()) + ": " + slot.task().words()
                    + (late ? " (ends after the bell)" : "") + beside(slot, day) + waiting(slot, days, number) + ".");
            lines.reckoned(
                    late ? Section.DOUBTS : Section.STEPS,
                    prefix + slot.task().label(),
                    text,
                    slot.task().after().isEmpty()
                            ? "begins at once"
                            : "begins when done: "
                                    + String.join(", ", slot.task().after()),
                    REFERENCE,
                    List.of(slot.task().reason()));
        }
        lines.reckoned(
                Section.CHOICE,
                prefix + "longest",
                Words.capital(dayWords + "what decides how long it takes: ") + shownPath(day) + ".",
                "from the last end back, always to what was waited for",
                REFERENCE,
                day.critical().stream().map(Task::reason).toList());
    }

    private static String shownPath(Schedule day) {
        return day.critical().stream()
                .map(task -> task.words() + " " + Minutes.number(task.minutes()))
                .collect(Collectors.joining("; "));
    }

    /** What of another kind goes on at the same time, told of the one that begins later. */
    private static String beside(Schedule.Slot slot, Schedule day) {
        List<String> others = day.slots().stream()
                .filter(other -> other.task().unit() != slot.task().unit())
                .filter(other -> other.begins() < slot.ends() && other.ends() > slot.begins())
                .filter(other -> day.slots().indexOf(other) < day.slots().indexOf(slot))
                .map(other -> other.task().words())
                .toList();
        return others.isEmpty() ? "" : ", while you " + Words.joined(others);
    }

    /** A packed bed that is not loaded on its day has to be kept wet. */
    private static String waiting(Schedule.Slot slot, List<Schedule> days, int number) {
        return slot.task().unit() == Unit.PACKING && !slot.task().label().equals("clear") && number < days.size()
                ? "; close the tap with liquid above the bed, stopper it, label it and keep it in the hood"
                : "";
    }
}
