package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.rulebook.MeaningExpression.Unmet;

/**
 * What a sentence means, so that it can be asked of the facts one by one: which of them meet it, or which stands in its
 * way. The engine judges; this explains what it judged. A test holds the two against each other.
 *
 * @param clauses all of which must hold, in order; a clause may give names to what later ones compare with
 */
record Meaning(List<Clause> clauses) {

    Meaning {
        clauses = List.copyOf(clauses);
    }

    /** One part of a meaning. */
    sealed interface Clause {}

    /** There is such a fact. */
    record Some(FactPattern pattern) implements Clause {}

    /** There are no such facts; several patterns mean all of them together. */
    record No(List<FactPattern> patterns) implements Clause {}

    /** So many such facts: counted under a name, and a condition on the count. */
    record Counted(FactPattern pattern, String countName, MeaningExpression condition) implements Clause {}

    /**
     * A kind of fact with conditions.
     *
     * @param names values of the fact that get a name, by that name
     */
    record FactPattern(String type, List<MeaningExpression> conditions, Map<String, MeaningExpression> names) {

        boolean isMetBy(Object fact, Map<String, Object> values) {
            return conditions.stream().allMatch(condition -> condition.isTrue(fact, values));
        }

        /** The same values with those that this fact gives a name. */
        Map<String, Object> named(Object fact, Map<String, Object> values) {
            if (names.isEmpty()) {
                return values;
            }
            Map<String, Object> more = new HashMap<>(values);
            names.forEach((name, expression) -> more.put(name, expression.value(fact, values)));
            return more;
        }
    }

    /** What came of asking. */
    sealed interface Answer {}

    /** @param witnesses the facts that meet the sentence; none where it says that something is not there */
    record Met(List<Object> witnesses) implements Answer {}

    /**
     * @param inTheWay facts that would have to be otherwise or not be there, the nearest first
     * @param missing by how much the nearest misses, where it is a matter of numbers
     * @param ruledOut whether the sentence asks that something is not there, and it is
     */
    record NotMet(List<Object> inTheWay, OptionalDouble missing, boolean ruledOut) implements Answer {}

    /** @param values what stands in the slots, by the names of the slots */
    Answer ask(Map<String, Object> values, Facts facts) {
        return ask(0, values, facts, List.of());
    }

    private Answer ask(int index, Map<String, Object> values, Facts facts, List<Object> witnesses) {
        if (index == clauses.size()) {
            return new Met(witnesses);
        }
        return switch (kind(clauses.get(index))) {
            case SOME -> some((Some) clauses.get(index), index, values, facts, witnesses);
            case NO -> no((No) clauses.get(index), index, values, facts, witnesses);
            case COUNTED -> counted((Counted) clauses.get(index), index, values, facts, witnesses);
        };
    }

    private enum Kind {
        SOME,
        NO,
        COUNTED
    }

    private static Kind kind(Clause clause) {
        return clause instanceof Some ? Kind.SOME : clause instanceof No ? Kind.NO : Kind.COUNTED;
    }

    private Answer some(Some some, int index, Map<String, Object> values, Facts facts, List<Object> witnesses) {
        Optional<Answer> further = Optional.empty();
        for (Object fact : facts.ofType(some.pattern().type())) {
            if (some.pattern().isMetBy(fact, values)) {
                List<Object> more = new ArrayList<>(witnesses);
                more.add(fact);
                Answer answer = ask(index + 1, some.pattern().named(fact, values), facts, more);
                if (answer instanceof Met) {
                    return answer;
                }
                further = Optional.of(answer);
            }
        }
        return further.orElseGet(() -> nearest(some.pattern(), values, facts));
    }

    private Answer no(No no, int index, Map<String, Object> values, Facts facts, List<Object> witnesses) {
        List<Object> there = together(no.patterns(), 0, values, facts);
        return there.isEmpty()
                ? ask(index + 1, values, facts, witnesses)
                : new NotMet(there, OptionalDouble.empty(), true);
    }

    private static List<Object> together(
            List<FactPattern> patterns, int index, Map<String, Object> values, Facts facts) {
        FactPattern pattern = patterns.get(index);
        for (Object fact : facts.ofType(pattern.type())) {
            if (pattern.isMetBy(fact, values)) {
                if (index + 1 == patterns.size()) {
                    return List.of(fact);
                }
                List<Object> rest = together(patterns, index + 1, pattern.named(fact, values), facts);
                if (!rest.isEmpty()) {
                    List<Object> all = new ArrayList<>(List.of(fact));
                    all.addAll(rest);
                    return all;
                }
            }
        }
        return List.of();
    }

    private Answer counted(
            Counted counted, int index, Map<String, Object> values, Facts facts, List<Object> witnesses) {
        List<Object> found = facts.ofType(counted.pattern().type()).stream()
                .filter(fact -> counted.pattern().isMetBy(fact, values))
                .toList();
        Map<String, Object> more = new HashMap<>(values);
        more.put(counted.countName(), (long) found.size());
        if (!counted.condition().isTrue(found, more)) {
            return nearest(counted.pattern(), values, facts);
        }
        List<Object> all = new ArrayList<>(witnesses);
        all.addAll(found);
        return ask(index + 1, more, facts, all);
    }

    /** Facts of the kind that are about the same things and fail only in what is said of these, the nearest first. */
    private static NotMet nearest(FactPattern pattern, Map<String, Object> values, Facts facts) {
        record Near(Object fact, OptionalDouble missing) {}
        List<Near> near = new ArrayList<>();
        for (Object fact : facts.ofType(pattern.type())) {
            List<Unmet> unmet = pattern.conditions().stream()
                    .flatMap(condition -> condition.unmet(fact, values).stream())
                    .toList();
            if (!unmet.isEmpty() && unmet.stream().noneMatch(Unmet::aboutSomethingElse)) {
                OptionalDouble missing = unmet.stream()
                        .flatMapToDouble(one -> one.missing().stream())
                        .max();
                near.add(new Near(fact, missing));
            }
        }
        near.sort(Comparator.comparingDouble((Near one) -> one.missing().orElse(Double.MAX_VALUE))
                .thenComparing(one -> one.fact().toString()));
        return new NotMet(
                near.stream().map(Near::fact).toList(),
                near.isEmpty() ? OptionalDouble.empty() : near.get(0).missing(),
                false);
    }
}
