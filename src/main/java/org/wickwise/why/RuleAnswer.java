package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.rulebook.Limit;
import org.wickwise.rulebook.Objections;
import org.wickwise.text.Words;

/** What a rule or a limit, asked about by its name, does in a case. */
final class RuleAnswer {

    private static final int MOST_TOLD = 4;

    private RuleAnswer() {}

    /**
     * What the rule concludes here, or what it asks in vain; empty where the book has no rule of this name.
     *
     * @param objections of the book, to what was not concluded
     */
    static Optional<PlanLine> ofRule(Plan plan, Objections objections, String rule) {
        List<Concluded> concluded = plan.judgement().concludedBy(rule);
        if (!concluded.isEmpty()) {
            return Optional.of(fired(rule, concluded));
        }
        Objected objected = new Objected(plan.judgement(), objections);
        return objections
                .of(rule)
                .map(objection -> objected.lineOf(
                        rule,
                        "the rule " + rule + " concludes nothing here",
                        "and nothing here says so",
                        List.of(objection)));
    }

    private static PlanLine fired(String rule, List<Concluded> concluded) {
        List<String> told = new ArrayList<>(
                concluded.stream().map(Concluded::statement).limit(MOST_TOLD).toList());
        int more = concluded.size() - told.size();
        String text = "The rule " + rule + " concludes here: " + String.join("; ", told)
                + (more > 0 ? "; and " + more + " more" : "") + ".";
        return new PlanLine(rule, Section.CHOICE, text, new Reason.Chosen(text, List.of(), List.copyOf(concluded)));
    }

    /** What a limit is set to, and where; empty where no limit is called so. */
    static Optional<PlanLine> ofLimit(Map<String, Limit> limits, String asked) {
        String name = asked.startsWith("the ") ? asked.substring("the ".length()) : asked;
        return limits.values().stream()
                .filter(limit -> limit.name().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
                .map(limit -> new PlanLine(
                        limit.name(),
                        Section.BASIS,
                        Words.capital(limit.reason().statement()) + ".",
                        limit.reason()))
                .findFirst();
    }
}
