package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wickwise.text.Problem;

/**
 * Conclusions that would be withdrawn by what follows from them, and drawn again, without end. Asked before anything is
 * judged, so that no folder of rules can keep the program busy for ever.
 */
final class SelfDenial {

    private final RuleCircles circles;
    private final List<Rule> own;

    private SelfDenial(Rulebook book) {
        this.circles = new RuleCircles(book.rules());
        this.own = book.own().rules();
    }

    /** Of every rule of the book; told of the own rule that closes the circle, where there are own rules. */
    static List<Problem> in(Rulebook book) {
        SelfDenial denial = new SelfDenial(book);
        Set<String> ownNames = new HashSet<>(book.own().ruleNames());
        List<Problem> found = new ArrayList<>();
        for (Rule rule : denial.rulesToAsk(book)) {
            circle(rule, denial, ownNames.contains(rule.id()) || ownNames.isEmpty())
                    .ifPresent(found::add);
        }
        return found;
    }

    /** All of a shipped book; beside it, which is sound by itself, what rests on own rules. */
    private Collection<Rule> rulesToAsk(Rulebook book) {
        if (book.own().isEmpty()) {
            return book.rules();
        }
        Map<String, Rule> resting = new LinkedHashMap<>();
        own.forEach(rule -> circles.restingOn(rule).forEach(other -> resting.put(other.id(), other)));
        return resting.values();
    }

    private static Optional<Problem> circle(Rule rule, SelfDenial denial, boolean isToBlame) {
        return denial.circles
                .deniedBy(rule)
                .flatMap(denied ->
                        isToBlame ? Optional.of(problem(rule, rule, denied, denied)) : denial.blamed(rule, denied));
    }

    /** The own rules through which a shipped rule would deny itself. */
    private Optional<Problem> blamed(Rule shipped, Said denied) {
        return own.stream()
                .filter(rule -> circles.isOnTheWay(rule, shipped, denied))
                .findFirst()
                .map(rule -> problem(rule, shipped, denied, rule.then().get(0)));
    }

    private static Problem problem(Rule told, Rule denying, Said denied, Said where) {
        String rule = "the rule `" + denying.id() + "` asks that `" + denied.written() + "`, ";
        return new Problem(
                where.place(),
                rule
                        + (told.equals(denying)
                                ? "and what it concludes leads to the opposite"
                                : "and what it concludes leads to the opposite by the rule `" + told.id() + "`"),
                "conditions that do not hang on what the rule concludes",
                told.equals(denying)
                        ? "take this condition out, or let the rule conclude something else"
                        : "let the rule `" + told.id() + "` rest on something else, or conclude something else",
                RuleTrouble.DENIES_ITSELF.code(),
                where.written());
    }
}
