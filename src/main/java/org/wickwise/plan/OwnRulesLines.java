package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.rulebook.OwnRules;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.rulebook.RulePage;
import org.wickwise.text.Words;

/** Which rules are the instructor's own, and which shipped ones do not count. */
final class OwnRulesLines {

    private final OwnRules own;
    private final Judgement judgement;
    private final List<PlanLine> lines = new ArrayList<>();

    OwnRulesLines(OwnRules own, Judgement judgement) {
        this.own = own;
        this.judgement = judgement;
    }

    /** No line where there are no rules of one's own. */
    List<PlanLine> lines() {
        if (!own.ruleNames().isEmpty()) {
            Set<String> speaking = judgement.rulesThatConcluded();
            String instead = own.instead().entrySet().stream()
                    .map(entry -> "; " + entry.getValue() + " stands in the place of " + entry.getKey())
                    .collect(Collectors.joining());
            add(
                    "own-rules",
                    "Rules of your own (" + own.folder() + "): " + Words.joined(own.ruleNames()) + instead + "."
                            + silent(speaking),
                    own.pages().stream().map(rule -> said(rule, speaking)).toList());
        }
        if (!own.limits().isEmpty()) {
            String set = own.limits().stream()
                    .map(limit -> "the " + limit.name() + " is " + limit.shown())
                    .collect(Collectors.joining("; "));
            add(
                    "own-limits",
                    "Limits of your own: " + set + ".",
                    own.limits().stream().map(Limit::reason).toList());
        }
        own.wishes()
                .ifPresent(any -> add("own-preferences", "Plans are compared by preferences of your own.", List.of()));
        for (SwitchedOff off : own.switchedOff()) {
            add(
                    "off-" + off.rule(),
                    "The rule " + off.rule() + " is switched off: " + ended(off.because()),
                    List.of(new Reason.Stated(off.rule() + " is switched off", off.place())));
        }
        return lines;
    }

    /** Whoever wrote a rule wants to hear that it met nothing here. */
    private String silent(Set<String> speaking) {
        List<String> silent = own.ruleNames().stream()
                .filter(rule -> !speaking.contains(rule))
                .toList();
        return silent.isEmpty()
                ? ""
                : " In this case " + Words.joined(silent) + (silent.size() == 1 ? " concludes" : " conclude")
                        + " nothing; ask why, by its name.";
    }

    private static Reason said(RulePage rule, Set<String> speaking) {
        return new Reason.Stated(
                "rule " + rule.rule() + ": if " + String.join(", and ", rule.when()) + ", then "
                        + String.join(", and ", rule.then())
                        + (speaking.contains(rule.rule()) ? "" : "; in this case it concludes nothing"),
                rule.place());
    }

    /** With a full stop at its end, where it has no other mark there. */
    private static String ended(String text) {
        return text.matches("(?s).*[.!?]") ? text : text + ".";
    }

    private void add(String label, String text, List<Reason> grounds) {
        lines.add(new PlanLine(label, Section.BASIS, text, new Reason.Chosen(text, List.of(), grounds)));
    }
}
