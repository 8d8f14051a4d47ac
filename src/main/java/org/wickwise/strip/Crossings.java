package org.wickwise.strip;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** Which dyes change places between the eluents of the strips: such a dye lies on no line that holds for both. */
final class Crossings {

    private final List<Movement.Measured> measured;
    private final Estimates.Allowances allowances;
    private final Map<Eluent, List<Movement.Measured>> byEluent;
    private final Set<Order> orders = new HashSet<>();

    /** That one dye is surely ahead of another in an eluent. */
    private record Order(Eluent eluent, Dye ahead, Dye behind) {}

    Crossings(List<Movement.Measured> measured, Estimates.Allowances allowances) {
        this.measured = measured;
        this.allowances = allowances;
        this.byEluent = measured.stream()
                .collect(Collectors.groupingBy(Movement.Measured::eluent, LinkedHashMap::new, Collectors.toList()));
        byEluent.forEach((eluent, side) -> side.forEach(one -> side.stream()
                .filter(other -> isAhead(one, other))
                .forEach(other -> orders.add(new Order(eluent, one.dye(), other.dye())))));
    }

    /** With which other dye this one changes places, and where; empty where it does not. */
    Optional<String> of(Dye dye) {
        List<Eluent> eluents = measured.stream()
                .filter(movement -> movement.dye().equals(dye))
                .map(Movement.Measured::eluent)
                .toList();
        return eluents.stream()
                .flatMap(here -> eluents.stream().flatMap(there -> between(dye, here, there).stream()))
                .findFirst();
    }

    private Optional<String> between(Dye dye, Eluent here, Eluent there) {
        return byEluent.get(here).stream()
                .map(Movement.Measured::dye)
                .filter(other ->
                        orders.contains(new Order(here, dye, other)) && orders.contains(new Order(there, other, dye)))
                .findFirst()
                .map(other -> dye + " and " + other + " change places between " + here + " and " + there);
    }

    private boolean isAhead(Movement.Measured one, Movement.Measured other) {
        double gap = Numbers.steady(one.value() - other.value());
        double uncertainty = Math.hypot(
                one.retardationFactor().uncertainty(), other.retardationFactor().uncertainty());
        double chance = 1 - new NormalDistribution(gap, uncertainty).cumulativeProbability(allowances.touchingGap());
        return gap >= allowances.partingGap() && Numbers.steady(chance) >= allowances.surenessOfParting();
    }
}
