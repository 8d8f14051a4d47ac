package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.Alternatives;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Why an eluent is not poured, may not enter the column, does not hold the load, release a dye or sweep. */
final class EluentWhyNot {

    private final Plan plan;
    private final Judgement judgement;
    private final Planner planner;
    private final Alternatives alternatives;
    private final Objected objected;
    private final Eluent eluent;
    private final List<PlanLine> lines = new ArrayList<>();

    private EluentWhyNot(Plan plan, Planner planner, Alternatives alternatives, Objected objected, Eluent eluent) {
        this.plan = plan;
        this.judgement = plan.judgement();
        this.planner = planner;
        this.alternatives = alternatives;
        this.objected = objected;
        this.eluent = eluent;
    }

    /** One line for each thing that the eluent is not; first of all why the plan does not pour it. */
    static List<PlanLine> of(Plan plan, Planner planner, Alternatives alternatives, Objected objected, Eluent eluent) {
        EluentWhyNot answer = new EluentWhyNot(plan, planner, alternatives, objected, eluent);
        answer.poured();
        answer.barred();
        answer.lines.addAll(objected.contradictions(eluent));
        answer.add("hold", eluent + " does not hold every dye", new Conclusion.Holds(eluent));
        for (Dye dye : plan.judged().dyes()) {
            answer.add(
                    "release-" + Words.slug(dye.name()),
                    DyeWhyNot.notReleased(plan, dye, eluent),
                    new Conclusion.Releases(eluent, dye));
        }
        answer.add("sweep", eluent + " does not sweep every dye out", new Conclusion.Sweeps(eluent));
        answer.minded();
        return List.copyOf(answer.lines);
    }

    private void add(String label, String statement, Conclusion wanted) {
        if (!judgement.holds(wanted)) {
            lines.add(objected.line(label, statement, eluent, List.of(wanted)));
        }
    }

    private void poured() {
        if (plan.isRefusal()) {
            return;
        }
        Route best = plan.route().orElseThrow();
        if (best.steps().stream().anyMatch(step -> step.eluent().equals(eluent))) {
            said(
                    "The plan does pour " + eluent + ".",
                    new Reason.Chosen(eluent + " is part of " + best.names(), List.of(), List.of()));
        } else if (best.packing().packing().equals(eluent)) {
            said("The plan packs and loads with " + eluent + ".", judgement.reason(best.packing()));
        } else {
            lost(best, alternatives.pouring(eluent));
        }
    }

    private void lost(Route best, Optional<Route> with) {
        String text = with.map(found -> "With " + eluent + " the best plan would be " + found.names() + ", "
                        + planner.worseBy(best, found) + ".")
                .orElse("No sound order of eluents pours " + eluent + ".");
        said(text, new Reason.Chosen(text, List.of(), List.of()));
    }

    private void said(String text, Reason reason) {
        lines.add(new PlanLine("poured", Section.CHOICE, text, reason));
    }

    /** What the rules warn of in it, and how dyes lie in it that are not parted. */
    private void minded() {
        List<Reason> grounds = new ArrayList<>(Advised.about(judgement, eluent));
        judgement.all(Conclusion.Between.class).stream()
                .filter(between ->
                        between.eluent().equals(eluent) && between.separation() != Conclusion.Separation.PARTED)
                .map(judgement::reason)
                .forEach(grounds::add);
        if (!grounds.isEmpty()) {
            String text = "Whoever pours " + eluent + " all the same minds what stands under `mind`.";
            lines.add(new PlanLine("mind", Section.CHOICE, text, new Reason.Chosen(text, List.of(), grounds)));
        }
    }

    private void barred() {
        Conclusion.Fitness unfit = new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT);
        if (judgement.holds(unfit)) {
            Reason.Concluded reason = judgement.reason(unfit);
            lines.add(new PlanLine(
                    "enter",
                    Section.CHOICE,
                    eluent + " may not enter this column, whatever else speaks for it. " + Told.becauses(reason),
                    reason));
        }
    }
}
