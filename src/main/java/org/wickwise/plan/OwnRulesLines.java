package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.rulebook.OwnRules;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.text.Words;

/** Which rules are the instructor's own, and which shipped ones do not count. */
final class OwnRulesLines {

    private final OwnRules own;
    private final List<PlanLine> lines = new ArrayList<>();

    OwnRulesLines(OwnRules own) {
        this.own = own;
    }

    /** No line where there are no rules of one's own. */
    List<PlanLine> lines() {
        if (!own.ruleNames().isEmpty()) {
            String instead = own.instead().entrySet().stream()
                    .map(entry -> "; " + entry.getValue() + " stands in the place of " + entry.getKey())
                    .collect(Collectors.joining());
            add(
                    "own-rules",
                    "Rules of your own (" + own.folder() + "): " + Words.joined(own.ruleNames()) + instead + ".",
                    List.of());
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
                    "The rule " + off.rule() + " is switched off: " + off.because(),
                    List.of(new Reason.Stated(off.rule() + " is switched off", off.place())));
        }
        return lines;
    }

    private void add(String label, String text, List<Reason> grounds) {
        lines.add(new PlanLine(label, Section.BASIS, text, new Reason.Chosen(text, List.of(), grounds)));
    }
}
