package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Meaning.Answer;
import org.wickwise.rulebook.Meaning.Met;
import org.wickwise.rulebook.Meaning.NotMet;

/**
 * Says, for every rule that could conclude something, which of its sentences does not hold and what is in the way. Where a
 * rule speaks of things that what is asked about leaves open, the things are taken that bring it furthest.
 */
public final class Objections {

    private static final int MOST_IN_THE_WAY = 4;
    private static final int MOST_LEVELS = 2;

    private final List<Rule> rules;
    private final Judgement judgement;
    private final Facts facts;
    private final Map<String, List<?>> things;
    private final Map<Sentence, Meaning> meanings = new HashMap<>();

    Objections(List<Rule> rules, Judgement judgement) {
        this.rules = rules;
        this.judgement = judgement;
        List<Object> all = new ArrayList<>(judgement.facts());
        all.addAll(judgement.reasons().keySet());
        this.facts = new Facts(all);
        this.things = Map.of(
                "dye", judgement.judged().dyes(),
                "eluent", judgement.eluents(),
                "strip", judgement.judged().strips());
    }

    /** Nothing where no rule of the book concludes such a thing; nothing of a rule that does conclude it here. */
    public List<Objection> to(Conclusion wanted) {
        return further(wanted, MOST_LEVELS);
    }

    /** What a rule asks in vain, of the things that bring it furthest; empty when it fires, or is not in the book. */
    public Optional<Objection> of(String ruleId) {
        return rules.stream()
                .filter(rule -> rule.id().equals(ruleId))
                .findFirst()
                .flatMap(rule -> furthest(rule, 0, Map.of()).map(failure -> told(rule, failure, MOST_LEVELS)));
    }

    /** Whether some rule has all its sentences met; the engine must say the same. */
    boolean isMet(Conclusion wanted) {
        return rules.stream()
                .anyMatch(rule -> rule.then().stream().anyMatch(then -> ConclusionShape.bound(then, rule.id(), wanted)
                        .filter(letters -> furthest(rule, 0, letters).isEmpty())
                        .isPresent()));
    }

    /** How far a rule gets: the sentence it fails at, with what its letters stand for. */
    private record Failure(int sentence, Map<String, Object> letters, NotMet answer) {

        double missing() {
            return answer.missing().orElse(Double.MAX_VALUE);
        }
    }

    /** Empty when all sentences from this one on can be met. */
    private Optional<Failure> furthest(Rule rule, int index, Map<String, Object> letters) {
        if (index == rule.when().size()) {
            return Optional.empty();
        }
        Said said = rule.when().get(index);
        List<Failure> failures = new ArrayList<>();
        for (Map<String, Object> tried : withOpenLetters(said, letters)) {
            Answer answer = meaning(said).ask(values(said, tried), facts);
            if (answer instanceof Met) {
                Optional<Failure> later = furthest(rule, index + 1, tried);
                if (later.isEmpty()) {
                    return Optional.empty();
                }
                failures.add(later.get());
            } else if (answer instanceof NotMet notMet) {
                failures.add(new Failure(index, tried, notMet));
            }
        }
        return failures.stream()
                .min(Comparator.comparingInt((Failure failure) -> -failure.sentence())
                        .thenComparing(failure -> failure.answer().inTheWay().isEmpty())
                        .thenComparingDouble(Failure::missing)
                        .thenComparing(failure -> failure.letters().toString()));
    }

    /** Every way to let the sentence's open letters stand for something; two letters of a kind for two things. */
    private List<Map<String, Object>> withOpenLetters(Said said, Map<String, Object> letters) {
        List<Map<String, Object>> ways = new ArrayList<>(List.of(letters));
        for (int i = 0; i < said.slots().size(); i++) {
            SlotKind kind = said.sentence().slots().get(i).kind();
            String letter = said.slots().get(i);
            if (kind.isVariable() && !letters.containsKey(letter)) {
                List<Map<String, Object>> more = new ArrayList<>();
                for (Map<String, Object> way : ways) {
                    for (Object thing : things.get(kind.name())) {
                        if (!way.containsValue(thing)) {
                            Map<String, Object> longer = new HashMap<>(way);
                            longer.put(letter, thing);
                            more.add(longer);
                        }
                    }
                }
                ways = more;
            }
        }
        return ways;
    }

    private Meaning meaning(Said said) {
        return meanings.computeIfAbsent(
                said.sentence(), sentence -> MeaningReader.read(sentence.means().orElseThrow()));
    }

    private Map<String, Object> values(Said said, Map<String, Object> letters) {
        Map<String, Object> values = new HashMap<>();
        for (int i = 0; i < said.slots().size(); i++) {
            Sentence.Slot slot = said.sentence().slots().get(i);
            String written = said.slots().get(i);
            values.put(slot.name(), slot.kind().isVariable() ? letters.get(written) : constant(slot.kind(), written));
        }
        return values;
    }

    private Object constant(SlotKind kind, String written) {
        if (!kind.isNumber()) {
            return written;
        }
        Matcher limit = SlotKind.LIMIT.matcher(written);
        Matcher number = SlotKind.NUMBER.matcher(written);
        return limit.matches()
                ? judgement.limits().get(limit.group(1)).value()
                : number.matches() ? Double.valueOf(number.group(1)) : 0.0;
    }

    private Objection told(Rule rule, Failure failure, int levels) {
        Map<String, String> names = new HashMap<>();
        failure.letters().forEach((letter, thing) -> names.put(letter, thing.toString()));
        Said unmet = rule.when().get(failure.sentence());
        List<String> met = rule.when().subList(0, failure.sentence()).stream()
                .map(said -> said.filled(names, judgement.limits()))
                .toList();
        List<Reason> inTheWay = reasons(failure.answer().inTheWay());
        List<Objection> further = inTheWay.isEmpty() && levels > 0
                ? ConclusionShape.made(unmet, values(unmet, failure.letters()))
                        .map(conclusion -> further(conclusion, levels - 1))
                        .orElse(List.of())
                : List.of();
        return new Objection(
                rule.id(),
                rule.place(),
                rule.source(),
                met,
                unmet.filled(names, judgement.limits()),
                inTheWay,
                failure.answer().missing(),
                failure.answer().ruledOut(),
                further);
    }

    /** Why what a rule asks was not concluded itself. */
    private List<Objection> further(Conclusion conclusion, int levels) {
        List<Objection> further = new ArrayList<>();
        for (Rule rule : rules) {
            for (Said then : rule.then()) {
                ConclusionShape.bound(then, rule.id(), conclusion)
                        .flatMap(letters -> furthest(rule, 0, letters))
                        .ifPresent(failure -> further.add(told(rule, failure, levels)));
            }
        }
        return List.copyOf(further);
    }

    private List<Reason> reasons(List<Object> inTheWay) {
        Set<Reason> reasons = new LinkedHashSet<>();
        for (Object fact : inTheWay) {
            if (fact instanceof Conclusion conclusion && judgement.holds(conclusion)) {
                reasons.add(judgement.reason(conclusion));
            } else if (fact instanceof Ground ground) {
                reasons.add(ground.reason());
            }
        }
        return reasons.stream().limit(MOST_IN_THE_WAY).toList();
    }
}
