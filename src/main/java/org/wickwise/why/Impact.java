package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.text.Words;

/**
 * What other rules do to one known case.
 *
 * @param title of the case
 * @param before the plan by the rules as they were
 * @param after the plan by the other rules
 * @param vanished cautions of the plan before that the plan after does not give; none where there is no plan any more
 */
public record Impact(String title, Plan before, Plan after, List<PlanLine> vanished) {

    public Impact {
        vanished = List.copyOf(vanished);
    }

    public static Impact of(Plan before, Plan after) {
        Set<String> given =
                after.linesIn(Section.SAFETY).stream().map(PlanLine::label).collect(Collectors.toSet());
        return new Impact(
                before.judged().title(),
                before,
                after,
                after.isRefusal()
                        ? List.of()
                        : before.linesIn(Section.SAFETY).stream()
                                .filter(line -> !given.contains(line.label()))
                                .toList());
    }

    public boolean becomesRefusal() {
        return !before.isRefusal() && after.isRefusal();
    }

    public boolean changesThePlan() {
        return !inShort(before).equals(inShort(after));
    }

    /** The plan in a few words. */
    public static String inShort(Plan plan) {
        return plan.route()
                .map(route -> "pack with " + route.packing().packing() + ", then pour " + route.inShort())
                .orElse("no plan is sound");
    }

    /** One line for each caution that vanishes, with what is in its way by the other rules. */
    public List<PlanLine> vanishedLines(Judge judge, Planner planner) {
        List<PlanLine> lines = new ArrayList<>();
        for (PlanLine caution : vanished) {
            PlanLine why = whyGone(caution, judge, planner);
            lines.add(new PlanLine(
                    "vanished-" + caution.label(),
                    Section.SAFETY,
                    "No longer said: " + caution.text() + " " + why.text(),
                    new Reason.Chosen(caution.label(), List.of(), List.of(caution.reason(), why.reason()))));
        }
        return lines;
    }

    private PlanLine whyGone(PlanLine caution, Judge judge, Planner planner) {
        for (SwitchedOff off : judge.rulebook().own().switchedOff()) {
            if (off.rule().equals(caution.label())) {
                String text = "(Its rule is switched off: " + off.because() + ")";
                return new PlanLine(
                        caution.label(), Section.SAFETY, text, new Reason.Stated(off.because(), off.place()));
            }
        }
        String instead = judge.rulebook().own().instead().get(caution.label());
        if (instead != null) {
            String text = "(The rule " + instead + " stands in its place.)";
            return new PlanLine(caution.label(), Section.SAFETY, text, new Reason.Chosen(text, List.of(), List.of()));
        }
        List<PlanLine> whyNot = new WhyNot(after, judge, planner).to(caution.label(), title);
        String text = whyNot.stream().map(PlanLine::text).limit(1).collect(Collectors.joining(" "));
        return new PlanLine(
                caution.label(),
                Section.SAFETY,
                "(" + Words.capital(text) + ")",
                new Reason.Chosen(
                        text, List.of(), whyNot.stream().map(PlanLine::reason).toList()));
    }

    /** How the plan and what it rests on change; a single line when nothing does. */
    public List<PlanLine> comparison(Judge judge) {
        return Comparison.of(before, after, judge.objections(after.judgement()));
    }
}
