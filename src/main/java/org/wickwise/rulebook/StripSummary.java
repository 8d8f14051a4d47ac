package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
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

    /**
     * All that the readings in one eluent hang on.
     *
     * @param strips that can be read, in the order of the file
     * @param voids void spots on them
     */
    record InOneEluent(
            Eluent eluent, List<Strip> strips, Set<Conclusion> voids, List<Dye> dyes, Map<String, Limit> limits) {

        /** @throws ProblemsFound when strips that should agree contradict each other */
        StripSummary summary() {
            Problems problems = new Problems();
            RulerReadings readings = new RulerReadings(limits);
            Movements movementsOf = new Movements(voids, limits, readings, problems);
            Gaps gapsOf = new Gaps(voids, readings);
            List<Movement> movements = new ArrayList<>();
            List<Apart> gaps = new ArrayList<>();
            for (Dye one : dyes) {
                movementsOf.movement(one, eluent, strips).ifPresent(movements::add);
                dyes.stream()
                        .filter(other -> one.compareTo(other) < 0)
                        .forEach(other -> gaps.addAll(gapsOf.gaps(one, other, eluent, strips)));
            }
            problems.throwIfAny();
            return new StripSummary(List.copyOf(movements), List.copyOf(gaps));
        }
    }

    /** @throws ProblemsFound when strips that should agree contradict each other */
    static StripSummary of(Case written, Set<Conclusion> verdicts, Map<String, Limit> limits) {
        return of(written, verdicts, limits, new Remembered<>());
    }

    /**
     * @param known what eluents said before; those with the same strips say the same
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    static StripSummary of(
            Case written,
            Set<Conclusion> verdicts,
            Map<String, Limit> limits,
            Remembered<InOneEluent, StripSummary> known) {
        Problems problems = new Problems();
        List<Movement> movements = new ArrayList<>();
        List<Apart> gaps = new ArrayList<>();
        for (Eluent eluent : eluents(written)) {
            List<Strip> strips = stripsFor(eluent, written, verdicts);
            InOneEluent readings = new InOneEluent(
                    eluent, strips, voidSpots(strips, written.dyes(), verdicts), written.dyes(), limits);
            try {
                StripSummary summary = known.of(readings, InOneEluent::summary);
                movements.addAll(summary.movements());
                gaps.addAll(summary.gaps());
            } catch (ProblemsFound contradiction) {
                contradiction.problems().forEach(problems::add);
            }
        }
        problems.throwIfAny();
        return new StripSummary(List.copyOf(movements), List.copyOf(gaps));
    }

    private static Set<Conclusion> voidSpots(List<Strip> strips, List<Dye> dyes, Set<Conclusion> verdicts) {
        return strips.stream()
                .flatMap(strip -> dyes.stream().map(dye -> (Conclusion) new SpotVerdict(strip, dye, Reading.VOID)))
                .filter(verdicts::contains)
                .collect(Collectors.toSet());
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
