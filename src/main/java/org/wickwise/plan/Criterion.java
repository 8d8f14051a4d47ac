package org.wickwise.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;

/**
 * What can be counted against a plan; less is better. Which counts most stands in {@code rules/preferences.yaml}. Each
 * criterion adds up over the steps, but for creeping and cost, which are known only as the bands go down the bed.
 */
enum Criterion {
    TOGETHER("dyes that leave together") {
        @Override
        double count(Move move, Choices choices) {
            return move.fractions().stream()
                    .mapToInt(fraction -> Integer.bitCount(fraction) - 1)
                    .sum();
        }
    },
    CLOSE_BANDS("bands less than the comfortable distance apart") {
        @Override
        double count(Move move, Choices choices) {
            int close = 0;
            for (int i = 1; i < move.fractions().size(); i++) {
                double earlier = latest(move, move.fractions().get(i - 1), choices);
                double later = earliest(move, move.fractions().get(i), choices);
                close += later - earlier < choices.comfortableColumnVolumes() ? 1 : 0;
            }
            return close;
        }
    },
    BACKWARDS("steps that go back to a weaker eluent") {
        @Override
        double countAfter(OptionalInt before, int eluent, Choices choices) {
            return before.isPresent() && choices.isWeaker(eluent, before.getAsInt()) ? 1 : 0;
        }
    },
    ESTIMATED("steps resting on an estimate") {
        @Override
        double count(Move move, Choices choices) {
            return move.leavingReach(choices).anyMatch(Reach::estimated) ? 1 : 0;
        }
    },
    DOUBTFUL("steps resting on a doubtful reading") {
        @Override
        double count(Move move, Choices choices) {
            return move.leavingReach(choices).anyMatch(Reach::doubtful) ? 1 : 0;
        }
    },
    LAST_ONLY("eluents for the last step only") {
        @Override
        double count(Move move, Choices choices) {
            return move.pourable(choices).lastOnly() ? 1 : 0;
        }
    },
    TOO_FAST("bands too fast to be held") {
        @Override
        double count(Move move, Choices choices) {
            return move.leavingReach(choices)
                    .filter(reach -> reach.behaviour() == Behaviour.RUNS_AHEAD)
                    .count();
        }
    },
    UNTRIED_SOLVENTS("solvents that stand on no strip") {
        @Override
        double count(Move move, Choices choices) {
            return move.pourable(choices).untriedSolvents();
        }
    },
    NOT_HOLDING("packings that do not hold every dye") {
        @Override
        double countPacking(Choices.Packing packing) {
            return packing.notHolding();
        }
    },
    UNTRIED_PACKING("packings that stand on no strip") {
        @Override
        double countPacking(Choices.Packing packing) {
            return packing.tried() ? 0 : 1;
        }
    },
    CREEPING("dyes that creep too far before their own step"),
    BURDEN("burden of the eluents") {
        @Override
        double count(Move move, Choices choices) {
            return move.pourable(choices).burden();
        }
    },
    STEPS("steps") {
        @Override
        double count(Move move, Choices choices) {
            return 1;
        }
    },
    COST("cost");

    private final String words;

    Criterion(String words) {
        this.words = words;
    }

    /** What a step counts whatever was poured before it. */
    double count(Move move, Choices choices) {
        return 0;
    }

    /** What a step counts because of the eluent poured just before it. */
    double countAfter(OptionalInt before, int eluent, Choices choices) {
        return 0;
    }

    double countPacking(Choices.Packing packing) {
        return 0;
    }

    String words() {
        return words;
    }

    static Optional<Criterion> named(String words) {
        return Arrays.stream(values())
                .filter(known -> known.words.equals(words))
                .findFirst();
    }

    static List<String> allWords() {
        return Arrays.stream(values()).map(Criterion::words).toList();
    }

    /** Column volumes until the last of these dyes is off. */
    private static double latest(Move move, int set, Choices choices) {
        Pourable pourable = move.pourable(choices);
        double latest = 0;
        for (int dye = 0; dye < choices.dyes().size(); dye++) {
            if ((set & 1 << dye) != 0) {
                latest = Math.max(latest, columnVolumes(pourable.reach().get(dye), choices.unmeasuredColumnVolumes()));
            }
        }
        return latest;
    }

    /** Column volumes until the first of these dyes appears; 0, the worst case, where nobody measured. */
    private static double earliest(Move move, int set, Choices choices) {
        Pourable pourable = move.pourable(choices);
        double earliest = Double.POSITIVE_INFINITY;
        for (int dye = 0; dye < choices.dyes().size(); dye++) {
            if ((set & 1 << dye) != 0) {
                earliest = Math.min(earliest, columnVolumes(pourable.reach().get(dye), 0));
            }
        }
        return earliest;
    }

    private static double columnVolumes(Optional<Reach> reach, double unmeasured) {
        return reach.flatMap(Reach::retardation)
                .map(RetardationFactor::columnVolumes)
                .orElse(unmeasured);
    }
}
