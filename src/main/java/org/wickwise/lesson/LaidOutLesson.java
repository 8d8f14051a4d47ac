package org.wickwise.lesson;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Route;
import org.wickwise.plan.Step;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;

/**
 * A lesson with the plan that its groups are to follow.
 *
 * @param plan made from the strips of the lesson or from remembered ones; may be a refusal
 */
public record LaidOutLesson(Lesson lesson, Plan plan, SolventData data) {

    static final String SPARE_ADSORBENT = "reserve of adsorbent";
    private static final double PER_CENT = 100;

    /**
     * The eluents in which the class runs strips: those that the lesson names, else those of its own strips, else those that the plan pours, else
     * those of remembered strips; none where nothing at all is known.
     */
    List<Eluent> stripEluents() {
        Set<Eluent> eluents = new LinkedHashSet<>(lesson.planned());
        if (!eluents.isEmpty()) {
            return List.copyOf(eluents);
        }
        plan.judged().strips().stream()
                .filter(strip -> !strip.isRemembered())
                .map(Strip::eluent)
                .sorted()
                .forEach(eluents::add);
        if (eluents.isEmpty()) {
            plan.packing().ifPresent(eluents::add);
            plan.route().map(Route::steps).orElse(List.of()).stream()
                    .map(Step::eluent)
                    .forEach(eluents::add);
        }
        if (eluents.isEmpty()) {
            plan.judged().strips().stream().map(Strip::eluent).sorted().forEach(eluents::add);
        }
        return List.copyOf(eluents);
    }

    /** How many strips a group runs: as the lesson says, or else one in each eluent. */
    int stripsOfAGroup() {
        return lesson.stripsEach().orElse(stripEluents().size());
    }

    /** "1 strip", "4 strips". */
    String stripsInWords() {
        return stripsOfAGroup() + (stripsOfAGroup() == 1 ? " strip" : " strips");
    }

    /** One column volume in millilitres; empty where there is no plan or bore and bed are not known. */
    OptionalDouble columnVolumeMillilitres() {
        return plan.isRefusal()
                ? OptionalDouble.empty()
                : plan.judged().column().columnVolumeMillilitres();
    }

    int groups() {
        return lesson.groups();
    }

    Shelf shelf() {
        return plan.judged().shelf();
    }

    /** Whether the lesson names bottles at all; without a shelf every solvent of the table counts. */
    boolean hasShelf() {
        return shelf().isNamed();
    }

    /** Grams of dry adsorbent that the class weighs out, spare included; empty where nobody knows how many beds of which size. */
    OptionalDouble adsorbentGrams() {
        OptionalDouble each = plan.judged().column().bedGrams();
        return plan.isRefusal() || each.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(each.getAsDouble() * groups() * timesWith(SPARE_ADSORBENT));
    }

    Limit limit(String name) {
        return plan.judgement().limits().get(name);
    }

    double value(String limit) {
        return limit(limit).value();
    }

    /** 1.2 for a limit of 20 %. */
    double timesWith(String percentLimit) {
        return 1 + value(percentLimit) / PER_CENT;
    }

    Reason groupsStated() {
        return new Reason.Stated("the lesson has " + groups() + (groups() == 1 ? " group" : " groups"), place());
    }

    Reason stripsStated() {
        String each = "each group runs " + stripsInWords();
        return new Reason.Stated(lesson.stripsEach().isPresent() ? each : each + ", one in each eluent", place());
    }

    Place place() {
        return Place.wholeFile(lesson.file().toString());
    }
}
