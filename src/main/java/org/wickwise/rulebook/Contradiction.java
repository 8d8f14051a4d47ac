package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.rulebook.Conclusion.LeavesBefore;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/**
 * Rules of the book that say of the same thing what cannot both be so. Nothing is planned on either.
 *
 * @param dyes of which it is said
 * @param conclusions two or more that exclude each other, in the order of printing
 */
public record Contradiction(Eluent eluent, Set<Dye> dyes, List<Conclusion> conclusions) {

    public Contradiction {
        dyes = new TreeSet<>(dyes);
        conclusions = List.copyOf(conclusions);
    }

    /** What was seen goes before what was reckoned. */
    static List<Behaves> best(Collection<Behaves> behaviours) {
        List<Behaves> seen = behaviours.stream()
                .filter(behaves -> behaves.basis() == Conclusion.Basis.OBSERVED)
                .toList();
        return seen.isEmpty() ? List.copyOf(behaviours) : seen;
    }

    static List<Contradiction> among(Collection<Conclusion> conclusions) {
        Map<Subject, List<Conclusion>> alike = new HashMap<>();
        for (Conclusion conclusion : conclusions) {
            Subject.of(conclusion).ifPresent(subject -> alike.computeIfAbsent(subject, any -> new ArrayList<>(1))
                    .add(conclusion));
        }
        return alike.values().stream()
                .filter(said -> said.size() > 1)
                .filter(Contradiction::excludeEachOther)
                .map(Contradiction::of)
                .sorted(Comparator.comparing(Contradiction::eluent)
                        .thenComparing(found -> found.dyes().toString())
                        .thenComparing(found -> found.conclusions().toString()))
                .toList();
    }

    /** What several conclusions may speak of; of two dyes in either order. */
    private record Subject(Class<?> kind, Eluent eluent, Dye one, Dye other) {

        static Optional<Subject> of(Conclusion conclusion) {
            if (conclusion instanceof Behaves behaves) {
                return Optional.of(new Subject(Behaves.class, behaves.eluent(), behaves.dye(), behaves.dye()));
            } else if (conclusion instanceof Between between) {
                return Optional.of(pair(Between.class, between.eluent(), between.ahead(), between.behind()));
            } else if (conclusion instanceof LeavesBefore leaves) {
                return Optional.of(pair(LeavesBefore.class, leaves.eluent(), leaves.first(), leaves.second()));
            }
            return Optional.empty();
        }

        private static Subject pair(Class<?> kind, Eluent eluent, Dye one, Dye other) {
            return one.compareTo(other) < 0
                    ? new Subject(kind, eluent, one, other)
                    : new Subject(kind, eluent, other, one);
        }
    }

    private static boolean excludeEachOther(List<Conclusion> alike) {
        if (alike.get(0) instanceof Behaves) {
            return best(alike.stream().map(Behaves.class::cast).toList()).stream()
                            .map(Behaves::behaviour)
                            .distinct()
                            .count()
                    > 1;
        }
        boolean onlyTogether = alike.stream()
                .allMatch(one -> one instanceof Between between && between.separation() == Separation.TOGETHER);
        return !onlyTogether;
    }

    private static Contradiction of(List<Conclusion> alike) {
        if (alike.get(0) instanceof Behaves first) {
            List<Behaves> all = best(alike.stream().map(Behaves.class::cast).toList());
            return new Contradiction(first.eluent(), Set.of(first.dye()), List.copyOf(all));
        }
        if (alike.get(0) instanceof Between first) {
            return new Contradiction(first.eluent(), Set.of(first.ahead(), first.behind()), alike);
        }
        LeavesBefore first = (LeavesBefore) alike.get(0);
        return new Contradiction(first.eluent(), Set.of(first.first(), first.second()), alike);
    }

    /** "the rules contradict each other: D stays in E (rule a) and D travels in E (rule b)". */
    public String words(Judgement judgement) {
        List<String> said = conclusions.stream()
                .map(judgement::reason)
                .map(reason -> reason.statement() + " ("
                        + reason.arguments().stream()
                                .map(argument -> "rule " + argument.ruleId() + ", " + argument.place())
                                .distinct()
                                .collect(Collectors.joining("; "))
                        + ")")
                .toList();
        return "the rules contradict each other: " + Words.joined(said);
    }

    /** What is said on either side, with what it rests on. */
    public Reason reason(Judgement judgement) {
        return new Reason.Chosen(
                words(judgement),
                List.of(),
                conclusions.stream().<Reason>map(judgement::reason).toList());
    }
}
