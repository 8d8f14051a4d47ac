package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.lesson.Task.Unit;
import org.wickwise.plan.Flow;
import org.wickwise.plan.Route;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** Everything a group does, with how long it takes. What cannot be told is left out and named. */
final class GroupTasks {

    static final String CLEARING = "clearing up";
    private static final String DEFINITION = "by definition";

    private final LaidOutLesson laidOut;
    private final Flow flow;
    private final FrontLines fronts;
    private final List<Task> tasks = new ArrayList<>();
    private boolean flowKnown = true;

    GroupTasks(LaidOutLesson laidOut, Flow flow, FrontLines fronts) {
        this.laidOut = laidOut;
        this.flow = flow;
        this.fronts = fronts;
        strips();
        laidOut.plan().route().ifPresent(this::column);
    }

    /** Each after those it waits for, without the clearing up. */
    List<Task> tasks() {
        return List.copyOf(tasks);
    }

    /** Whether every eluent's flow is known; true where there is no column. */
    boolean isFlowKnown() {
        return flowKnown;
    }

    /** Clearing up after other tasks, which each day ends with. */
    Task clearing(List<Task> day) {
        Unit unit = day.get(day.size() - 1).unit();
        return byLimit(
                "clear",
                unit,
                "clear up",
                CLEARING,
                1,
                day.stream().map(Task::label).toList());
    }

    private void strips() {
        int each = laidOut.stripsOfAGroup();
        String strips = laidOut.stripsInWords();
        tasks.add(byLimit("spot", Unit.STRIPS, "mark and spot " + strips, "spotting of a strip", each, List.of()));
        fronts.longestMinutes()
                .ifPresent(minutes -> tasks.add(new Task(
                        "run",
                        Unit.STRIPS,
                        "let the strips run, each in its jar",
                        minutes,
                        List.of("spot"),
                        new Reason.Chosen(
                                "the slowest front takes " + Minutes.shown(minutes), List.of(), fronts.reasons()))));
        tasks.add(byLimit(
                "dry", Unit.STRIPS, "let the strips dry in the hood", "drying of strips", 1, List.of("spot", "run")));
        tasks.add(byLimit(
                "measure",
                Unit.STRIPS,
                "mark the spots and measure " + strips,
                "measuring of a strip",
                each,
                List.of("dry")));
        tasks.add(byLimit(
                "decide",
                Unit.STRIPS,
                "write the readings down and ask for the plan",
                "deciding",
                1,
                List.of("measure")));
    }

    private Task byLimit(String label, Unit unit, String words, String limit, int times, List<String> after) {
        Limit each = laidOut.limit(limit);
        double minutes = times * each.value();
        List<Reason> grounds = new ArrayList<>(List.of(each.reason()));
        if (times > 1) {
            grounds.add(laidOut.stripsStated());
        }
        return new Task(
                label,
                unit,
                words,
                minutes,
                after,
                new Reason.Calculated(
                        words + ": " + Minutes.shown(minutes),
                        times == 1 ? "as the limit says" : times + " x " + Numbers.plain(each.value(), 1),
                        DEFINITION,
                        grounds));
    }

    /** Packing goes on while the strips run; the steps only begin when the strips have decided them. */
    private void column(Route route) {
        Eluent packing = route.packing().packing();
        OptionalDouble perVolume = flow.minutesPerColumnVolume(packing);
        flowKnown = perVolume.isPresent()
                && route.steps().stream().allMatch(step -> flow.minutesPerColumnVolume(step.eluent())
                        .isPresent());
        if (!flowKnown) {
            tasks.add(byLimit(
                    "pack", Unit.PACKING, "pack the column in " + packing, "packing by hand", 1, List.of("spot")));
            return;
        }
        Limit volumes = laidOut.limit("packing and loading");
        Limit byHand = laidOut.limit("packing by hand");
        double minutes = byHand.value() + volumes.value() * perVolume.getAsDouble();
        tasks.add(new Task(
                "pack",
                Unit.PACKING,
                "pack the column in " + packing + " and run it in",
                minutes,
                List.of("spot"),
                new Reason.Calculated(
                        "packing takes " + Minutes.shown(minutes),
                        "packing by hand + column volumes x minutes of a column volume: "
                                + Numbers.plain(byHand.value(), 1) + " + " + Numbers.plain(volumes.value(), 1) + " x "
                                + Numbers.plain(perVolume.getAsDouble(), 1),
                        DEFINITION,
                        List.of(byHand.reason(), volumes.reason(), ofFlow(packing)))));
        tasks.add(byLimit("load", Unit.COLUMN, "load the mixture", "loading by hand", 1, List.of("pack", "decide")));
        steps(route);
    }

    private void steps(Route route) {
        String before = "load";
        for (int i = 0; i < route.steps().size(); i++) {
            Eluent eluent = route.steps().get(i).eluent();
            double volumes = route.elution().poured().get(i);
            String label = "step-" + (i + 1);
            tasks.add(poured(label, "pour " + eluent, eluent, volumes, List.of(), before));
            before = label;
        }
        Limit flushing = laidOut.limit("flushing of the bed");
        Eluent last = route.steps().get(route.steps().size() - 1).eluent();
        if (flushing.value() > 0) {
            tasks.add(
                    poured("flush", "flush with " + last, last, flushing.value(), List.of(flushing.reason()), before));
        }
    }

    private Task poured(String label, String words, Eluent eluent, double volumes, List<Reason> also, String before) {
        double perVolume = flow.minutesPerColumnVolume(eluent).orElseThrow();
        double minutes = volumes * perVolume;
        List<Reason> grounds = new ArrayList<>(also);
        laidOut.plan().line(label.replace("step", "volume")).ifPresent(line -> grounds.add(line.reason()));
        grounds.add(ofFlow(eluent));
        return new Task(
                label,
                Unit.COLUMN,
                words,
                minutes,
                List.of(before),
                new Reason.Calculated(
                        words + ": " + Minutes.shown(minutes),
                        "column volumes x minutes of a column volume: " + Numbers.plain(volumes, 2) + " x "
                                + Numbers.plain(perVolume, 1),
                        DEFINITION,
                        grounds));
    }

    private Reason ofFlow(Eluent eluent) {
        return flow.reason(
                eluent,
                "flow of " + eluent + ": "
                        + Numbers.poured(flow.millilitresPerMinute(eluent).orElseThrow()) + " mL a minute");
    }
}
