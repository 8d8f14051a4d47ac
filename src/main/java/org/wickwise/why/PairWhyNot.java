package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.rulebook.Conclusion.LeavesBefore;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Why two dyes are not parted, eluent by eluent, and where they are, why neither leaves a column before the other. */
final class PairWhyNot {

    private final Judgement judgement;
    private final Objected objected;
    private final Dye one;
    private final Dye other;

    private PairWhyNot(Judgement judgement, Objected objected, Dye one, Dye other) {
        this.judgement = judgement;
        this.objected = objected;
        this.one = one;
        this.other = other;
    }

    static List<PlanLine> of(Plan plan, Objected objected, Dye one, Dye other) {
        PairWhyNot answer = new PairWhyNot(plan.judgement(), objected, one, other);
        List<PlanLine> lines = new ArrayList<>();
        for (Eluent eluent : plan.judgement().eluents()) {
            if (plan.judgement().tried(eluent)) {
                lines.add(answer.in(eluent));
            }
        }
        if (lines.isEmpty()) {
            String text = "No strip that can be read shows " + one + " and " + other + ".";
            lines.add(new PlanLine(
                    "parted",
                    Section.CHOICE,
                    text,
                    new Reason.Chosen(text, List.of(), List.of(one.stated(), other.stated()))));
        }
        answer.together(lines);
        return lines;
    }

    /** How they lie where they are not parted, and what the rules advise about the two. */
    private void together(List<PlanLine> lines) {
        List<Reason> grounds = new ArrayList<>(Advised.about(judgement, one, other));
        judgement.all(Between.class).stream()
                .filter(between -> between.separation() != Separation.PARTED
                        && isOurs(between, between.eluent(), between.separation()))
                .map(judgement::reason)
                .forEach(grounds::add);
        if (!grounds.isEmpty()) {
            String text = "How " + one + " and " + other + " lie where they are not parted stands under `pair`.";
            lines.add(new PlanLine("pair", Section.CHOICE, text, new Reason.Chosen(text, List.of(), grounds)));
        }
    }

    private PlanLine in(Eluent eluent) {
        String label = Words.slug(eluent.name());
        Optional<Between> parted =
                judgement.first(Between.class, between -> isOurs(between, eluent, Separation.PARTED));
        if (parted.isEmpty()) {
            return objected.line(
                    "parted-" + label,
                    one + " and " + other + " are not parted in " + eluent,
                    eluent,
                    eitherWayRound(eluent));
        }
        Between found = parted.get();
        LeavesBefore leaves = new LeavesBefore(eluent, found.ahead(), found.behind());
        if (judgement.holds(leaves)) {
            Reason.Concluded reason = judgement.reason(leaves);
            return new PlanLine(
                    "parted-" + label,
                    Section.CHOICE,
                    "They are parted in " + eluent + ": " + reason.statement() + ".",
                    reason);
        }
        return objected.line(
                "leave-" + label,
                "in " + eluent + " they are parted on a strip, yet on a column " + found.ahead()
                        + " does not leave cleanly before " + found.behind(),
                eluent,
                List.of(leaves));
    }

    private boolean isOurs(Between between, Eluent eluent, Separation separation) {
        return between.eluent().equals(eluent)
                && between.separation() == separation
                && List.of(one, other).containsAll(List.of(between.ahead(), between.behind()));
    }

    /** The one that is ahead on the strips before the other; both ways round where nobody measured. */
    private List<Conclusion> eitherWayRound(Eluent eluent) {
        Optional<RetardationFactor> first = judgement.retardation(one, eluent);
        Optional<RetardationFactor> second = judgement.retardation(other, eluent);
        Between oneAhead = new Between(eluent, one, other, Separation.PARTED);
        Between otherAhead = new Between(eluent, other, one, Separation.PARTED);
        if (first.isEmpty() || second.isEmpty()) {
            return List.of(oneAhead, otherAhead);
        }
        return List.of(first.get().value() >= second.get().value() ? oneAhead : otherAhead);
    }
}
