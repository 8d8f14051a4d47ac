package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Step;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Basis;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** What a dye does in each eluent, and where it leaves in the plan. */
final class DyeAnswer {

    private final Plan plan;
    private final Judgement judgement;
    private final Dye dye;
    private final Told told = new Told();

    private DyeAnswer(Plan plan, Dye dye) {
        this.plan = plan;
        this.judgement = plan.judgement();
        this.dye = dye;
    }

    static PlanLine of(Plan plan, Dye dye) {
        DyeAnswer answer = new DyeAnswer(plan, dye);
        answer.told.because(Words.capital(dye.stated().statement()) + ".", dye.stated());
        answer.seen();
        answer.estimated();
        answer.leaving();
        answer.told.advice(
                "What to mind and to try with it stands under this answer.", Advised.about(plan.judgement(), dye));
        return answer.told.line(dye.name(), Section.STRIPS);
    }

    private void seen() {
        List<Behaves> seen = behaviours(Basis.OBSERVED);
        if (seen.isEmpty()) {
            told.say("No strip that can be read shows what it does.");
            return;
        }
        told.say(
                "It "
                        + seen.stream()
                                .map(behaves -> Seen.words(behaves, judgement) + " in " + behaves.eluent())
                                .collect(Collectors.joining("; "))
                        + ".",
                reasons(seen));
    }

    /** Estimates in one sentence, by what the dye would do. */
    private void estimated() {
        List<Behaves> estimated = behaviours(Basis.ESTIMATED);
        List<String> words = new ArrayList<>();
        for (Behaviour behaviour : Behaviour.values()) {
            List<String> eluents = estimated.stream()
                    .filter(behaves -> behaves.behaviour() == behaviour)
                    .map(Behaves::eluent)
                    .map(Eluent::name)
                    .toList();
            if (!eluents.isEmpty()) {
                words.add(behaviour.word() + " in " + Words.joined(eluents));
            }
        }
        if (!words.isEmpty()) {
            told.say("By estimate, not seen on a strip, it " + String.join("; ", words) + ".", reasons(estimated));
        }
    }

    private void leaving() {
        if (plan.isRefusal()) {
            boolean comesOff = judgement.all(Conclusion.Behaves.class).stream()
                    .anyMatch(behaves -> behaves.dye().equals(dye)
                            && behaves.leaves()
                            && !judgement.holds(new Conclusion.Fitness(behaves.eluent(), Conclusion.Fit.UNFIT)));
            List<Reason> refusal =
                    plan.line("refusal").stream().map(PlanLine::reason).toList();
            told.say(
                    comesOff
                            ? "There is no plan in which it could leave."
                            : "It comes off in no eluent that may enter this column, so there is no plan.",
                    refusal);
            return;
        }
        List<Step> steps = plan.route().orElseThrow().steps();
        for (int i = 0; i < steps.size(); i++) {
            for (List<Dye> fraction : steps.get(i).fractions()) {
                if (fraction.contains(dye)) {
                    leaving(i + 1, steps.get(i), fraction);
                }
            }
        }
    }

    private void leaving(int number, Step step, List<Dye> fraction) {
        List<String> others = fraction.stream()
                .filter(other -> !other.equals(dye))
                .map(Dye::name)
                .toList();
        String company = others.isEmpty() ? "alone" : "together with " + Words.joined(others);
        List<Reason> grounds =
                plan.line("step-" + number).map(PlanLine::reason).stream().toList();
        told.say("In the plan it leaves in step " + number + ", with " + step.eluent() + ", " + company + ".", grounds);
    }

    private List<Behaves> behaviours(Basis basis) {
        return judgement.all(Behaves.class).stream()
                .filter(behaves -> behaves.dye().equals(dye) && behaves.basis() == basis)
                .sorted(Comparator.comparing(Behaves::behaviour).thenComparing(Behaves::eluent))
                .toList();
    }

    private List<Reason> reasons(List<Behaves> several) {
        return several.stream().<Reason>map(judgement::reason).toList();
    }
}
