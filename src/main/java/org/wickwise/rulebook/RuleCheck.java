package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;

/**
 * Looks for what is wrong with rules that read well one by one: a rule that denies what it rests on, can never fire, says
 * what another says or the opposite, and words and limits that nobody uses.
 */
public final class RuleCheck {

    private final Rulebook book;
    private final List<Rule> looked;
    private final Set<Spoken> drawn;
    private final Map<Rule, RuleShape> shapes = new IdentityHashMap<>();
    private final List<Problem> found = new ArrayList<>();

    private RuleCheck(Rulebook book) {
        this.book = book;
        this.looked = book.own().isEmpty() ? book.rules() : book.own().rules();
        this.drawn = looked.isEmpty() ? Set.of() : drawnIn(book);
    }

    /** Of the own rules where there are some, or else of the shipped ones; in the order of the files. */
    public static List<Problem> of(Rulebook book) {
        RuleCheck check = new RuleCheck(book);
        check.found.addAll(SelfDenial.in(book));
        check.looked.forEach(check::neverFires);
        check.looked.forEach(check::beside);
        check.unused();
        return check.found.stream().sorted(Comparator.comparing(Problem::place)).toList();
    }

    private static Set<Spoken> drawnIn(Rulebook book) {
        return book.rules().stream()
                .flatMap(rule -> rule.then().stream())
                .flatMap(then -> Spoken.drawnBy(then).stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    private void trouble(RuleTrouble trouble, Place place, String words, String what, String expected, String way) {
        found.add(new Problem(place, what, expected, way, trouble.code(), words));
    }

    private void neverFires(Rule rule) {
        for (int i = 0; i < rule.when().size(); i++) {
            Said one = rule.when().get(i);
            for (Said other : rule.when().subList(0, i)) {
                if (Exclusion.between(one, other, book.limits())) {
                    trouble(
                            RuleTrouble.NEVER_FIRES,
                            one.place(),
                            one.written(),
                            "the rule `" + rule.id() + "` can never fire: `" + one.written() + "` and `"
                                    + other.written() + "` exclude each other",
                            "conditions that can hold together",
                            "leave one of the two out");
                    return;
                }
            }
            nobodyConcludes(one)
                    .ifPresent(asked -> trouble(
                            RuleTrouble.NEVER_FIRES,
                            one.place(),
                            one.written(),
                            "the rule `" + rule.id() + "` can never fire: no rule concludes that `" + one.written()
                                    + "`",
                            "a condition that something can meet",
                            "switch the rule that concludes it on again, or leave this condition out"));
        }
    }

    private Optional<Spoken> nobodyConcludes(Said said) {
        return Spoken.askedBy(said).stream()
                .filter(asked -> !asked.denied())
                .filter(asked -> drawn.stream().noneMatch(asked::mayBe))
                .findFirst();
    }

    /** A rule beside the others: another that says the same, or the opposite. */
    private void beside(Rule rule) {
        RuleShape shape = shapeOf(rule);
        for (Rule other : book.rules()) {
            if (other.id().equals(rule.id()) || isTold(other, rule)) {
                continue;
            }
            RuleShape otherShape = shapeOf(other);
            if (shape.saysTheSameAs(otherShape)) {
                trouble(
                        RuleTrouble.SAYS_THE_SAME,
                        rule.place(),
                        rule.id(),
                        "the rule `" + rule.id() + "` says what `" + other.id() + "` (" + other.place() + ") says",
                        "each rule once",
                        "take one of the two out");
            } else if (shape.contradicts(otherShape)) {
                trouble(
                        RuleTrouble.CONTRADICTS,
                        rule.place(),
                        rule.id(),
                        "the rule `" + rule.id() + "` contradicts `" + other.id() + "` (" + other.place()
                                + "): where one fires, both conclude what cannot be so together",
                        "rules that can be followed together",
                        book.own().isEmpty()
                                ? "take one of the two out"
                                : "switch the other off, or write `in place of: " + other.id() + "` in yours");
            }
        }
    }

    private RuleShape shapeOf(Rule rule) {
        return shapes.computeIfAbsent(rule, RuleShape::of);
    }

    /** Two shipped rules are told of once. */
    private boolean isTold(Rule other, Rule rule) {
        return looked.contains(other) && other.id().compareTo(rule.id()) < 0;
    }

    private void unused() {
        Set<Sentence> used = new HashSet<>();
        Set<String> numbers = new HashSet<>();
        for (Rule rule : book.rules()) {
            Stream.concat(rule.when().stream(), rule.then().stream()).forEach(said -> {
                used.add(said.sentence());
                numbers.addAll(said.slots());
            });
        }
        if (book.own().isEmpty()) {
            book.sentences().stream()
                    .filter(sentence -> !used.contains(sentence) && !sentence.forOwnRules())
                    .forEach(sentence -> trouble(
                            RuleTrouble.UNUSED_SENTENCE,
                            sentence.place(),
                            sentence.words(),
                            "no rule uses the sentence `" + sentence.shown() + "`",
                            "a vocabulary that the rules need",
                            "take it out of the vocabulary"));
        }
        for (Limit limit : book.own().limits()) {
            if (book.own().newLimits().contains(limit.name()) && !numbers.contains("the " + limit.name())) {
                trouble(
                        RuleTrouble.UNUSED_LIMIT,
                        limit.place(),
                        limit.name(),
                        "no rule uses the limit `" + limit.name() + "`",
                        "a limit that some rule compares with",
                        "name it in a rule, or take it out");
            }
        }
    }
}
