package org.wickwise.substance;

import java.util.List;
import java.util.Optional;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** Solvents and stationary phases by the names people write; an unknown name is reported with what was probably meant. */
public final class NamesOfTheTable {

    private final SolventData data;
    private final Problems problems;

    public NamesOfTheTable(SolventData data, Problems problems) {
        this.data = data;
        this.problems = problems;
    }

    /** The solvent, or nothing after the problem was reported. */
    public Optional<Solvent> solvent(String name, Place place) {
        return solventOr("", name, place);
    }

    /**
     * As {@link #solvent}.
     *
     * @param otherwise what else could stand there, such as "or a blend"
     */
    Optional<Solvent> solventOr(String otherwise, String name, Place place) {
        Optional<Solvent> solvent = data.solvent(name);
        if (solvent.isEmpty()) {
            problems.add(
                    place,
                    "the solvent `" + name + "` is not in the table",
                    "one of its " + data.solvents().size() + " solvents"
                            + (otherwise.isEmpty() ? "" : ", " + otherwise),
                    NearMiss.suggestion(
                            name,
                            data.solventNames(),
                            data.solvents().stream().map(Solvent::name).toList()));
        }
        return solvent;
    }

    /** The stationary phase, or nothing after the problem was reported. */
    public Optional<StationaryPhase> stationaryPhase(String name, Place place) {
        Optional<StationaryPhase> phase = data.stationaryPhase(name);
        if (phase.isEmpty()) {
            problems.add(
                    place,
                    "`" + name + "` is not a known stationary phase",
                    "one of " + String.join(", ", data.stationaryPhaseNames()),
                    NearMiss.suggestion(name, data.stationaryPhaseNames(), List.of()));
        }
        return phase;
    }
}
