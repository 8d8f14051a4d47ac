package org.wickwise.plan;

import java.util.List;
import java.util.Optional;
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

    public Optional<PlanLine> line(String label) {
        return lines.stream().filter(line -> line.label().equals(label)).findFirst();
    }

    public List<PlanLine> linesIn(PlanLine.Section section) {
        return lines.stream().filter(line -> line.section() == section).toList();
    }
}
