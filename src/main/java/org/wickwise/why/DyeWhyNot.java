package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Step;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.LeavesBefore;
import org.wickwise.rulebook.Conclusion.Releases;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Why a dye does not leave alone, and why eluents that somebody tried do not release it. */
final class DyeWhyNot {

    private final Plan plan;
    private final Judgement judgement;
    private final Objected objected;
    private final Dye dye;
    private final List<PlanLine> lines = new ArrayList<>();

    private DyeWhyNot(Plan plan, Objected objected, Dye dye) {
        this.plan = plan;
        this.judgement = plan.judgement();
        this.objected = objected;
        this.dye = dye;
    }

    static List<PlanLine> of(Plan plan, Objected objected, Dye dye) {
        DyeWhyNot answer = new DyeWhyNot(plan, objected, dye);
        answer.alone();
        answer.released();
        answer.advised();
        return List.copyOf(answer.lines);
    }

    /** What the case states of the dye, and the strip that would help. */
    private void advised() {
        List<Reason> grounds = new ArrayList<>(List.of(dye.stated()));
        grounds.addAll(Advised.about(judgement, dye));
        String text = Words.capital(dye.stated().statement()) + ".";
        lines.add(new PlanLine("dye", Section.CHOICE, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private void alone() {
        plan.route().stream()
                .flatMap(route -> route.steps().stream())
                .filter(step -> step.leaving().contains(dye))
                .forEach(this::alone);
    }

    private void alone(Step step) {
        List<Dye> company = step.fractions().stream()
                .filter(fraction -> fraction.contains(dye))
                .flatMap(List::stream)
                .filter(other -> !other.equals(dye))
                .toList();
        if (company.isEmpty()) {
            List<Reason> grounds = judgement.behaviour(dye, step.eluent()).stream()
                    .<Reason>map(judgement::reason)
                    .toList();
            String text = "By the plan " + dye + " does leave in a fraction of its own, with " + step.eluent() + ".";
            lines.add(new PlanLine("alone", Section.CHOICE, text, new Reason.Chosen(text, List.of(), grounds)));
        }
        for (Dye other : company) {
            lines.add(objected.line(
                    "alone-" + Words.slug(other.name()),
                    "in " + step.eluent() + " " + dye + " leaves together with " + other,
                    step.eluent(),
                    Stream.of(new LeavesBefore(step.eluent(), dye, other), new LeavesBefore(step.eluent(), other, dye))
                            .toList()));
        }
    }

    /** Explains what the rules call to release; a dye may leave alone all the same when the others are gone. */
    static String notReleased(Plan plan, Dye dye, Eluent eluent) {
        boolean isLeft = plan.route().stream()
                .flatMap(route -> route.steps().stream())
                .filter(step -> step.eluent().equals(eluent))
                .anyMatch(step -> step.fractions().contains(List.of(dye)));
        return eluent + " does not release " + dye + ", that is, bring it off before another dye"
                + (isLeft ? " (in the plan it comes off alone here, for the others have left before it)" : "");
    }

    private void released() {
        for (Eluent eluent : judgement.eluents()) {
            Releases wanted = new Releases(eluent, dye);
            if (judgement.tried(eluent) && !judgement.holds(wanted)) {
                lines.add(objected.line(
                        "release-" + Words.slug(eluent.name()),
                        notReleased(plan, dye, eluent),
                        eluent,
                        List.of(wanted)));
            }
        }
    }
}
