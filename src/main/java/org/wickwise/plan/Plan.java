package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;

/**
 * The finished plan, or an explained refusal.
 *
 * @param route empty when no plan is sound
 */
public record Plan(Judgement judgement, Optional<Route> route, List<PlanLine> lines) {

    public Plan {
        lines = List.copyOf(lines);
    }

    public Case judged() {
        return judgement.judged();
    }

    /** What the column is packed and loaded with; empty when no plan is sound. */
    public Optional<Eluent> packing() {
        return route.map(found -> found.packing().packing());
    }

    public boolean isRefusal() {
        return route.isEmpty();
    }

    /** When each measured dye leaves; empty when no plan is sound. */
    public Optional<Elution> elution() {
        return route.map(Route::elution);
    }

    /** What to keep of the outflow at the wanted purity; empty when no plan is sound. */
    public Optional<Keeping> keeping() {
        return route.map(found -> Keeping.of(found, judgement));
    }

    /** How early and how late each dye may leave; empty when no plan is sound. */
    public Optional<Ranges> ranges() {
        return route.map(found -> Ranges.of(found, judgement));
    }

    /** The same plan with more to say; the sections keep their order. */
    public Plan with(List<PlanLine> more) {
        List<PlanLine> all = new ArrayList<>(lines);
        all.addAll(more);
        all.sort(Comparator.comparing(PlanLine::section));
        return new Plan(judgement, route, all);
    }

    /** The same plan without the lines of which this is true. */
    public Plan without(Predicate<PlanLine> saying) {
        return new Plan(
                judgement,
                route,
                lines.stream().filter(line -> !saying.test(line)).toList());
    }

    public Optional<PlanLine> line(String label) {
        return lines.stream().filter(line -> line.label().equals(label)).findFirst();
    }

    public List<PlanLine> linesIn(PlanLine.Section section) {
        return lines.stream().filter(line -> line.section() == section).toList();
    }
}
