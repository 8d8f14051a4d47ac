package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tasks, each begun as soon as what it waits for is finished (critical path method).
 *
 * @param slots in the order of beginning
 */
record Schedule(List<Slot> slots) {

    private static final double TOLERANCE = 1e-9;

    /** When a task is done, in minutes from the beginning. */
    record Slot(Task task, double begins, double ends) {}

    /**
     * @param tasks each after those it waits for; what it waits for and is not among them counts as finished
     */
    static Schedule of(List<Task> tasks) {
        Map<String, Slot> slots = new LinkedHashMap<>();
        for (Task task : tasks) {
            double begins = task.after().stream()
                    .filter(slots::containsKey)
                    .mapToDouble(label -> slots.get(label).ends())
                    .max()
                    .orElse(0);
            slots.put(task.label(), new Slot(task, begins, begins + task.minutes()));
        }
        return new Schedule(slots.values().stream()
                .sorted(Comparator.comparingDouble(Slot::begins))
                .toList());
    }

    double minutes() {
        return slots.stream().mapToDouble(Slot::ends).max().orElse(0);
    }

    /** The tasks that decide how long it takes, the first first: any of them made shorter makes the whole shorter. */
    List<Task> critical() {
        List<Task> path = new ArrayList<>();
        Optional<Slot> last = slots.stream().max(Comparator.comparingDouble(Slot::ends));
        while (last.isPresent()) {
            Slot slot = last.get();
            path.add(0, slot.task());
            last = slots.stream()
                    .filter(before -> slot.task().after().contains(before.task().label()))
                    .filter(before -> Math.abs(before.ends() - slot.begins()) < TOLERANCE)
                    .findFirst();
        }
        return List.copyOf(path);
    }
}
