package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.BlendProposal;
import org.wickwise.strip.BlendWishes;
import org.wickwise.strip.Movement.Measured;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Blends that nobody ran and that should put a dye where a column parts it well; each wants a strip to confirm it. */
final class BlendLines {

    private static final double PER_CENT = 100;

    private final Judgement judgement;
    private final Optional<Route> route;
    private final List<Dye> overlapping;
    private final BlendWishes wishes;

    BlendLines(Judgement judgement, Optional<Route> route, List<Dye> overlapping, BlendWishes wishes) {
        this.judgement = judgement;
        this.route = route;
        this.overlapping = overlapping;
        this.wishes = wishes;
    }

    /** The most promising blend for each dye that needs one, and every blend that the plan pours. */
    List<PlanLine> lines() {
        List<PlanLine> lines = new ArrayList<>();
        for (Dye dye : judgement.judged().dyes()) {
            judgement.blends().stream()
                    .filter(blend -> blend.target().equals(dye))
                    .filter(blend -> isPoured(blend) || needsABlend(dye))
                    .findFirst()
                    .ifPresent(blend -> lines.add(new PlanLine(
                            "blend-" + Words.slug(dye.name()), Section.NEXT, text(blend), blend.reason())));
        }
        return lines;
    }

    private boolean isPoured(BlendProposal blend) {
        return route.filter(found -> found.poured().contains(blend.eluent())).isPresent();
    }

    /** A dye that lies in the wanted window on no strip, unless the plan brings it off alone all the same. */
    private boolean needsABlend(Dye dye) {
        boolean inTheWindow = judgement.movements().stream()
                .filter(Measured.class::isInstance)
                .map(Measured.class::cast)
                .filter(measured -> measured.dye().equals(dye))
                .anyMatch(measured -> measured.value() >= wishes.from() && measured.value() <= wishes.to());
        boolean leavesAlone = route.stream()
                .flatMap(found -> found.steps().stream())
                .flatMap(step -> step.fractions().stream())
                .anyMatch(fraction -> fraction.equals(List.of(dye)));
        return overlapping.contains(dye) || !inTheWindow && !leavesAlone;
    }

    private String text(BlendProposal blend) {
        return "For " + blend.target() + " try " + blend.eluent() + ": reckoned at Rf "
                + blend.retardationFactor().shown() + ", with " + blend.nearest() + " nearest, "
                + Numbers.fixed(blend.gap(), 2) + " ± " + Numbers.fixed(2 * blend.gapUncertainty(), 2)
                + " away; the chance that it lies between " + Numbers.plain(wishes.from(), 2) + " and "
                + Numbers.plain(wishes.to(), 2) + " is " + Numbers.plain(PER_CENT * blend.chance(), 0)
                + " %. An estimate: run a strip in it, write it down, and plan again.";
    }
}
