package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Objection;
import org.wickwise.rulebook.RuleExample;
import org.wickwise.rulebook.RuleExample.Situation;

/** Tries the examples of rules: does each rule fire where its example says so, and stay silent where it says so? */
public final class RuleTrial {

    private final Judge judge;
    private final List<PlanLine> failures = new ArrayList<>();

    private RuleTrial(Judge judge) {
        this.judge = judge;
    }

    /** One line for each example that does not hold, with the reason; none where all hold. */
    public static List<PlanLine> of(List<RuleExample> examples, Judge judge) {
        RuleTrial trial = new RuleTrial(judge);
        for (RuleExample example : examples) {
            trial.fires(example);
            trial.staysSilent(example);
        }
        return List.copyOf(trial.failures);
    }

    private void fires(RuleExample example) {
        Judgement judgement = example.fires().judgedBy(judge);
        List<Concluded> concluded = judgement.concludedBy(example.rule());
        if (concluded.stream().anyMatch(reason -> reason.statement().equals(example.concludes()))) {
            return;
        }
        if (!concluded.isEmpty()) {
            String instead = concluded.stream().map(Concluded::statement).collect(Collectors.joining("; "));
            fail(
                    example,
                    "concludes `" + instead + "` where its example (" + example.place() + ") says `"
                            + example.concludes() + "`",
                    concluded);
            return;
        }
        Objected objected = new Objected(judgement, judge.objections(judgement));
        Optional<Objection> objection = judge.objections(judgement).of(example.rule());
        failures.add(
                objection.isPresent()
                        ? objected.lineOf(
                                example.rule(),
                                statement(
                                        example,
                                        "stays silent where its example (" + example.place() + ") says that it fires"),
                                "and nothing says so",
                                List.of(objection.get()))
                        : line(
                                example,
                                "is not in the rule book, and its example (" + example.place() + ") is of no use",
                                List.of()));
    }

    private void staysSilent(RuleExample example) {
        Optional<Situation> silent = example.silent();
        if (silent.isPresent()) {
            List<Concluded> concluded = silent.get().judgedBy(judge).concludedBy(example.rule());
            if (!concluded.isEmpty()) {
                fail(example, "fires where its example (" + example.place() + ") says that it stays silent", concluded);
            }
        }
    }

    private void fail(RuleExample example, String what, List<Concluded> grounds) {
        failures.add(line(example, what, grounds));
    }

    private static PlanLine line(RuleExample example, String what, List<? extends Reason> grounds) {
        String text = statement(example, what) + ".";
        return new PlanLine(
                example.rule(), Section.CHOICE, text, new Reason.Chosen(text, List.of(), List.copyOf(grounds)));
    }

    private static String statement(RuleExample example, String what) {
        return "The rule " + example.rule() + " " + what;
    }
}
