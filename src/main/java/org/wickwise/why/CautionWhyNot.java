package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Caution;
import org.wickwise.rulebook.Conclusion.DyeCaution;
import org.wickwise.rulebook.Conclusion.EluentCaution;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Objection;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** Why the plan does not give a caution: what the rule that would give it asks in vain. */
final class CautionWhyNot {

    private final Plan plan;
    private final Judgement judgement;
    private final Objected objected;

    private CautionWhyNot(Plan plan, Objected objected) {
        this.plan = plan;
        this.judgement = plan.judgement();
        this.objected = objected;
    }

    /**
     * @param rule the name of a rule that may give a caution
     * @param topics of all cautions
     */
    static List<PlanLine> of(Plan plan, Objected objected, String rule, List<String> topics) {
        return new CautionWhyNot(plan, objected).of(rule, topics);
    }

    private List<PlanLine> of(String rule, List<String> topics) {
        if (plan.line(rule).isPresent()) {
            PlanLine given = plan.line(rule).orElseThrow();
            return List.of(
                    new PlanLine(rule, Section.CHOICE, "The plan does give it: " + given.text(), given.reason()));
        }
        List<PlanLine> lines = new ArrayList<>();
        for (Eluent eluent : concerned()) {
            List<Conclusion> wanted = new ArrayList<>();
            for (String topic : topics) {
                wanted.add(new EluentCaution(rule, topic, eluent));
                for (Dye dye : judgement.judged().dyes()) {
                    wanted.add(new DyeCaution(rule, topic, dye, eluent));
                }
            }
            add(lines, rule, " about " + eluent, eluent, wanted);
        }
        List<Conclusion> general = topics.stream()
                .<Conclusion>map(topic -> new Caution(rule, topic))
                .toList();
        concerned().stream().findFirst().ifPresent(any -> add(lines, rule, "", any, general));
        return lines;
    }

    /** One line where the rule asks something in vain; a caution that holds is told to concern nothing that is poured. */
    private void add(List<PlanLine> lines, String rule, String about, Eluent eluent, List<Conclusion> wanted) {
        String label = lines.isEmpty() ? rule : rule + "-" + (lines.size() + 1);
        wanted.stream().filter(judgement::holds).findFirst().ifPresent(holds -> {
            String text = "The caution holds" + about + ", but concerns nothing that the plan pours.";
            lines.add(new PlanLine(
                    label, Section.CHOICE, text, new Reason.Chosen(text, List.of(), List.of(judgement.reason(holds)))));
        });
        List<Objection> objections = objected.objectionsTo(wanted);
        if (!objections.isEmpty() && wanted.stream().noneMatch(judgement::holds)) {
            lines.add(objected.lineOf(
                    label, "No such caution is due" + about, eluent, "and nothing here says so", objections));
        }
    }

    /** What the plan packs with and pours; everything that was tried, where there is no plan. */
    private List<Eluent> concerned() {
        TreeSet<Eluent> eluents = new TreeSet<>();
        plan.packing().ifPresent(eluents::add);
        plan.route().ifPresent(route -> route.steps().forEach(step -> eluents.add(step.eluent())));
        if (eluents.isEmpty()) {
            judgement.eluents().stream().filter(judgement::tried).forEach(eluents::add);
        }
        return List.copyOf(eluents);
    }
}
