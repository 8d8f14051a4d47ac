package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.wickwise.plan.Alternatives;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Subject.OfDye;
import org.wickwise.why.Subject.OfEluent;
import org.wickwise.why.Subject.OfPair;
import org.wickwise.why.Subject.OfStrip;
import org.wickwise.why.Subject.OfTable;

/**
 * Answers a question in plain words: about a line of the plan, an eluent, a dye, two dyes, a strip, a caution, a topic of
 * cautions, a rule or a limit. An answer is a line with a label, by which the same can be asked again, and its reason.
 */
public final class Answers {

    private final Plan plan;
    private final Planner planner;
    private final Alternatives alternatives;
    private final Judgement judgement;
    private final Subjects subjects;
    private final Judge judge;

    /** @param planner that made the plan; it says what a plan with another eluent would be worse at */
    public Answers(Plan plan, Judge judge, Planner planner) {
        this.plan = plan;
        this.planner = planner;
        this.alternatives = planner.alternatives(plan.judgement());
        this.judgement = plan.judgement();
        this.subjects = new Subjects(judgement, judge.data());
        this.judge = judge;
    }

    /**
     * Everything the question may mean, at least one line; a label of the plan goes before anything else.
     *
     * @param file the case file, for the message
     * @throws ProblemsFound with what can be asked here, the nearest first, when nothing is called so
     */
    public List<PlanLine> to(String question, String file) {
        String asked = Subjects.plain(question);
        Optional<PlanLine> line = plan.line(asked.toLowerCase(Locale.ROOT));
        if (line.isPresent()) {
            return List.of(line.get());
        }
        List<PlanLine> found = new ArrayList<>();
        subjects.named(asked).forEach(subject -> found.add(answer(subject)));
        found.addAll(cautions(asked.toLowerCase(Locale.ROOT)));
        if (found.isEmpty()) {
            ruleOrLimit(asked).ifPresent(found::add);
        }
        if (found.isEmpty()) {
            throw subjects.unknown(
                    asked,
                    file,
                    "the label of a line of the plan, a topic of the cautions, a rule or a limit",
                    furtherNames());
        }
        return List.copyOf(found);
    }

    /** What can be asked about, beside the labels of the plan. */
    public List<String> names() {
        return subjects.names();
    }

    private PlanLine answer(Subject subject) {
        if (subject instanceof OfEluent of) {
            return EluentAnswer.of(plan, planner, alternatives, of.eluent());
        }
        if (subject instanceof OfTable of) {
            return EluentAnswer.ofTable(plan, of.eluent());
        }
        if (subject instanceof OfDye of) {
            return DyeAnswer.of(plan, of.dye());
        }
        if (subject instanceof OfPair of) {
            return PairAnswer.of(plan, of.one(), of.other());
        }
        OfStrip of = (OfStrip) subject;
        return StripAnswer.of(plan, of.strip(), of.label());
    }

    /** The cautions of a topic that the plan gives; or a caution that holds and that the plan has no use for. */
    private List<PlanLine> cautions(String asked) {
        List<PlanLine> found = new ArrayList<>();
        List<Reason.Concluded> unused = new ArrayList<>();
        forEachCaution((caution, names) -> {
            Optional<PlanLine> line = plan.line(names.rule());
            if (names.topic().equals(asked) && line.isPresent() && !found.contains(line.get())) {
                found.add(line.get());
            }
            if (names.rule().equals(asked) && line.isEmpty()) {
                unused.add(judgement.reason(caution));
            }
        });
        if (!unused.isEmpty()) {
            String text = "The plan does not give this caution, since it concerns what the plan does not pour: "
                    + String.join(
                            " ", unused.stream().map(Told::becauses).distinct().toList());
            found.add(
                    new PlanLine(asked, Section.SAFETY, text, new Reason.Chosen(text, List.of(), List.copyOf(unused))));
        }
        return found;
    }

    private record Names(String rule, String topic) {}

    private void forEachCaution(BiConsumer<Conclusion, Names> use) {
        judgement
                .all(Conclusion.Caution.class)
                .forEach(caution -> use.accept(caution, new Names(caution.rule(), caution.topic())));
        judgement
                .all(Conclusion.EluentCaution.class)
                .forEach(caution -> use.accept(caution, new Names(caution.rule(), caution.topic())));
        judgement
                .all(Conclusion.DyeCaution.class)
                .forEach(caution -> use.accept(caution, new Names(caution.rule(), caution.topic())));
    }

    /** A rule that is switched off is told of by its line in the plan. */
    private Optional<PlanLine> ruleOrLimit(String asked) {
        String name = asked.toLowerCase(Locale.ROOT);
        return plan.line("off-" + name)
                .or(() -> RuleAnswer.ofRule(plan, judge.objections(judgement), name))
                .or(() -> RuleAnswer.ofLimit(judgement.limits(), asked));
    }

    private List<String> furtherNames() {
        List<String> known = new ArrayList<>();
        plan.lines().forEach(line -> known.add(line.label()));
        forEachCaution((caution, names) -> known.add(names.topic()));
        known.addAll(judge.rulebook().own().ruleNames());
        known.addAll(judgement.limits().keySet());
        return known;
    }
}
