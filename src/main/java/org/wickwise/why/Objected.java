package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.rulebook.Contradiction;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Objection;
import org.wickwise.rulebook.Objections;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * Puts into words why something was not concluded. Five kinds of answer: something rules it out (a veto), the readings say
 * otherwise, nobody knows, no rule speaks of it (a gap), or the rules contradict each other.
 */
final class Objected {

    private static final String NO_RULE = "no rule of the book says when it would";

    private final Judgement judgement;
    private final Objections objections;

    Objected(Judgement judgement, Objections objections) {
        this.judgement = judgement;
        this.objections = objections;
    }

    /** A line for a statement that nothing concluded: what each rule that could have asks in vain. */
    PlanLine line(String label, String statement, Eluent eluent, List<? extends Conclusion> wanted) {
        return lineOf(label, statement, Optional.of(eluent), silence(eluent), objectionsTo(wanted));
    }

    private String silence(Eluent eluent) {
        if (judgement.tried(eluent)) {
            return "and no strip says so";
        }
        boolean wasRun = judgement.judged().strips().stream()
                .anyMatch(strip -> strip.eluent().equals(eluent));
        return wasRun ? "and no strip in " + eluent + " can be read" : "and nobody ran a strip in " + eluent;
    }

    /**
     * The same where the objections are known.
     *
     * @param silence what is said where a rule asks what nobody knows
     */
    PlanLine lineOf(String label, String statement, Eluent eluent, String silence, List<Objection> all) {
        return lineOf(label, statement, Optional.of(eluent), silence, all);
    }

    /** The same where no eluent is asked about. */
    PlanLine lineOf(String label, String statement, String silence, List<Objection> all) {
        return lineOf(label, statement, Optional.empty(), silence, all);
    }

    private PlanLine lineOf(
            String label, String statement, Optional<Eluent> eluent, String silence, List<Objection> all) {
        return new PlanLine(
                label,
                Section.CHOICE,
                Words.capital(statement) + ": " + inShort(Optional.of(label), all, eluent, silence) + ".",
                new Reason.Chosen(
                        statement, List.of(), all.stream().map(Objected::reason).toList()));
    }

    /**
     * A line for a conclusion that held before; what is in the way of the rules that drew it.
     *
     * @param cause what is told instead of that, where the cause is known
     */
    PlanLine gone(
            String label, Reason.Concluded held, Set<String> rules, Conclusion conclusion, Optional<String> cause) {
        List<Objection> all = objectionsOf(conclusion, rules);
        String because = cause.orElseGet(() ->
                all.isEmpty() ? "" : ": " + inShort(Optional.empty(), all, Optional.empty(), "and nothing says so"));
        List<Reason> grounds = new ArrayList<>(List.of(held));
        all.stream().map(Objected::reason).forEach(grounds::add);
        String text = "No longer: " + held.statement() + because + ".";
        return new PlanLine(label, Section.STRIPS, text, new Reason.Chosen(text, List.of(), grounds));
    }

    /** What rules these rules out, where all of them are ruled out; nothing where anything else is in the way of one. */
    List<Reason> onlyRuledOutBy(Conclusion conclusion, Set<String> rules) {
        List<Objection> all = objectionsOf(conclusion, rules);
        return all.stream().allMatch(Objection::ruledOut)
                ? all.stream()
                        .flatMap(objection -> objection.inTheWay().stream())
                        .toList()
                : List.of();
    }

    private List<Objection> objectionsOf(Conclusion conclusion, Set<String> rules) {
        return objections.to(conclusion).stream()
                .filter(objection -> rules.contains(objection.ruleId()))
                .toList();
    }

    List<Objection> objectionsTo(List<? extends Conclusion> wanted) {
        return wanted.stream()
                .flatMap(conclusion -> objections.to(conclusion).stream())
                .distinct()
                .toList();
    }

    /**
     * What is in the way, the nearest first; what nobody knows is told only where nothing is known to be in the way, and
     * of a chain of rules only the first that is asked and what stops the last.
     *
     * @param label under which the rest is found, where one can ask for it
     */
    private String inShort(Optional<String> label, List<Objection> all, Optional<Eluent> eluent, String silence) {
        if (all.isEmpty()) {
            return NO_RULE;
        }
        List<Objection> known = all.stream()
                .filter(objection -> !isForWantOfKnowledge(objection))
                .sorted(Comparator.comparingDouble(
                        objection -> objection.missing().orElse(Double.MAX_VALUE)))
                .toList();
        List<Objection> told = known.isEmpty() ? all : known;
        int untold = all.size() - told.size();
        boolean isCut = told.stream().anyMatch(objection -> !objection.further().isEmpty());
        return told.stream()
                        .map(objection -> inShort(objection, eluent, silence))
                        .distinct()
                        .collect(Collectors.joining("; or "))
                + (untold == 0
                        ? ""
                        : "; " + untold + (untold == 1 ? " more rule asks" : " more rules ask")
                                + " for what nobody saw or wrote down")
                + label.filter(any -> untold > 0 || isCut)
                        .map(under -> "; more under `" + under + "`")
                        .orElse("");
    }

    private static boolean isForWantOfKnowledge(Objection objection) {
        return objection.isForWantOfKnowledge()
                && objection.further().stream().allMatch(Objected::isForWantOfKnowledge);
    }

    /** Lines for what the rules say against each other about this eluent. */
    List<PlanLine> contradictions(Eluent eluent) {
        List<PlanLine> lines = new ArrayList<>();
        for (Contradiction found : judgement.contradictions()) {
            if (found.eluent().equals(eluent)) {
                lines.add(new PlanLine(
                        "conflict-" + (lines.size() + 1),
                        Section.CHOICE,
                        Words.capital(found.words(judgement)) + ". Nothing is planned on either.",
                        found.reason(judgement)));
            }
        }
        return lines;
    }

    /** "it would take that every dye stays in E, but rust travels in E (Rf 0.31 ± 0.02)". */
    private String inShort(Objection objection, Optional<Eluent> eluent, String silence) {
        Objection last = lastOf(objection);
        String asked = "it would take that " + objection.unmet();
        if (last.inTheWay().isEmpty()) {
            return asked + ", " + silence;
        }
        String found = Words.joined(last.inTheWay().stream()
                .map(Reason::statement)
                .map(statement -> inPlainWords(statement)
                        + eluent.map(where -> reading(statement, where)).orElse(""))
                .toList());
        return asked
                + (last.ruledOut() ? ", which is ruled out: " : ", but ")
                + found
                + last.missing().stream()
                        .mapToObj(missing -> " (short by " + Numbers.plain(missing, 2) + ")")
                        .collect(Collectors.joining());
    }

    /** Where a chain of rules that ask for what another did not conclude ends. */
    private static Objection lastOf(Objection objection) {
        return objection.inTheWay().isEmpty() && !objection.further().isEmpty()
                ? lastOf(objection.further().get(0))
                : objection;
    }

    /** Of dyes that lie together none is called ahead. */
    private String inPlainWords(String statement) {
        return judgement
                .first(
                        Between.class,
                        between -> between.separation() == Separation.TOGETHER
                                && judgement.reason(between).statement().equals(statement))
                .map(between -> between.ahead() + " and " + between.behind() + " lie together in " + between.eluent())
                .orElse(statement);
    }

    /** The Rf behind a statement of what a dye does, where it was measured. */
    private String reading(String statement, Eluent eluent) {
        return judgement.judged().dyes().stream()
                .filter(dye -> judgement
                        .behaviour(dye, eluent)
                        .filter(behaves -> judgement.reason(behaves).statement().equals(statement))
                        .isPresent())
                .flatMap(dye -> judgement.measured(dye, eluent).stream())
                .map(measured -> " (Rf " + measured.retardationFactor().shown() + ")")
                .findFirst()
                .orElse("");
    }

    private static Reason reason(Objection objection) {
        List<String> met = objection.met().stream()
                .map(sentence -> "this holds: " + sentence)
                .toList();
        List<Reason> grounds = new ArrayList<>(objection.inTheWay());
        objection.further().stream().map(Objected::reason).forEach(grounds::add);
        String statement = "rule " + objection.ruleId() + " (" + objection.place() + ") asks that " + objection.unmet()
                + (objection.isForWantOfKnowledge()
                        ? ": nothing says so"
                        : objection.ruledOut() ? ": ruled out" : ": not so");
        return new Reason.Chosen(statement, met, grounds);
    }
}
