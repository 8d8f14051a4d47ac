package org.wickwise.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;

/** Pours every eluent after every other with every tail, and keeps whatever brings every dye off: slow and plain. */
final class TryingEverything {

    private final Choices choices;
    private final Preferences preferences;
    private final boolean stocked;
    private final Map<String, Route> byNames = new LinkedHashMap<>();
    private long stepsTried;

    TryingEverything(Choices choices, Preferences preferences, boolean stocked) {
        this.choices = choices;
        this.preferences = preferences;
        this.stocked = stocked;
        for (int first = 0; first < choices.pourable().size(); first++) {
            for (Packing packing : choices.pourable().get(first).packings()) {
                pour(Pouring.packed(packing, choices, preferences), first);
            }
        }
    }

    List<Route> routes() {
        return byNames.values().stream().sorted(Comparator.naturalOrder()).toList();
    }

    long stepsTried() {
        return stepsTried;
    }

    private void pour(Pouring pouring, int eluent) {
        Pourable pourable = choices.pourable().get(eluent);
        Optional<Move> move = Move.of(pouring.on(), eluent, choices);
        if (move.isEmpty() || pourable.lastOnly() && move.get().staying() != 0) {
            return;
        }
        boolean first = pouring.moves().isEmpty();
        boolean partsNothing =
                first && move.get().staying() == 0 && move.get().fractions().size() == 1;
        if (partsNothing) {
            return;
        }
        for (double tail : preferences.wishes().tailsToWaitFor()) {
            stepsTried++;
            Pouring next = pouring.then(move.get(), tail);
            double poured = next.poured().get(next.poured().size() - 1);
            boolean tooMuch = stocked
                    && pourable.heldColumnVolumes().isPresent()
                    && poured > pourable.heldColumnVolumes().getAsDouble();
            if (tooMuch) {
                continue;
            }
            if (next.on() == 0) {
                Route route = Route.of(next);
                byNames.merge(route.names(), route, (one, other) -> one.compareTo(other) <= 0 ? one : other);
            } else {
                after(next, eluent);
            }
        }
    }

    private void after(Pouring pouring, int last) {
        for (int eluent = 0; eluent < choices.pourable().size(); eluent++) {
            if (eluent != last && !choices.pourable().get(eluent).notAfter().get(last)) {
                pour(pouring, eluent);
            }
        }
    }
}
