package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Movement.Measured;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What of a plan is doubtful: readings, contradictions, behaviours near a limit, dyes that leave together or creep. */
final class DoubtLines {

    private final Judgement judgement;
    private final Optional<Route> route;
    private final Set<Eluent> poured;
    private final List<PlanLine> lines = new ArrayList<>();
    private int doubts;

    DoubtLines(Judgement judgement, Optional<Route> route) {
        this.judgement = judgement;
        this.route = route;
        this.poured = route.map(Route::poured).orElse(Set.of());
    }

    List<PlanLine> lines() {
        strips();
        spots();
        contradictions();
        borderlines();
        route.ifPresent(this::togetherDyes);
        route.ifPresent(this::creepingDyes);
        return lines;
    }

    private void strips() {
        for (Conclusion.StripVerdict verdict : judgement.all(Conclusion.StripVerdict.class)) {
            if (verdict.reading() == Reading.USABLE) {
                continue;
            }
            Reason.Concluded reason = judgement.reason(verdict);
            reason.arguments().stream()
                    .map(Reason.Argument::because)
                    .distinct()
                    .forEach(because -> doubt(verdictWord(verdict.reading()) + because, reason));
        }
    }

    private static String verdictWord(Reading reading) {
        return Words.capital(reading.word()) + ": ";
    }

    private void spots() {
        judgement.all(Conclusion.SpotVerdict.class).forEach(verdict -> {
            Reason.Concluded reason = judgement.reason(verdict);
            reason.arguments().forEach(argument -> doubt(verdictWord(verdict.reading()) + argument.because(), reason));
        });
    }

    private void contradictions() {
        judgement
                .contradictions()
                .forEach(found -> doubt(
                        Words.capital(found.words(judgement)) + ". Nothing is planned on either.",
                        found.reason(judgement)));
    }

    private void borderlines() {
        judgement.all(Conclusion.Borderline.class).stream()
                .filter(borderline -> poured.contains(borderline.eluent()))
                .forEach(borderline -> {
                    Reason.Concluded reason = judgement.reason(borderline);
                    reason.arguments().forEach(argument -> doubt(argument.because(), reason));
                });
    }

    private void togetherDyes(Route found) {
        for (Step step : found.steps()) {
            for (List<Dye> fraction : step.fractions()) {
                if (fraction.size() > 1) {
                    String names = Words.joined(fraction.stream().map(Dye::name).toList());
                    String text = names + " leave together in " + step.eluent() + elsewhere(fraction) + ".";
                    List<Reason> grounds = fraction.stream()
                            .flatMap(dye -> judgement.behaviour(dye, step.eluent()).stream())
                            .map(behaves -> (Reason) judgement.reason(behaves))
                            .toList();
                    doubt(text, new Reason.Chosen(text, List.of(), grounds));
                }
            }
        }
    }

    /** In which eluents two of these dyes would leave a column one after the other. */
    private String elsewhere(List<Dye> fraction) {
        List<String> eluents = judgement.all(Conclusion.LeavesBefore.class).stream()
                .filter(leaves -> fraction.contains(leaves.first()) && fraction.contains(leaves.second()))
                .filter(leaves -> !judgement.holds(new Conclusion.Fitness(leaves.eluent(), Conclusion.Fit.UNFIT)))
                .map(leaves -> leaves.first() + " would leave before " + leaves.second() + " in " + leaves.eluent())
                .distinct()
                .toList();
        return eluents.isEmpty()
                ? "; no eluent that may enter parts them on a column"
                : "; " + String.join("; ", eluents) + ", which did not fit into a plan that counts less";
    }

    /** A dye that is to stay moves a little in every eluent poured before its own. */
    private void creepingDyes(Route found) {
        Limit most = judgement.limits().get("creep before release limit");
        for (Dye dye : judgement.judged().dyes()) {
            double share = 0;
            List<Reason> grounds = new ArrayList<>(List.of(most.reason()));
            List<String> terms = new ArrayList<>();
            for (int i = 0; i < found.steps().size(); i++) {
                Step step = found.steps().get(i);
                Optional<Measured> measured = judgement.measured(dye, step.eluent());
                if (!step.staying().contains(dye)) {
                    break;
                }
                if (measured.isEmpty() || measured.get().value() == 0) {
                    continue;
                }
                double columnVolumes = found.elution().poured().get(i);
                double retention = measured.get().retardationFactor().retentionFactor();
                share += columnVolumes / retention;
                terms.add(Numbers.fixed(columnVolumes, 1) + " column volumes / k " + Numbers.fixed(retention, 1));
                grounds.add(measured.get().reason());
            }
            if (Numbers.steady(share) > most.value()) {
                String text = dye + " creeps about " + Numbers.plain(100 * Math.min(1, share), 0)
                        + " % down the bed before its own step; keep the steps before it short.";
                doubt(
                        text,
                        new Reason.Calculated(
                                text,
                                "x = sum of column volumes / k = " + String.join(" + ", terms),
                                "V_R = V0 (1 + k); under a held eluent a band moves 1/k of the bed in each column volume",
                                grounds));
            }
        }
    }

    private void doubt(String text, Reason reason) {
        doubts++;
        lines.add(new PlanLine("doubt-" + doubts, Section.DOUBTS, text, reason));
    }
}
