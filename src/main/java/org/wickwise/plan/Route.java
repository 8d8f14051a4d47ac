package org.wickwise.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Movement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/**
 * Eluents in the order of pouring that bring every dye off a column packed for them.
 *
 * @param elution how much is poured and when each dye leaves
 * @param counted what each criterion counts against this route, in the order of the preferences
 * @param cost what its cost is made of
 */
public record Route(MayPack packing, List<Step> steps, Elution elution, List<Double> counted, CostTerms cost)
        implements Comparable<Route> {

    public Route {
        steps = List.copyOf(steps);
        counted = List.copyOf(counted);
    }

    static Route of(Pouring pouring) {
        Flasks flasks = Flasks.of(pouring);
        List<Step> steps = IntStream.range(0, pouring.moves().size())
                .mapToObj(i -> Step.of(pouring.moves().get(i), pouring.tails().get(i), pouring.choices()))
                .toList();
        return new Route(
                pouring.packing().conclusion(),
                steps,
                Elution.of(pouring),
                Arrays.stream(pouring.finalCounts(flasks)).boxed().toList(),
                CostTerms.of(pouring, flasks));
    }

    double[] counts() {
        return counted.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The place of the first criterion that tells two routes apart; -1 when none does. */
    public int firstDifference(Route other) {
        return Counts.firstDifference(counts(), other.counts());
    }

    /** Better routes first; where no criterion tells, by the names of the eluents and of the packing. */
    @Override
    public int compareTo(Route other) {
        int byCounts = Counts.compare(counts(), other.counts());
        if (byCounts != 0) {
            return byCounts;
        }
        int byNames = names().compareTo(other.names());
        return byNames != 0 ? byNames : packing.packing().compareTo(other.packing.packing());
    }

    /** What the band of a dye is reckoned from: what was measured of it in each eluent poured up to the one it leaves in. */
    List<Reason> groundsOfBand(Dye dye, Judgement judgement) {
        int own = IntStream.range(0, steps.size())
                .filter(step -> steps.get(step).leaving().contains(dye))
                .findFirst()
                .orElseThrow();
        return steps.subList(0, own + 1).stream()
                .flatMap(step -> judgement.measured(dye, step.eluent()).stream())
                .map(Movement.Measured::reason)
                .toList();
    }

    /** Everything that goes through the column. */
    Set<Eluent> poured() {
        Set<Eluent> poured = new TreeSet<>(Set.of(packing.packing()));
        steps.forEach(step -> poured.add(step.eluent()));
        return poured;
    }

    /** "A, then B; blue and red leave together"; two plans that a person would call the same say the same. */
    public String inShort() {
        String together = steps.stream()
                .flatMap(step -> step.fractions().stream())
                .filter(fraction -> fraction.size() > 1)
                .map(fraction -> Words.joined(fraction.stream().map(Dye::name).toList()) + " leave together")
                .collect(Collectors.joining("; "));
        return together.isEmpty() ? names() : names() + "; " + together;
    }

    /** "A, then B". */
    public String names() {
        return steps.stream().map(step -> step.eluent().name()).collect(Collectors.joining(", then "));
    }
}
