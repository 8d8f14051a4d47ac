package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** What to pack, load and pour, step by step. */
final class RouteLines {

    private final Judgement judgement;
    private final Route route;
    private final KeepLines keepLines;
    private final List<Dye> overlapping;
    private final MayPack packing;
    private final Misgivings misgivings;
    private final StepReasons stepReasons;
    private final VolumeLines volumeLines;
    private final List<PlanLine> lines = new ArrayList<>();

    RouteLines(Judgement judgement, Route route, Keeping keeping, ColumnSizes sizes) {
        this.judgement = judgement;
        this.route = route;
        this.keepLines = new KeepLines(judgement, route, keeping, sizes);
        this.overlapping = keeping.overlapping(judgement);
        this.packing = route.packing();
        this.misgivings = new Misgivings(judgement, route);
        this.stepReasons = new StepReasons(judgement);
        this.volumeLines = new VolumeLines(judgement, route, misgivings, stepReasons);
    }

    List<PlanLine> lines() {
        verdict();
        lines.addAll(new PackLines(judgement, packing).lines());
        for (int i = 0; i < route.steps().size(); i++) {
            step(i);
        }
        volumeLines.apart().ifPresent(lines::add);
        lines.addAll(keepLines.overlap());
        return lines;
    }

    private void verdict() {
        int alone = (int) route.steps().stream()
                .flatMap(step -> step.fractions().stream())
                .filter(fraction -> fraction.size() == 1 && !overlapping.contains(fraction.get(0)))
                .count();
        int all = judgement.judged().dyes().size();
        String share = alone == all
                ? "each of the " + all + " dyes comes off alone"
                : alone + " of " + all + " dyes " + (alone == 1 ? "comes" : "come") + " off alone";
        String text = "Pack with " + packing.packing() + ", then pour " + route.names() + ": " + share + "."
                + misgivings.inShort();
        List<Reason> grounds = new ArrayList<>(List.of(judgement.reason(packing)));
        route.steps().forEach(step -> grounds.add(stepReasons.of(step)));
        grounds.addAll(misgivings.grounds());
        lines.add(new PlanLine("plan", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private void step(int index) {
        Step step = route.steps().get(index);
        String number = Integer.toString(index + 1);
        boolean last = index == route.steps().size() - 1;
        String verb = last && index > 0 ? "Sweep with " : "Pour ";
        String estimate = stepReasons.restsOnEstimate(step) ? " (estimated, not tried on a strip)" : "";
        add(
                "step-" + number,
                Section.STEPS,
                verb + step.eluent() + estimate + ": " + StepReasons.leaving(step) + StepReasons.staying(step) + ".",
                stepReasons.of(step));
        lines.add(volumeLines.volume(step, index));
        collect(step, number);
        lines.addAll(keepLines.lines(index));
        if (last) {
            String end = "Stop when the drops run colourless and no colour is left on the bed.";
            add("switch-" + number, Section.STEPS, end, stepReasons.of(step));
        } else {
            Eluent next = route.steps().get(index + 1).eluent();
            String change = "Change to " + next + " when the drops run colourless and only " + names(step.staying())
                    + " can be seen on the bed.";
            add("switch-" + number, Section.STEPS, change, stepReasons.of(step));
        }
    }

    private void collect(Step step, String number) {
        String each = step.fractions().stream().map(RouteLines::names).collect(Collectors.joining("; then "));
        String text = "Collect " + each + (step.fractions().size() > 1 ? ", each in its own flask" : "")
                + ", from the first drop that shows it to the last.";
        add("collect-" + number, Section.STEPS, text, stepReasons.of(step));
        if (step.fractions().size() > 1 || !step.staying().isEmpty()) {
            String between = step.fractions().size() > 1
                    ? "Between two bands change flasks while the colour is thin, and keep that in-between fraction apart."
                    : "Keep the thin-coloured end of the band apart, as an in-between fraction.";
            add("between-" + number, Section.STEPS, between, stepReasons.of(step));
        }
    }

    private void add(String label, Section section, String text, Reason reason) {
        lines.add(new PlanLine(label, section, text, reason));
    }

    private static String names(List<Dye> dyes) {
        return Words.joined(dyes.stream().map(Dye::name).toList());
    }
}
