package org.wickwise.why;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.plan.Alternatives;
import org.wickwise.plan.AskedOrder;
import org.wickwise.plan.AskedOrder.Broken;
import org.wickwise.plan.AskedOrder.Sound;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Conclusion.Fitness;
import org.wickwise.rulebook.Conclusion.LeavesBefore;
import org.wickwise.rulebook.Conclusion.MayNotFollow;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Why the plan does not pour certain eluents in a certain order: where that goes wrong, or what it is worse at. */
final class OrderWhyNot {

    private final Plan plan;
    private final Judgement judgement;
    private final Planner planner;
    private final Alternatives alternatives;
    private final Objected objected;
    private final List<Eluent> order;

    private OrderWhyNot(Plan plan, Planner planner, Alternatives alternatives, Objected objected, List<Eluent> order) {
        this.plan = plan;
        this.judgement = plan.judgement();
        this.planner = planner;
        this.alternatives = alternatives;
        this.objected = objected;
        this.order = order;
    }

    static List<PlanLine> of(
            Plan plan, Planner planner, Alternatives alternatives, Objected objected, List<Eluent> order) {
        OrderWhyNot answer = new OrderWhyNot(plan, planner, alternatives, objected, order);
        AskedOrder asked = alternatives.inOrder(order);
        return List.of(asked instanceof Sound sound ? answer.sound(sound.route()) : answer.broken((Broken) asked));
    }

    private PlanLine sound(Route asked) {
        boolean isThePlan =
                plan.route().filter(best -> best.names().equals(asked.names())).isPresent();
        String text = isThePlan
                ? "The plan does pour " + asked.names() + "."
                : plan.route()
                        .map(best -> "It would bring every dye off, but the plan is " + best.names()
                                + ": chosen over this order, " + planner.worseBy(best, asked) + ".")
                        .orElse("It would bring every dye off.");
        List<Reason> grounds = asked.steps().stream()
                .flatMap(step ->
                        step.leaving().stream().flatMap(dye -> judgement.behaviour(dye, step.eluent()).stream()))
                .<Reason>map(judgement::reason)
                .toList();
        return line(text, grounds);
    }

    private PlanLine broken(Broken broken) {
        Eluent eluent = broken.eluent();
        String step = "It goes wrong at step " + broken.step() + ", " + eluent + ": ";
        String dyes = Words.joined(broken.dyes().stream().map(Dye::name).toList());
        return switch (broken.trouble()) {
            case MAY_NOT_ENTER -> mayNotEnter(step, eluent);
            case DOES_NOT_MIX -> {
                MayNotFollow conclusion = new MayNotFollow(order.get(broken.step() - 2), eluent);
                yield line(
                        step + judgement.reason(conclusion).statement() + ".", List.of(judgement.reason(conclusion)));
            }
            case LAST_ONLY -> {
                Reason.Concluded last = judgement.reason(new Fitness(eluent, Fit.LAST_ONLY));
                yield line(
                        step + "it may enter as the last step only, and " + dyes + " would still be on the column. "
                                + Told.becauses(last),
                        List.of(last));
            }
            case SMEARS -> smears(step, eluent, broken.dyes());
            case ALREADY_POURED -> line(step + "it was poured just before.", List.of());
            case UNKNOWN -> line(step + "what " + dyes + " would do in it is not known; run a strip in it.", List.of());
            case MOVES_NOTHING ->
                line(
                        step
                                + (broken.dyes().isEmpty()
                                        ? "every dye has left before it."
                                        : "it moves nothing that is still on the column (" + dyes + ")."),
                        behaviours(broken.dyes(), eluent));
            case NOT_PACKED ->
                line(step + "nothing holds the load that the column could be packed with before it.", List.of());
            case NOT_ENOUGH -> line(step + "the bottles do not give as much as it takes.", List.of());
            case PARTS_NOTHING ->
                line(
                        step + "all the dyes would come off in it together, and nothing would be parted.",
                        behaviours(broken.dyes(), eluent));
            case LEAVES_SOME_ON ->
                line(
                        "After the last step " + dyes + " would still be on the column.",
                        behaviours(broken.dyes(), eluent));
        };
    }

    private PlanLine mayNotEnter(String step, Eluent eluent) {
        Fitness unfit = new Fitness(eluent, Fit.UNFIT);
        if (judgement.holds(unfit)) {
            Reason.Concluded reason = judgement.reason(unfit);
            return line(step + "it may not enter this column. " + Told.becauses(reason), List.of(reason));
        }
        return line(step + "what the dyes would do in it is not known; run a strip in it.", List.of());
    }

    /** The first of the two dyes leaves and the second stays, and nothing says that they are parted. */
    private PlanLine smears(String step, Eluent eluent, List<Dye> dyes) {
        Dye leaving = dyes.get(0);
        Dye staying = dyes.get(1);
        Conclusion wanted = new LeavesBefore(eluent, leaving, staying);
        String statement = step + leaving + " leaves in it and would be smeared into " + staying;
        return objected.line("order", statement, eluent, List.of(wanted));
    }

    private List<Reason> behaviours(List<Dye> dyes, Eluent eluent) {
        return dyes.stream()
                .flatMap(dye -> judgement.behaviour(dye, eluent).stream())
                .<Reason>map(judgement::reason)
                .toList();
    }

    private PlanLine line(String text, List<Reason> grounds) {
        String asked = order.stream().map(Eluent::name).collect(Collectors.joining(", then "));
        List<Reason> all = Stream.concat(
                        grounds.stream(), plan.line("plan").stream().map(PlanLine::reason))
                .toList();
        return new PlanLine("order", Section.CHOICE, text, new Reason.Chosen(asked, List.of(text), all));
    }
}
