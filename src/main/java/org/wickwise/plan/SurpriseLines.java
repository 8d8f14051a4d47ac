package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.notebook.Recall;
import org.wickwise.notebook.Recollection;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Movement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** How the strips of a case compare with what was remembered before they were run. */
public final class SurpriseLines {

    private static final String FORMULA = "|seen - remembered| / sqrt(u_seen^2 + u_remembered^2)";

    private final Judgement judgement;
    private final Recall recall;
    private final List<PlanLine> surprises = new ArrayList<>();
    private final List<Reason> compared = new ArrayList<>();
    private double squaresOfErrors;
    private double squaresOfExpected;

    private SurpriseLines(Judgement judgement, Recall recall) {
        this.judgement = judgement;
        this.recall = recall;
    }

    /**
     * @param judgement of the strips of the case alone
     * @param recall what is remembered of its dyes
     */
    public static List<PlanLine> of(Judgement judgement, Recall recall) {
        SurpriseLines lines = new SurpriseLines(judgement, recall);
        for (Eluent eluent : recall.eluents()) {
            for (Dye dye : judgement.judged().dyes()) {
                Optional<Recollection> known = recall.of(dye, eluent);
                Optional<Movement.Measured> seen = judgement.measured(dye, eluent);
                if (known.isPresent() && seen.isPresent()) {
                    lines.compare(known.get(), seen.get());
                }
            }
        }
        return lines.all();
    }

    private void compare(Recollection known, Movement.Measured seen) {
        Limit limit = judgement.limits().get("surprise limit");
        double error =
                seen.retardationFactor().value() - known.retardationFactor().value();
        double distance = Numbers.steady(seen.retardationFactor().timesUncertaintyFrom(known.retardationFactor()));
        squaresOfErrors += error * error;
        squaresOfExpected += Math.pow(seen.retardationFactor().uncertainty(), 2)
                + Math.pow(known.retardationFactor().uncertainty(), 2);
        compared.add(seen.reason());
        compared.add(known.reason());
        if (distance > limit.value()) {
            String text =
                    known.dye() + " lies at Rf " + seen.retardationFactor().shown() + " in " + known.eluent()
                            + ", where " + known.from() + " have it at "
                            + known.retardationFactor().shown() + ": "
                            + Numbers.fixed(distance, 1)
                            + " standard uncertainties off. Another bottle, a damp layer or another dye can do that: run it again.";
            surprises.add(new PlanLine(
                    "surprise-" + (surprises.size() + 1),
                    Section.DOUBTS,
                    "Surprise: " + text,
                    new Reason.Calculated(
                            text,
                            FORMULA,
                            "JCGM 100:2008, equation 10",
                            List.of(seen.reason(), known.reason(), limit.reason()))));
        }
    }

    private List<PlanLine> all() {
        int count = compared.size() / 2;
        if (count == 0) {
            return List.of();
        }
        String text = "Against what was remembered: " + (count - surprises.size()) + " of " + count
                + " readings lie where they were expected; they are off by "
                + Numbers.fixed(Math.sqrt(squaresOfErrors / count), 3) + " in Rf, and "
                + Numbers.fixed(Math.sqrt(squaresOfExpected / count), 3) + " was expected.";
        List<PlanLine> all = new ArrayList<>(surprises);
        all.add(new PlanLine(
                "against-memory",
                Section.BASIS,
                text,
                new Reason.Calculated(
                        text,
                        "root mean square of the differences; " + FORMULA,
                        "JCGM 100:2008, equation 10",
                        compared)));
        return all;
    }
}
