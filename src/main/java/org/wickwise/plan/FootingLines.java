package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Ladder;
import org.wickwise.substance.StationaryPhase;

/** What the plan rests on, and what the order of its steps follows. */
final class FootingLines {

    private final Judgement judgement;
    private final Optional<Route> route;
    private final Set<Eluent> poured;
    private final List<PlanLine> lines = new ArrayList<>();

    FootingLines(Judgement judgement, Optional<Route> route) {
        this.judgement = judgement;
        this.route = route;
        this.poured = route.map(Route::poured).orElse(Set.of());
    }

    List<PlanLine> lines() {
        footing();
        order();
        return lines;
    }

    private void footing() {
        List<String> remembered = poured.stream()
                .filter(judgement::isRemembered)
                .map(Eluent::name)
                .toList();
        List<String> seen = poured.stream()
                .filter(eluent -> judgement.tried(eluent) && !judgement.triedElsewhereOnly(eluent))
                .map(Eluent::name)
                .filter(name -> !remembered.contains(name))
                .toList();
        List<String> elsewhere = poured.stream()
                .filter(judgement::triedElsewhereOnly)
                .map(Eluent::name)
                .toList();
        List<String> reckoned = poured.stream()
                .filter(eluent -> !judgement.tried(eluent))
                .map(Eluent::name)
                .toList();
        if (poured.isEmpty()) {
            return;
        }
        String text = "Observed on strips: " + (seen.isEmpty() ? "nothing" : String.join("; ", seen))
                + (elsewhere.isEmpty()
                        ? ""
                        : ". Seen on another stationary phase only, so a guess on this one: "
                                + String.join("; ", elsewhere))
                + ". Remembered from earlier strips: "
                + (remembered.isEmpty() ? "nothing" : String.join("; ", remembered)) + ". Estimated, not tried: "
                + (reckoned.isEmpty() ? "nothing" : String.join("; ", reckoned)) + ".";
        List<Reason> grounds = new ArrayList<>();
        for (Eluent eluent : poured) {
            for (Dye dye : judgement.judged().dyes()) {
                judgement.behaviour(dye, eluent).ifPresent(behaves -> grounds.add(judgement.reason(behaves)));
            }
        }
        lines.add(new PlanLine("footing", Section.BASIS, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    /** Says what the order of steps follows, and whether the table's ladder would order them alike. */
    private void order() {
        if (route.isEmpty() || route.get().steps().size() < 2) {
            return;
        }
        StationaryPhase phase = judgement.judged().column().phase();
        List<Step> steps = route.get().steps();
        List<Reason> grounds = new ArrayList<>();
        steps.forEach(step -> step.leaving().forEach(dye -> judgement
                .behaviour(dye, step.eluent())
                .ifPresent(behaves -> grounds.add(judgement.reason(behaves)))));
        int unranked = 0;
        boolean against = false;
        for (int i = 1; i < steps.size(); i++) {
            Eluent before = steps.get(i - 1).eluent();
            Eluent after = steps.get(i).eluent();
            Optional<Reason> alike = phase.ladder().map(Ladder::new).flatMap(ladder -> ladder.weaker(before, after));
            Optional<Reason> other = phase.ladder().map(Ladder::new).flatMap(ladder -> ladder.weaker(after, before));
            alike.ifPresent(grounds::add);
            other.ifPresent(grounds::add);
            against |= other.isPresent();
            unranked += alike.isEmpty() && other.isEmpty() ? 1 : 0;
        }
        String table = phase.ladder()
                .map(scale -> "the table's ladder by " + scale.property())
                .orElse("no table ladder, since none is trusted on " + phase.name());
        String verdict = phase.ladder().isEmpty()
                ? ""
                : against
                        ? "; the ladder orders them otherwise, and the strips decide"
                        : unranked == 0 ? "; the ladder agrees" : "; the ladder does not rank all of them";
        String text = "The order of the steps follows what the strips show; second comes " + table + verdict + ".";
        lines.add(new PlanLine("order", Section.BASIS, text, new Reason.Chosen(text, List.of(), grounds)));
    }
}
