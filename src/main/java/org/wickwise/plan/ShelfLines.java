package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.TableValue;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What the shelf changes: its own values, what it is short of, household bottles that are poured. */
final class ShelfLines {

    private final Judgement judgement;
    private final Shelf shelf;
    private final Supply supply;
    private final List<PlanLine> lines = new ArrayList<>();

    ShelfLines(Judgement judgement) {
        this.judgement = judgement;
        this.shelf = judgement.judged().shelf();
        this.supply = new Supply(judgement);
    }

    /** @param plentiful the best route if every bottle were full */
    List<PlanLine> lines(Optional<Route> route, Optional<Route> plentiful) {
        ownValues();
        route.ifPresent(this::shortOf);
        plentiful.filter(full -> route.filter(full::equals).isEmpty()).ifPresent(this::tooLittle);
        route.ifPresent(this::household);
        return lines;
    }

    private void ownValues() {
        for (TableValue value : shelf.ownValues()) {
            String text = "Your shelf's " + value.property() + " of " + value.solvent() + ", " + value.shown()
                    + ", is used; " + value.note() + ".";
            lines.add(new PlanLine(
                    "own-value-" + (lines.size() + 1),
                    Section.BASIS,
                    text,
                    new Reason.Chosen(text, List.of(), List.of(value.reason()))));
        }
    }

    private void household(Route route) {
        for (Eluent eluent : route.poured()) {
            shelf.bottleOf(eluent).filter(Bottle::isHouseholdBlend).ifPresent(bottle -> {
                String text = eluent + " is what the bottle \"" + bottle.name() + "\" holds.";
                lines.add(new PlanLine(
                        "bottle-" + Words.slug(bottle.name()),
                        Section.BASIS,
                        text,
                        new Reason.Stated(text, bottle.place())));
            });
        }
    }

    /** A route that would be better, and the bottle that is too empty for it. */
    private void tooLittle(Route plentiful) {
        for (int i = 0; i < plentiful.steps().size(); i++) {
            Eluent eluent = plentiful.steps().get(i).eluent();
            if (!supply.isEnoughFor(plentiful, i)) {
                double needed = supply.neededMillilitres(plentiful, i).orElseThrow();
                double held = supply.heldMillilitres(eluent).orElseThrow();
                String text = "With fuller bottles the plan would be " + plentiful.names() + "; it takes about "
                        + Numbers.poured(needed) + " mL of " + eluent + ", and the shelf gives "
                        + Numbers.poured(held) + " mL.";
                lines.add(new PlanLine("stock", Section.CHOICE, text, stockReason(text, eluent)));
                return;
            }
        }
    }

    private void shortOf(Route route) {
        Map<Solvent, Double> needed = supply.neededInAll(route);
        for (Map.Entry<Solvent, Double> ready : supply.readyInAll(route).entrySet()) {
            Eluent neat = Eluent.neat(ready.getKey());
            OptionalDouble held = supply.heldMillilitres(neat);
            if (held.isPresent() && held.getAsDouble() < ready.getValue()) {
                String has = ", packing and loading included, and the shelf has " + Numbers.poured(held.getAsDouble())
                        + " mL: ";
                double poured = needed.get(ready.getKey());
                String text = held.getAsDouble() < poured
                        ? "The whole plan takes about " + Numbers.poured(poured) + " mL of " + neat + has
                                + "use a narrower column or a shorter bed."
                        : "The whole plan asks for " + Numbers.ready(ready.getValue()) + " mL of " + neat
                                + " to be kept ready" + has + "where the bands come late it may not be enough.";
                lines.add(new PlanLine(
                        "short-" + Words.slug(neat.name()), Section.DOUBTS, text, stockReason(text, neat)));
            }
        }
    }

    private Reason stockReason(String text, Eluent eluent) {
        List<Reason> grounds = new ArrayList<>();
        for (Bottle bottle : shelf.bottlesFor(eluent)) {
            bottle.millilitres()
                    .ifPresent(amount -> grounds.add(new Reason.Stated(
                            bottle.name() + " holds " + Numbers.plain(amount, 0) + " mL", bottle.place())));
        }
        grounds.add(VolumeLines.plates(judgement));
        return new Reason.Calculated(
                text,
                "volume of a step = until the last band of the step is off, its tail included; summed over what is poured",
                "V_R = V0 (1 + k) for a dye at the top of the bed, standard plate theory",
                grounds);
    }
}
