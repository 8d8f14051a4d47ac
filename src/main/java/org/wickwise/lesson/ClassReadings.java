package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.lesson.ClassSummary.PooledRow;
import org.wickwise.lesson.GroupOutcome.PooledReading;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Rf over a whole class, and the readings that lie far from those of the other groups. */
final class ClassReadings {

    private final Lesson lesson;
    private final Limit outlierLimit;
    private final List<PooledRetardation> pooled;

    ClassReadings(Lesson lesson, List<GroupOutcome> outcomes, Map<String, Limit> limits) {
        this.lesson = lesson;
        this.outlierLimit = limits.get("outlier limit");
        this.pooled = pooled(outcomes, limits);
    }

    List<PlanLine> lines() {
        return pooled.stream().map(this::pooledLine).toList();
    }

    List<PooledRow> rows() {
        return pooled.stream().map(ClassReadings::row).toList();
    }

    List<PlanLine> farOut() {
        List<PlanLine> lines = new ArrayList<>();
        for (PooledRetardation one : pooled) {
            one.farOut()
                    .forEach(out -> lines.add(new PlanLine(
                            "far-" + Words.slug(out.group()) + "-" + Words.slug(one.eluent()) + "-"
                                    + Words.slug(one.dye()),
                            Section.DOUBTS,
                            "Group " + out.group() + ", " + one.dye() + " in " + one.eluent() + ": " + out.words()
                                    + ". " + whatToLookAt(one, out) + " Its reading still counts everywhere.",
                            out.reason())));
        }
        return LongLists.cut(lines, "readings lie far out");
    }

    private String whatToLookAt(PooledRetardation one, PooledRetardation.FarOut out) {
        return exchangedWith(one, out)
                .map(dye -> "It lies where " + dye
                        + " usually does, and the other way round: were the two exchanged when they"
                        + " were written down?")
                .orElse("Look at the strip again: is it the same spot, the same jar, the same origin?");
    }

    /** The dye of the same strip whose reading lies as far out, where each would lie well among those of the other. */
    private Optional<String> exchangedWith(PooledRetardation one, PooledRetardation.FarOut out) {
        return pooled.stream()
                .filter(other -> other != one
                        && other.eluent().equals(one.eluent())
                        && other.phase().equals(one.phase())
                        && other.wouldHold(out.reading().factor(), outlierLimit))
                .filter(other -> other.farOut().stream()
                        .anyMatch(its -> its.group().equals(out.group())
                                && one.wouldHold(its.reading().factor(), outlierLimit)))
                .map(PooledRetardation::dye)
                .findFirst();
    }

    private List<PooledRetardation> pooled(List<GroupOutcome> outcomes, Map<String, Limit> limits) {
        Map<List<String>, List<PooledRetardation.Of>> byPair = new LinkedHashMap<>();
        for (GroupOutcome outcome : outcomes) {
            for (PooledReading reading : outcome.readings()) {
                byPair.computeIfAbsent(
                                List.of(reading.eluent(), reading.phase(), reading.dye()), any -> new ArrayList<>())
                        .add(new PooledRetardation.Of(outcome.group(), reading));
            }
        }
        List<String> order = lesson.planned().stream().map(Eluent::name).toList();
        Comparator<PooledRetardation> asPlanned = Comparator.comparingInt(
                one -> order.contains(one.eluent()) ? order.indexOf(one.eluent()) : order.size());
        return byPair.values().stream()
                .map(several -> PooledRetardation.of(several, limits))
                .sorted(asPlanned
                        .thenComparing(PooledRetardation::eluent)
                        .thenComparing(PooledRetardation::phase)
                        .thenComparing(PooledRetardation::dye))
                .toList();
    }

    private PlanLine pooledLine(PooledRetardation pooled) {
        String usual = lesson.basis().column().phaseName();
        boolean elsewhere = !pooled.phase().equals(usual);
        return new PlanLine(
                pooled.label() + (elsewhere ? "-on-" + Words.slug(pooled.phase()) : ""),
                Section.STRIPS,
                Words.capital(pooled.dye()) + " in " + pooled.eluent() + (elsewhere ? " on " + pooled.phase() : "")
                        + ": " + pooled.inWords(),
                pooled.reason());
    }

    private static PooledRow row(PooledRetardation one) {
        return new PooledRow(
                one.eluent(),
                one.phase(),
                one.dye(),
                one.byGroup().size(),
                one.overall().mean(),
                one.overall().uncertainty(),
                one.median(),
                one.overall().between(),
                one.ownUncertainty(),
                one.farOut().stream().map(PooledRetardation.FarOut::group).toList());
    }
}
