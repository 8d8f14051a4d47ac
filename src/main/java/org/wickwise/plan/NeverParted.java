package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/**
 * Two dyes of one class that lie together in every tried eluent that moves them: perhaps one dye, or two that share what
 * they do.
 *
 * @param one the first of the two by name
 * @param together how they lie in each of these eluents; two at least, since lying together once says nothing
 */
public record NeverParted(Dye one, Dye other, List<Between> together) {

    public NeverParted {
        together = List.copyOf(together);
    }

    /** Every such pair, in the order of names. */
    public static List<NeverParted> all(Judgement judgement) {
        List<NeverParted> pairs = new ArrayList<>();
        List<Dye> dyes = judgement.judged().dyes().stream().sorted().toList();
        for (int i = 0; i < dyes.size(); i++) {
            for (Dye other : dyes.subList(i + 1, dyes.size())) {
                pair(dyes.get(i), other, judgement).ifPresent(pairs::add);
            }
        }
        return pairs;
    }

    private static Optional<NeverParted> pair(Dye one, Dye other, Judgement judgement) {
        List<Between> seen = judgement.all(Between.class).stream()
                .filter(between -> List.of(one, other).containsAll(List.of(between.ahead(), between.behind())))
                .filter(between -> judgement.tried(between.eluent()))
                .filter(between -> moves(one, between.eluent(), judgement) || moves(other, between.eluent(), judgement))
                .toList();
        boolean isParted = seen.stream().anyMatch(between -> between.separation() != Separation.TOGETHER);
        boolean isTold = seen.stream().map(Between::eluent).distinct().count() > 1;
        return isTold && !isParted && one.dyeClass() == other.dyeClass()
                ? Optional.of(new NeverParted(one, other, seen))
                : Optional.empty();
    }

    private static boolean moves(Dye dye, Eluent eluent, Judgement judgement) {
        return judgement
                .behaviour(dye, eluent)
                .map(Behaves::behaviour)
                .filter(behaviour -> behaviour != Behaviour.STAYS)
                .isPresent();
    }

    /** In how many eluents they lie together, 2 or more. */
    public int eluents() {
        return (int) together.stream().map(Between::eluent).distinct().count();
    }

    /**
     * How likely the two are alike, 0 to 1: each eluent after the first leaves the same share of the doubt.
     *
     * @param trust 0 to 1, after the second eluent
     */
    public double chanceAlike(double trust) {
        return 1 - Math.pow(1 - trust, eluents() - 1.0);
    }

    /** "plum and slate lie together in all 3 eluents tried that move them: perhaps one dye, or two ...". */
    public String words() {
        String all = eluents() == 2 ? "both" : "all " + eluents();
        return one + " and " + other + " lie together in " + all
                + " eluents tried that move them: perhaps one dye, or two that share what they do";
    }

    public List<Reason> reasons(Judgement judgement) {
        return together.stream().<Reason>map(judgement::reason).toList();
    }

    /** One line for each such pair of a case. */
    static List<PlanLine> lines(Judgement judgement) {
        return all(judgement).stream()
                .map(pair -> new PlanLine(
                        "alike-" + Words.slug(pair.one().name()) + "-"
                                + Words.slug(pair.other().name()),
                        Section.STRIPS,
                        Words.capital(pair.words()) + ".",
                        new Reason.Chosen(pair.words(), List.of(), pair.reasons(judgement))))
                .toList();
    }
}
