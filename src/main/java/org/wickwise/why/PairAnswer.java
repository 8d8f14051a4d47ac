package org.wickwise.why;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.rulebook.Conclusion.Crossing;
import org.wickwise.rulebook.Conclusion.LeavesBefore;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** In which eluents two dyes are parted, touching or together, where they change places, and which leaves first. */
final class PairAnswer {

    private final Judgement judgement;
    private final Set<Dye> pair;
    private final Told told = new Told();

    private PairAnswer(Plan plan, Dye one, Dye other) {
        this.judgement = plan.judgement();
        this.pair = Set.of(one, other);
    }

    static PlanLine of(Plan plan, Dye one, Dye other) {
        String label = one + " and " + other;
        PairAnswer answer = new PairAnswer(plan, one, other);
        List<Between> all = answer.between();
        for (Separation separation : Separation.values()) {
            answer.separation(separation, all);
        }
        if (all.isEmpty()) {
            answer.told.because(
                    "No strip that can be read shows how far " + label + " lie apart.",
                    new Reason.Chosen(
                            "no strip shows how far " + label + " lie apart",
                            List.of(),
                            List.of(one.stated(), other.stated())));
        }
        answer.crossing();
        answer.leavingFirst();
        answer.told.advice(
                "What to mind and to try with the two stands under this answer.",
                Advised.about(plan.judgement(), one, other));
        return answer.told.line(label, Section.STRIPS);
    }

    /** One of the two that a shared spot gives counts. */
    private List<Between> between() {
        List<Between> found = new ArrayList<>();
        Set<Eluent> shared = new HashSet<>();
        for (Between between : judgement.all(Between.class)) {
            boolean isOurs = pair.equals(Set.of(between.ahead(), between.behind()));
            boolean isSecondOfTwo = between.separation() == Separation.TOGETHER
                    && judgement.holds(
                            new Between(between.eluent(), between.behind(), between.ahead(), Separation.TOGETHER))
                    && !shared.add(between.eluent());
            if (isOurs && !isSecondOfTwo) {
                found.add(between);
            }
        }
        return found;
    }

    private void separation(Separation separation, List<Between> all) {
        List<Between> ours = all.stream()
                .filter(between -> between.separation() == separation)
                .toList();
        if (ours.isEmpty()) {
            return;
        }
        List<String> places = ours.stream()
                .map(between -> between.eluent()
                        + (separation == Separation.TOGETHER
                                ? ""
                                : " (" + between.ahead() + " ahead"
                                        + (judgement.tried(between.eluent()) ? "" : ", estimated") + ")"))
                .toList();
        told.say(
                Words.capital(separation.word()) + " in " + Words.joined(places) + ".",
                ours.stream().map(judgement::reason).toList());
    }

    private void crossing() {
        List<Crossing> ours = judgement.all(Crossing.class).stream()
                .filter(crossing -> pair.equals(Set.of(crossing.one(), crossing.other())))
                .filter(crossing ->
                        crossing.here().compareTo(crossing.there()) < 0 || !judgement.holds(mirrored(crossing)))
                .toList();
        if (!ours.isEmpty()) {
            List<String> places = ours.stream()
                    .map(crossing -> "between " + crossing.here() + " and " + crossing.there())
                    .toList();
            told.say(
                    "They change places " + String.join("; ", places) + ".",
                    ours.stream().map(judgement::reason).toList());
        }
    }

    private static Crossing mirrored(Crossing crossing) {
        return new Crossing(crossing.other(), crossing.one(), crossing.there(), crossing.here());
    }

    private void leavingFirst() {
        List<LeavesBefore> ours = judgement.all(LeavesBefore.class).stream()
                .filter(leaves -> pair.equals(Set.of(leaves.first(), leaves.second())))
                .toList();
        for (Dye first : pair.stream().sorted().toList()) {
            List<LeavesBefore> here =
                    ours.stream().filter(leaves -> leaves.first().equals(first)).toList();
            if (!here.isEmpty()) {
                List<String> eluents = here.stream()
                        .map(LeavesBefore::eluent)
                        .map(Eluent::name)
                        .toList();
                told.say(
                        "On a column " + first + " leaves first, cleanly, in " + Words.joined(eluents) + ".",
                        here.stream().map(judgement::reason).toList());
            }
        }
    }
}
