package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Movement;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;

/**
 * The strips that can be read, put together: one movement for each dye and eluent, one gap for each pair. Void strips
 * and void spots are left out. Where strips on the column's own stationary phase exist, only those count.
 */
record StripSummary(List<Movement> movements, List<Apart> gaps) {

    /** @throws ProblemsFound when strips that should agree contradict each other */
    static StripSummary of(Case written, Set<Conclusion> verdicts, Map<String, Limit> limits) {
        Problems problems = new Problems();
        RulerReadings readings = new RulerReadings(limits);
        Movements movementsOf = new Movements(verdicts, limits, readings, problems);
        Gaps gapsOf = new Gaps(verdicts, readings);
        List<Movement> movements = new ArrayList<>();
        List<Apart> gaps = new ArrayList<>();
        for (Eluent eluent : eluents(written)) {
            List<Strip> strips = stripsFor(eluent, written, verdicts);
            for (Dye one : written.dyes()) {
                movementsOf.movement(one, eluent, strips).ifPresent(movements::add);
                written.dyes().stream()
                        .filter(other -> one.compareTo(other) < 0)
                        .forEach(other -> gaps.addAll(gapsOf.gaps(one, other, eluent, strips)));
            }
        }
        problems.throwIfAny();
        return new StripSummary(List.copyOf(movements), List.copyOf(gaps));
    }

    /** The same with what was reckoned for eluents that nobody ran. */
    StripSummary with(StripSummary reckoned) {
        List<Movement> allMovements = new ArrayList<>(movements);
        allMovements.addAll(reckoned.movements());
        List<Apart> allGaps = new ArrayList<>(gaps);
        allGaps.addAll(reckoned.gaps());
        return new StripSummary(List.copyOf(allMovements), List.copyOf(allGaps));
    }

    private static List<Eluent> eluents(Case written) {
        return written.strips().stream().map(Strip::eluent).distinct().sorted().toList();
    }

    private static List<Strip> stripsFor(Eluent eluent, Case written, Set<Conclusion> verdicts) {
        List<Strip> readable = written.strips().stream()
                .filter(strip -> strip.eluent().equals(eluent))
                .filter(strip -> !verdicts.contains(new StripVerdict(strip, Reading.VOID)))
                .sorted(Comparator.comparing(Strip::place))
                .toList();
        List<Strip> onColumnPhase = readable.stream()
                .filter(strip -> strip.phase().name().equals(written.column().phaseName()))
                .toList();
        return onColumnPhase.isEmpty() ? readable : onColumnPhase;
    }
}
