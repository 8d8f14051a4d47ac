package org.wickwise.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Basis;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** What can be counted against a step. Which counts most stands in {@code rules/preferences.yaml}. */
enum Criterion {
    TOGETHER("dyes that leave together") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return step.fractions().stream()
                    .mapToInt(fraction -> fraction.size() - 1)
                    .sum();
        }
    },
    CLOSE_BANDS("bands less than the comfortable distance apart") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            double comfortable = judgement.limit("comfortable distance");
            int close = 0;
            for (int i = 1; i < step.fractions().size(); i++) {
                double earlier = latest(step.fractions().get(i - 1), step.eluent(), judgement);
                double later = earliest(step.fractions().get(i), step.eluent(), judgement);
                close += later - earlier < comfortable ? 1 : 0;
            }
            return close;
        }
    },
    BACKWARDS("steps that go back to a weaker eluent") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return before.filter(earlier -> Strength.weakerByStrips(step.eluent(), earlier, judgement))
                            .isPresent()
                    ? 1
                    : 0;
        }
    },
    ESTIMATED("steps resting on an estimate") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return restsOnEstimate(step, judgement) ? 1 : 0;
        }
    },
    DOUBTFUL("steps resting on a doubtful reading") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return restsOnDoubt(step, judgement) ? 1 : 0;
        }
    },
    LAST_ONLY("eluents for the last step only") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return judgement.holds(new Conclusion.Fitness(step.eluent(), Conclusion.Fit.LAST_ONLY)) ? 1 : 0;
        }
    },
    TOO_FAST("bands too fast to be held") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return step.leaving().stream()
                    .filter(dye -> judgement
                            .behaviour(dye, step.eluent())
                            .filter(behaves -> behaves.behaviour() == Behaviour.RUNS_AHEAD)
                            .isPresent())
                    .count();
        }
    },
    UNTRIED_SOLVENTS("solvents that stand on no strip") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return step.eluent().parts().stream()
                    .filter(part -> judgement.judged().strips().stream()
                            .noneMatch(strip -> strip.eluent().contains(part.solvent())))
                    .count();
        }
    },
    BURDEN("burden of the eluents") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return burden.of(step.eluent());
        }
    },
    STEPS("steps") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return 1;
        }
    },
    VOLUME("column volumes") {
        @Override
        double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden) {
            return latest(step.leaving(), step.eluent(), judgement);
        }
    };

    private static final double UNMEASURED_COLUMN_VOLUMES = 3;

    private final String words;

    Criterion(String words) {
        this.words = words;
    }

    abstract double count(Step step, Optional<Eluent> before, Judgement judgement, Burden burden);

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

    static boolean restsOnEstimate(Step step, Judgement judgement) {
        return step.leaving().stream().anyMatch(dye -> judgement
                .behaviour(dye, step.eluent())
                .filter(behaves -> behaves.basis() == Basis.ESTIMATED)
                .isPresent());
    }

    static boolean restsOnDoubt(Step step, Judgement judgement) {
        boolean doubtfulStrip = judgement.judged().strips().stream()
                .filter(strip -> strip.eluent().equals(step.eluent()))
                .anyMatch(strip -> isDoubtful(strip, step, judgement));
        boolean borderline =
                step.leaving().stream().anyMatch(dye -> judgement.holds(new Conclusion.Borderline(dye, step.eluent())));
        return doubtfulStrip || borderline;
    }

    private static boolean isDoubtful(Strip strip, Step step, Judgement judgement) {
        return judgement.holds(new Conclusion.StripVerdict(strip, Reading.DOUBTFUL))
                || step.leaving().stream()
                        .filter(dye -> !judgement.holds(new Conclusion.SpotVerdict(strip, dye, Reading.VOID)))
                        .anyMatch(dye -> judgement.holds(new Conclusion.SpotVerdict(strip, dye, Reading.DOUBTFUL)));
    }

    /** Column volumes until the last of these dyes is off; a usual figure where nobody measured. */
    static double latest(List<Dye> dyes, Eluent eluent, Judgement judgement) {
        return dyes.stream()
                .mapToDouble(dye -> columnVolumes(dye, eluent, judgement, UNMEASURED_COLUMN_VOLUMES))
                .max()
                .orElse(0);
    }

    /** Column volumes until the first of these dyes appears; 0, the worst case, where nobody measured. */
    private static double earliest(List<Dye> dyes, Eluent eluent, Judgement judgement) {
        return dyes.stream()
                .mapToDouble(dye -> columnVolumes(dye, eluent, judgement, 0))
                .min()
                .orElse(0);
    }

    private static double columnVolumes(Dye dye, Eluent eluent, Judgement judgement, double unmeasured) {
        return judgement
                .measured(dye, eluent)
                .map(measured -> measured.retardationFactor().columnVolumes())
                .orElse(unmeasured);
    }
}
