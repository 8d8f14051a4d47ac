package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;

/**
 * What is kept of one group's plan for the summary of the class.
 *
 * @param way what is packed and poured; empty where there is no plan
 * @param obstacles why there is no plan; none where there is one
 * @param wanted which strips to run next, as the plan says; none where it needs none
 * @param eluents in which the group has a strip that can be read
 * @param place of its first strip
 */
record GroupOutcome(
        String group,
        Optional<String> way,
        List<PlanLine> obstacles,
        List<PlanLine> wanted,
        TreeSet<String> eluents,
        List<PooledReading> readings,
        List<Problem> leftOut,
        List<String> told,
        Optional<Place> place) {

    /**
     * What a group says of one dye in one eluent.
     *
     * @param strips Rf of each strip it comes from, at least one
     */
    record PooledReading(
            String dye, String eluent, String phase, RetardationFactor factor, List<Double> strips, Place place) {}

    static GroupOutcome of(GroupPlan planned) {
        if (planned.plan().isEmpty()) {
            return new GroupOutcome(
                    planned.group(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    new TreeSet<>(),
                    List.of(),
                    planned.leftOut(),
                    planned.told(),
                    planned.leftOut().stream().map(Problem::place).findFirst());
        }
        Plan plan = planned.plan().get();
        TreeSet<String> eluents = new TreeSet<>();
        plan.judged().strips().stream()
                .filter(strip -> !plan.judgement().holds(new StripVerdict(strip, Reading.VOID)))
                .forEach(strip -> eluents.add(strip.eluent().name()));
        return new GroupOutcome(
                planned.group(),
                plan.route()
                        .map(route -> "pack and load with " + route.packing().packing() + "; pour " + route.names()),
                plan.isRefusal() ? plan.linesIn(Section.VERDICT) : List.of(),
                plan.linesIn(Section.NEXT).stream()
                        .filter(line -> !line.saysNoStripIsWanted())
                        .toList(),
                eluents,
                readings(plan.judgement()),
                planned.leftOut(),
                planned.told(),
                plan.judged().strips().stream().map(Strip::place).min(Place::compareTo));
    }

    boolean wasRead() {
        return place.isPresent() && (way.isPresent() || !obstacles.isEmpty());
    }

    /** The same without the reasons of its lines, which hold the most. */
    GroupOutcome light() {
        return new GroupOutcome(group, way, bare(obstacles), bare(wanted), eluents, readings, leftOut, told, place);
    }

    private List<PlanLine> bare(List<PlanLine> lines) {
        return lines.stream()
                .map(line -> new PlanLine(
                        line.label(),
                        line.section(),
                        line.text(),
                        new org.wickwise.reason.Reason.Stated(
                                "the plan of group " + group + " says so in its line " + line.label()
                                        + "; ask for it with the group and that label",
                                place.orElse(Place.wholeFile("")))))
                .toList();
    }

    private static List<PooledReading> readings(Judgement judgement) {
        List<PooledReading> readings = new ArrayList<>();
        for (Movement movement : judgement.movements()) {
            if (!(movement instanceof Movement.Measured measured)) {
                continue;
            }
            List<Strip> strips = judgement.judged().strips().stream()
                    .filter(strip -> strip.eluent().equals(measured.eluent())
                            && strip.phase().name().equals(measured.phase().name())
                            && strip.spotOf(measured.dye()).isPresent())
                    .filter(strip -> !judgement.holds(new StripVerdict(strip, Reading.VOID))
                            && !judgement.holds(new SpotVerdict(strip, measured.dye(), Reading.VOID)))
                    .toList();
            List<Double> values = strips.stream()
                    .flatMap(strip -> judgement.retardationFactor(strip, measured.dye()).stream())
                    .map(RetardationFactor::value)
                    .toList();
            if (!values.isEmpty()) {
                readings.add(new PooledReading(
                        measured.dye().name(),
                        measured.eluent().name(),
                        measured.phase().name(),
                        measured.retardationFactor(),
                        values,
                        strips.get(0).spotOf(measured.dye()).orElseThrow().place()));
            }
        }
        return List.copyOf(readings);
    }
}
