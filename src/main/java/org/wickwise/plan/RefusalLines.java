package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Why no plan is sound. */
public final class RefusalLines {

    private static final String POINTER = " What to try next stands below.";

    private final Judgement judgement;
    private final List<PlanLine> lines = new ArrayList<>();

    RefusalLines(Judgement judgement) {
        this.judgement = judgement;
    }

    /** The text of a refusal for a place where nothing stands below it; any other text as it is. */
    public static String alone(String text) {
        return text.endsWith(POINTER) ? text.substring(0, text.length() - POINTER.length()) : text;
    }

    List<PlanLine> lines() {
        List<Reason> obstacles = new ArrayList<>();
        for (Dye dye : judgement.judged().dyes()) {
            if (enteringReleasers(dye).isEmpty()) {
                obstacles.add(stuck(dye));
            }
        }
        if (obstacles.isEmpty()) {
            obstacles.add(nothingParts());
        }
        String text = "No plan is sound with these strips and this shelf: "
                + Words.joined(obstacles.stream().map(Reason::statement).toList())
                + "." + POINTER;
        lines.add(new PlanLine("refusal", Section.VERDICT, text, new Reason.Chosen(text, List.of(), obstacles)));
        for (Reason obstacle : obstacles.size() == 1 ? List.<Reason>of() : obstacles) {
            lines.add(new PlanLine(
                    "obstacle-" + lines.size(), Section.VERDICT, Words.capital(obstacle.statement()) + ".", obstacle));
        }
        return lines;
    }

    private List<Eluent> enteringReleasers(Dye dye) {
        return judgement.all(Conclusion.Behaves.class).stream()
                .filter(behaves -> behaves.dye().equals(dye) && behaves.leaves())
                .map(Conclusion.Behaves::eluent)
                .filter(eluent -> !judgement.holds(new Conclusion.Fitness(eluent, Conclusion.Fit.UNFIT)))
                .toList();
    }

    private Reason stuck(Dye dye) {
        List<Reason> grounds = new ArrayList<>(
                List.of(dye.stated(), judgement.judged().column().reason()));
        for (Conclusion.Behaves behaves : judgement.all(Conclusion.Behaves.class)) {
            if (behaves.dye().equals(dye)) {
                grounds.add(judgement.reason(behaves));
                if (behaves.leaves()) {
                    grounds.add(judgement.reason(new Conclusion.Fitness(behaves.eluent(), Conclusion.Fit.UNFIT)));
                }
            }
        }
        judgement.all(Conclusion.RunNextDye.class).stream()
                .filter(next -> next.dye().equals(dye))
                .map(judgement::reason)
                .forEach(grounds::add);
        boolean isKnown = judgement.all(Conclusion.Behaves.class).stream()
                .anyMatch(behaves -> behaves.dye().equals(dye)
                        && !judgement.holds(new Conclusion.Fitness(behaves.eluent(), Conclusion.Fit.UNFIT)));
        String statement = isKnown
                ? dye + " comes off in no eluent that may enter this column"
                : "no strip that can be read shows what " + dye + " does in an eluent that may enter this column";
        return new Reason.Chosen(statement, List.of(), grounds);
    }

    private Reason nothingParts() {
        List<Reason> grounds =
                new ArrayList<>(List.of(judgement.judged().column().reason()));
        judgement.all(Conclusion.Between.class).stream()
                .filter(between -> between.separation() != Conclusion.Separation.PARTED)
                .map(judgement::reason)
                .forEach(grounds::add);
        boolean someParted = !judgement.all(Conclusion.LeavesBefore.class).isEmpty();
        String statement = someParted
                ? "no order of the eluents that may enter brings every dye off without smearing one into another"
                : "no eluent that may enter parts any two dyes";
        return new Reason.Chosen(statement, List.of(), grounds);
    }
}
