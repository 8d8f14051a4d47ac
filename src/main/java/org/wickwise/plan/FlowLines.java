package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Column;
import org.wickwise.column.Setup.Drive;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** How fast the eluents of a route run, how long it takes, and where the flow falls. */
final class FlowLines {

    private final Judgement judgement;
    private final Route route;
    private final Column column;
    private final Flow flow;
    private final List<PlanLine> lines = new ArrayList<>();

    FlowLines(Judgement judgement, Route route, Flow flow) {
        this.judgement = judgement;
        this.route = route;
        this.column = judgement.judged().column();
        this.flow = flow;
    }

    List<PlanLine> lines() {
        flow();
        pressure();
        slowing();
        return lines;
    }

    private void flow() {
        List<Eluent> poured =
                route.steps().stream().map(Step::eluent).distinct().toList();
        Optional<Eluent> slowest = poured.stream()
                .filter(eluent -> flow.millilitresPerMinute(eluent).isPresent())
                .min(Comparator.comparingDouble(
                        eluent -> flow.millilitresPerMinute(eluent).orElseThrow()));
        boolean allKnown = poured.stream()
                .allMatch(eluent -> flow.minutesPerColumnVolume(eluent).isPresent());
        if (slowest.isEmpty() || !allKnown) {
            return;
        }
        Eluent first = poured.get(0);
        String text = "Expect about " + perMinute(first) + " of " + first
                + (slowest.get().equals(first) ? "" : ", and " + perMinute(slowest.get()) + " of " + slowest.get())
                + basis(poured);
        lines.add(new PlanLine("flow", Section.PACKING, text, flow.reason(slowest.get(), text)));
        time();
    }

    private String perMinute(Eluent eluent) {
        return Numbers.poured(flow.millilitresPerMinute(eluent).orElseThrow()) + " mL a minute";
    }

    private String basis(List<Eluent> poured) {
        if (column.setup().flowMillilitresPerMinute().isPresent()) {
            return ", as you measured; every eluent is taken to run as fast.";
        }
        List<String> thick =
                poured.stream().filter(flow::isThickened).map(Eluent::name).toList();
        return " by " + column.setup().drive().map(Drive::word).orElseThrow() + " (estimated"
                + (thick.isEmpty()
                        ? ")."
                        : "; " + Words.joined(thick) + " counted as "
                                + Numbers.plain(judgement.limit("thickening of a blend"), 1)
                                + " times as thick as the thickest part).");
    }

    private void time() {
        double minutes = 0;
        List<String> terms = new ArrayList<>();
        for (int i = 0; i < route.steps().size(); i++) {
            Eluent eluent = route.steps().get(i).eluent();
            double step = route.elution().poured().get(i)
                    * flow.minutesPerColumnVolume(eluent).orElseThrow();
            minutes += step;
            terms.add(eluent + " " + Numbers.plain(step, 0));
        }
        String text =
                "The steps take about " + Numbers.poured(minutes) + " minutes in all; packing and loading come on top.";
        lines.add(new PlanLine(
                "time",
                Section.PACKING,
                text,
                new Reason.Calculated(
                        text,
                        "time = volume / flow, in minutes: " + String.join(" + ", terms),
                        "by definition",
                        route.steps().stream()
                                .map(Step::eluent)
                                .distinct()
                                .map(eluent -> flow.reason(eluent, "flow of " + eluent + ": " + perMinute(eluent)))
                                .toList())));
    }

    private void pressure() {
        if (column.setup().drive().filter(Drive.PRESSURE::equals).isPresent()) {
            Limit most = judgement.limits().get("gentle pressure limit");
            String text =
                    "Glass that was not made for pressure must not be pressurised, nor a chipped or scratched tube; work"
                            + " behind a shield and stay below " + most.shown() + ".";
            lines.add(new PlanLine(
                    "pressure",
                    Section.SAFETY,
                    text,
                    new Reason.Chosen(
                            text,
                            List.of(),
                            List.of(
                                    new Reason.Stated(
                                            "the column is run by pressure",
                                            column.setup().place()),
                                    most.reason()))));
        }
    }

    private String underPressure() {
        return column.setup().drive().filter(Drive.PRESSURE::equals).isPresent() ? " under the same pressure" : "";
    }

    /** Steps at which the flow falls markedly. */
    private void slowing() {
        Limit most = judgement.limits().get("change of flow to mention");
        for (int i = 1; i < route.steps().size(); i++) {
            Eluent before = route.steps().get(i - 1).eluent();
            Eluent after = route.steps().get(i).eluent();
            OptionalDouble slower = flow.timesSlower(before, after);
            if (slower.isPresent() && Numbers.steady(slower.getAsDouble()) >= most.value()) {
                List<Reason> grounds = new ArrayList<>(List.of(most.reason()));
                grounds.addAll(flow.reasonsOfViscosity(before));
                grounds.addAll(flow.reasonsOfViscosity(after));
                String text = "From " + before + " to " + after + " the flow falls to about 1/"
                        + Numbers.plain(slower.getAsDouble(), 1) + underPressure()
                        + ": do not push it, and do not take it for a blocked bed.";
                lines.add(new PlanLine(
                        "slower-" + (i + 1),
                        Section.STEPS,
                        text,
                        new Reason.Calculated(
                                text,
                                "ratio of the viscosities of the thickest parts, a blend that is thicker than each of its parts"
                                        + " multiplied by the thickening of a blend",
                                "Darcy's law",
                                grounds)));
            }
        }
    }
}
