package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** What becomes of an order of eluents that somebody thought of: the best route that pours it, or where it goes wrong. */
public sealed interface AskedOrder {

    /** It brings every dye off. */
    record Sound(Route route) implements AskedOrder {}

    /** What can go wrong with a step. */
    enum Trouble {
        MAY_NOT_ENTER,
        ALREADY_POURED,
        DOES_NOT_MIX,
        LAST_ONLY,
        UNKNOWN,
        MOVES_NOTHING,
        SMEARS,
        NOT_PACKED,
        NOT_ENOUGH,
        PARTS_NOTHING,
        LEAVES_SOME_ON
    }

    /**
     * It goes wrong at a step.
     *
     * @param step its number, from 1
     * @param dyes those concerned: of which nothing is known, which stay on, or the first leaves and smears the second
     */
    record Broken(int step, Eluent eluent, Trouble trouble, List<Dye> dyes) implements AskedOrder {
        public Broken {
            dyes = List.copyOf(dyes);
        }
    }

    /** @param order at least one eluent */
    static AskedOrder of(List<Eluent> order, Choices choices, Preferences preferences) {
        List<Move> moves = new ArrayList<>();
        int on = choices.everyDye();
        for (int i = 0; i < order.size(); i++) {
            Optional<Trouble> barred = barred(order, i, on, choices);
            if (barred.isPresent()) {
                return new Broken(i + 1, order.get(i), barred.get(), List.of());
            }
            int eluent = numberOf(order.get(i), choices);
            Optional<Move> move = Move.of(on, eluent, choices);
            if (move.isEmpty()) {
                return unmoved(i + 1, on, choices.pourable().get(eluent), choices);
            }
            moves.add(move.get());
            on = move.get().staying();
            if (choices.pourable().get(eluent).lastOnly() && on != 0) {
                return new Broken(i + 1, order.get(i), Trouble.LAST_ONLY, choices.named(on));
            }
        }
        return on == 0 ? poured(order, moves, choices, preferences) : leftOver(order, choices.named(on));
    }

    private static Optional<Trouble> barred(List<Eluent> order, int step, int on, Choices choices) {
        int eluent = numberOf(order.get(step), choices);
        if (eluent < 0) {
            return Optional.of(Trouble.MAY_NOT_ENTER);
        }
        if (on == 0) {
            return Optional.of(Trouble.MOVES_NOTHING);
        }
        if (step == 0) {
            return choices.pourable().get(eluent).packings().isEmpty()
                    ? Optional.of(Trouble.NOT_PACKED)
                    : Optional.empty();
        }
        int before = numberOf(order.get(step - 1), choices);
        if (before == eluent) {
            return Optional.of(Trouble.ALREADY_POURED);
        }
        return choices.pourable().get(eluent).notAfter().get(before)
                ? Optional.of(Trouble.DOES_NOT_MIX)
                : Optional.empty();
    }

    private static int numberOf(Eluent eluent, Choices choices) {
        return IntStream.range(0, choices.pourable().size())
                .filter(i -> choices.pourable().get(i).eluent().equals(eluent))
                .findFirst()
                .orElse(-1);
    }

    private static AskedOrder unmoved(int step, int on, Pourable pourable, Choices choices) {
        List<Dye> leaving = new ArrayList<>();
        List<Dye> staying = new ArrayList<>();
        List<Dye> unknown = new ArrayList<>();
        for (Dye dye : choices.named(on)) {
            pourable.reach()
                    .get(choices.dyes().indexOf(dye))
                    .ifPresentOrElse(
                            reach -> (reach.behaviour().leaves() ? leaving : staying).add(dye), () -> unknown.add(dye));
        }
        if (!unknown.isEmpty()) {
            return new Broken(step, pourable.eluent(), Trouble.UNKNOWN, unknown);
        }
        if (leaving.isEmpty()) {
            return new Broken(step, pourable.eluent(), Trouble.MOVES_NOTHING, staying);
        }
        for (Dye first : leaving) {
            for (Dye second : staying) {
                if (!pourable.isBefore(
                        choices.dyes().indexOf(first), choices.dyes().indexOf(second))) {
                    return new Broken(step, pourable.eluent(), Trouble.SMEARS, List.of(first, second));
                }
            }
        }
        throw new IllegalStateException(pourable.eluent() + " moves dyes cleanly, but no step was made of it");
    }

    private static AskedOrder leftOver(List<Eluent> order, List<Dye> left) {
        return new Broken(order.size(), order.get(order.size() - 1), Trouble.LEAVES_SOME_ON, left);
    }

    private static AskedOrder poured(List<Eluent> order, List<Move> moves, Choices choices, Preferences preferences) {
        if (moves.get(0).staying() == 0 && moves.get(0).fractions().size() == 1) {
            return new Broken(1, order.get(0), Trouble.PARTS_NOTHING, choices.dyes());
        }
        List<Pouring> pourings = new ArrayList<>();
        for (Packing packing : moves.get(0).pourable(choices).packings()) {
            pourings.add(Pouring.packed(packing, choices, preferences));
        }
        for (int i = 0; i < moves.size(); i++) {
            Move move = moves.get(i);
            pourings = pourings.stream()
                    .flatMap(pouring ->
                            preferences.wishes().tailsToWaitFor().stream().map(tail -> pouring.then(move, tail)))
                    .filter(Pouring::isWithinTheBottle)
                    .toList();
            if (pourings.isEmpty()) {
                return new Broken(i + 1, order.get(i), Trouble.NOT_ENOUGH, List.of());
            }
        }
        return new Sound(
                pourings.stream().map(Route::of).min(Comparator.naturalOrder()).orElseThrow());
    }
}
