package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.plan.Alternatives;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.plan.Step;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** What an eluent does, whether it may enter, what it is good for, and what the plan does with it. */
final class EluentAnswer {

    private final Plan plan;
    private final Planner planner;
    private final Alternatives alternatives;
    private final Judgement judgement;
    private final Eluent eluent;
    private final Told told = new Told();

    private EluentAnswer(Plan plan, Planner planner, Alternatives alternatives, Eluent eluent) {
        this.plan = plan;
        this.planner = planner;
        this.alternatives = alternatives;
        this.judgement = plan.judgement();
        this.eluent = eluent;
    }

    static PlanLine of(Plan plan, Planner planner, Alternatives alternatives, Eluent eluent) {
        EluentAnswer answer = new EluentAnswer(plan, planner, alternatives, eluent);
        answer.movement();
        answer.voidStrips();
        answer.fitness();
        answer.roles();
        answer.inThePlan();
        answer.told.advice(
                "When it is poured, mind what stands under this answer.", Advised.about(plan.judgement(), eluent));
        return answer.told.line(eluent.name(), Section.FITNESS);
    }

    /** An eluent that can be named and that this case says nothing of. */
    static PlanLine ofTable(Plan plan, Eluent eluent) {
        String text = "Nothing was judged about " + eluent + ": no strip was run in it, and the shelf of this case"
                + " does not give it. Run a strip in it, write it down, and ask again.";
        return new PlanLine(
                eluent.name(),
                Section.FITNESS,
                text,
                new Reason.Stated(
                        "the shelf of this case does not give " + eluent,
                        plan.judged().shelf().place()));
    }

    private void movement() {
        List<String> words = new ArrayList<>();
        List<Reason> grounds = new ArrayList<>();
        List<Dye> unknown = new ArrayList<>();
        for (Dye dye : plan.judged().dyes()) {
            judgement
                    .behaviour(dye, eluent)
                    .ifPresentOrElse(
                            behaves -> {
                                words.add(dye + " " + Seen.words(behaves, judgement));
                                grounds.add(judgement.reason(behaves));
                            },
                            () -> unknown.add(dye));
        }
        if (words.isEmpty()) {
            told.say("What the dyes do in " + eluent + " is not known: no strip that can be read was run in it.");
            return;
        }
        told.say("In " + eluent + ": " + String.join("; ", words) + ".", grounds);
        if (!unknown.isEmpty()) {
            told.say("Of " + Words.joined(unknown.stream().map(Dye::name).toList()) + " nothing is known in it.");
        }
    }

    private void voidStrips() {
        for (Strip strip : plan.judged().strips()) {
            Conclusion.StripVerdict verdict = new Conclusion.StripVerdict(strip, Reading.VOID);
            if (strip.eluent().equals(eluent) && judgement.holds(verdict)) {
                Reason.Concluded reason = judgement.reason(verdict);
                told.because(Words.capital(strip.toString()) + " is void: " + Told.becauses(reason), reason);
            }
        }
    }

    private void fitness() {
        for (Fit fit : List.of(Fit.UNFIT, Fit.LAST_ONLY, Fit.FIT)) {
            Conclusion.Fitness fitness = new Conclusion.Fitness(eluent, fit);
            if (judgement.holds(fitness)) {
                Reason.Concluded reason = judgement.reason(fitness);
                String verdict =
                        switch (fit) {
                            case UNFIT -> "It may not enter this column. ";
                            case LAST_ONLY -> "It may enter as the last step only. ";
                            case FIT -> "It may enter this column. ";
                        };
                told.because((verdict + Told.becauses(reason)).strip(), reason);
                return;
            }
        }
    }

    private void roles() {
        Conclusion holds = new Conclusion.Holds(eluent);
        Conclusion sweeps = new Conclusion.Sweeps(eluent);
        List<Conclusion.Releases> releases = judgement.all(Conclusion.Releases.class).stream()
                .filter(one -> one.eluent().equals(eluent))
                .toList();
        if (judgement.holds(holds)) {
            told.because("It holds every dye.", judgement.reason(holds));
        }
        if (!releases.isEmpty()) {
            List<String> dyes = releases.stream().map(one -> one.dye().name()).toList();
            told.say(
                    "It releases " + Words.joined(dyes) + ".",
                    releases.stream().map(judgement::reason).toList());
        }
        if (judgement.holds(sweeps)) {
            told.because("It sweeps every dye out.", judgement.reason(sweeps));
        }
        boolean allKnown = plan.judged().dyes().stream()
                .allMatch(dye -> judgement.behaviour(dye, eluent).isPresent());
        if (allKnown && releases.isEmpty() && !judgement.holds(holds) && !judgement.holds(sweeps)) {
            told.say("It neither holds every dye, nor lets one go while the others stay, nor sweeps every dye out.");
        }
    }

    private void inThePlan() {
        if (plan.isRefusal()) {
            told.say("There is no plan that could pour it.");
            return;
        }
        boolean packs = plan.packing().filter(eluent::equals).isPresent();
        if (packs) {
            plan.line("pack").ifPresent(line -> told.say("The plan packs and loads with it.", List.of(line.reason())));
        }
        List<Step> steps = plan.route().orElseThrow().steps();
        List<Integer> poured = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).eluent().equals(eluent)) {
                poured.add(i + 1);
            }
        }
        poured.forEach(number -> step(number, steps.get(number - 1)));
        if (poured.isEmpty() && !packs) {
            notPoured();
        }
    }

    private void step(int number, Step step) {
        List<Reason> grounds = Stream.of("step-", "choice-")
                .map(label -> plan.line(label + number))
                .flatMap(Optional::stream)
                .map(PlanLine::reason)
                .toList();
        String choice =
                plan.line("choice-" + number).map(line -> " " + line.text()).orElse("");
        told.say(
                "The plan pours it as step " + number + " and brings "
                        + Words.joined(step.leaving().stream().map(Dye::name).toList()) + " off with it." + choice,
                grounds);
    }

    /** What the plan pours instead for the dyes that would come off in it. */
    private void notPoured() {
        List<String> instead = new ArrayList<>();
        List<Reason> grounds = new ArrayList<>();
        List<Step> steps = plan.route().orElseThrow().steps();
        for (int i = 0; i < steps.size(); i++) {
            List<String> alsoHere = steps.get(i).leaving().stream()
                    .filter(dye -> judgement
                            .behaviour(dye, eluent)
                            .filter(Conclusion.Behaves::leaves)
                            .isPresent())
                    .map(Dye::name)
                    .toList();
            if (!alsoHere.isEmpty()) {
                instead.add(Words.joined(alsoHere) + " with " + steps.get(i).eluent());
                plan.line("step-" + (i + 1)).map(PlanLine::reason).ifPresent(grounds::add);
            }
        }
        told.say(
                "The plan does not pour it"
                        + (instead.isEmpty() ? "." : "; it brings off " + String.join("; ", instead) + "."),
                grounds);
        lostTo(plan.route().orElseThrow());
    }

    /** The best plan that does pour it, and what that is worse at. */
    private void lostTo(Route best) {
        Optional<Route> with = alternatives.pouring(eluent);
        if (with.isEmpty()) {
            told.say("No sound order of eluents pours it.");
            return;
        }
        String comparison = planner.worseBy(best, with.get());
        String sentence = "With it the best plan would be " + with.get().names() + ", " + comparison + ".";
        List<Reason> grounds = with.get().steps().stream()
                .flatMap(step ->
                        step.leaving().stream().flatMap(dye -> judgement.behaviour(dye, step.eluent()).stream()))
                .<Reason>map(judgement::reason)
                .toList();
        told.because(sentence, new Reason.Chosen(sentence, List.of(comparison), grounds));
    }
}
