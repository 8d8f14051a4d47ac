package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

/**
 * A case with what is remembered of its dyes.
 *
 * @param withMemory its own strips, and a remembered one for each eluent in which it has none
 * @param recollections what is remembered of its dyes on its stationary phase, by eluent and dye
 */
public record Recall(Case withMemory, List<Recollection> recollections) {

    public Recall {
        recollections = List.copyOf(recollections);
    }

    public static Recall of(Case written, Memory memory, Place notebook) {
        Set<Eluent> run = written.strips().stream().map(Strip::eluent).collect(Collectors.toSet());
        List<Strip> strips = new ArrayList<>(written.strips());
        List<Recollection> all = new ArrayList<>();
        for (Eluent eluent : memory.eluents(written.dyes(), written.column().phase())) {
            List<Recollection> there = written.dyes().stream()
                    .flatMap(dye -> memory.of(dye, eluent, written.column().phase()).stream())
                    .toList();
            all.addAll(there);
            if (!run.contains(eluent)) {
                strips.add(remembered(eluent, there, written, notebook));
            }
        }
        return new Recall(written.with(strips), all);
    }

    private static Strip remembered(Eluent eluent, List<Recollection> there, Case written, Place notebook) {
        List<Spot> spots = there.stream()
                .map(known -> new Spot(List.of(known.dye()), known.position(), notebook))
                .toList();
        return new Strip(
                eluent,
                written.column().phase(),
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                spots,
                List.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                notebook);
    }

    public Optional<Recollection> of(Dye dye, Eluent eluent) {
        return recollections.stream()
                .filter(known -> known.dye().equals(dye) && known.eluent().equals(eluent))
                .findFirst();
    }

    /** The eluents in which something is remembered, by name. */
    public List<Eluent> eluents() {
        return recollections.stream().map(Recollection::eluent).distinct().toList();
    }

    /** The dyes of which nothing is remembered on this stationary phase. */
    public List<Dye> unknown() {
        Set<Dye> known = recollections.stream().map(Recollection::dye).collect(Collectors.toSet());
        return withMemory.dyes().stream().filter(dye -> !known.contains(dye)).toList();
    }
}
