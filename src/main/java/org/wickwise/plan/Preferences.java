package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.rulebook.Wishes;
import org.wickwise.rulebook.Wishes.Wish;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Problems;

/**
 * How one plan is chosen among several that are sound.
 *
 * @param criteria the weightiest first; the first that tells two plans apart decides
 */
record Preferences(List<Criterion> criteria, Wishes wishes) {

    /** @throws org.wickwise.text.ProblemsFound when a criterion is unknown */
    static Preferences of(Rulebook rulebook) {
        Problems problems = new Problems();
        List<Criterion> criteria = new ArrayList<>();
        for (Wish wish : rulebook.wishes().chooseBy()) {
            String words = wish.criterion();
            Criterion.named(words)
                    .ifPresentOrElse(
                            criteria::add,
                            () -> problems.add(
                                    wish.place(),
                                    "`" + words + "` is no criterion",
                                    "one of: " + String.join("; ", Criterion.allWords()),
                                    NearMiss.suggestion(words, Criterion.allWords(), List.of())));
        }
        problems.throwIfAny();
        return new Preferences(List.copyOf(criteria), rulebook.wishes());
    }

    /** Whether plans are told apart by the creeping of dyes before they are told apart by their cost. */
    boolean creepingComesBeforeCost() {
        int creeping = criteria.indexOf(Criterion.CREEPING);
        int cost = criteria.indexOf(Criterion.COST);
        return creeping >= 0 && (cost < 0 || creeping < cost);
    }
}
