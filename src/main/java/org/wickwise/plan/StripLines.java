package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Words;

/** What the strips show: movement, pairs that do not part, and the eluents that may not go in. */
final class StripLines {

    private static final String PLUS_MINUS = "±";

    private static final int MOST_PAIRS_ONE_BY_ONE = 3;

    private final Judgement judgement;
    private final List<PlanLine> lines = new ArrayList<>();

    StripLines(Judgement judgement) {
        this.judgement = judgement;
    }

    List<PlanLine> lines() {
        List<Eluent> written = judgement.judged().strips().stream()
                .map(Strip::eluent)
                .distinct()
                .sorted()
                .toList();
        for (Eluent eluent : written) {
            if (judgement.tried(eluent)) {
                movement(eluent);
                unparted(eluent);
            }
            fitness(eluent);
        }
        written.forEach(before -> written.forEach(after -> unmixed(before, after)));
        return lines;
    }

    private void movement(Eluent eluent) {
        List<Reason> grounds = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Dye dye : judgement.judged().dyes()) {
            judgement.behaviour(dye, eluent).ifPresent(behaves -> {
                grounds.add(judgement.reason(behaves));
                String rf = judgement
                        .measured(dye, eluent)
                        .map(measured -> " (Rf " + measured.retardationFactor().shown() + ")")
                        .orElse(" (by eye)");
                words.add(dye + " " + behaves.behaviour().word() + rf);
            });
        }
        String text = "In " + eluent + ": " + String.join("; ", words) + "." + roles(eluent);
        boolean explained = lines.stream().anyMatch(line -> line.text().contains(PLUS_MINUS));
        String meaning =
                text.contains(PLUS_MINUS) && !explained ? " Behind ± stands twice the standard uncertainty." : "";
        lines.add(new PlanLine(
                "strip-" + Words.slug(eluent.name()),
                section(eluent),
                text + meaning,
                new Reason.Chosen(text, List.of(), grounds)));
    }

    private Section section(Eluent eluent) {
        return judgement.isRemembered(eluent) ? Section.REMEMBERED : Section.STRIPS;
    }

    private String roles(Eluent eluent) {
        if (judgement.holds(new Conclusion.Holds(eluent))) {
            return " It holds.";
        }
        if (judgement.holds(new Conclusion.Sweeps(eluent))) {
            return " It sweeps.";
        }
        List<String> released = judgement.all(Conclusion.Releases.class).stream()
                .filter(releases -> releases.eluent().equals(eluent))
                .map(releases -> releases.dye().name())
                .toList();
        return released.isEmpty() ? "" : " It releases " + Words.joined(released) + ".";
    }

    /**
     * Pairs that touch or run together, unless both stay at the origin, where nothing else is to be expected. A few are told one by
     * one, many in one line.
     */
    private void unparted(Eluent eluent) {
        List<Conclusion.Between> pairs = judgement.all(Conclusion.Between.class).stream()
                .filter(between -> between.eluent().equals(eluent)
                        && between.separation() != Separation.PARTED
                        && !bothStay(between)
                        && !isToldTheOtherWayRound(between))
                .toList();
        if (pairs.size() > MOST_PAIRS_ONE_BY_ONE) {
            String text = "In " + eluent + " these are not safely parted: "
                    + pairs.stream()
                            .map(between -> between.ahead() + " and " + between.behind())
                            .collect(Collectors.joining("; "))
                    + ".";
            List<Reason> grounds = pairs.stream().<Reason>map(judgement::reason).toList();
            lines.add(new PlanLine(
                    "pairs-" + Words.slug(eluent.name()),
                    section(eluent),
                    text,
                    new Reason.Chosen(text, List.of(), grounds)));
        } else {
            pairs.forEach(this::unparted);
        }
    }

    private void unparted(Conclusion.Between between) {
        Eluent eluent = between.eluent();
        Reason.Concluded reason = judgement.reason(between);
        lines.add(new PlanLine(
                "pair-" + Words.slug(eluent.name()) + "-"
                        + Words.slug(between.ahead().name()) + "-"
                        + Words.slug(between.behind().name()),
                section(eluent),
                "In " + eluent + " " + between.ahead() + " and " + between.behind() + " are not safely parted: "
                        + reason.arguments().stream()
                                .map(Reason.Argument::because)
                                .collect(Collectors.joining(" ")),
                reason));
    }

    private boolean isToldTheOtherWayRound(Conclusion.Between between) {
        return between.separation() == Separation.TOGETHER
                && judgement.holds(new Conclusion.Between(
                        between.eluent(), between.behind(), between.ahead(), Separation.TOGETHER))
                && between.ahead().compareTo(between.behind()) > 0;
    }

    private boolean bothStay(Conclusion.Between between) {
        return List.of(between.ahead(), between.behind()).stream().allMatch(dye -> judgement
                .behaviour(dye, between.eluent())
                .filter(behaves -> behaves.behaviour() == Behaviour.STAYS)
                .isPresent());
    }

    private void fitness(Eluent eluent) {
        for (Fit fit : List.of(Fit.UNFIT, Fit.LAST_ONLY)) {
            Conclusion.Fitness fitness = new Conclusion.Fitness(eluent, fit);
            if (judgement.holds(fitness)) {
                Reason.Concluded reason = judgement.reason(fitness);
                String why = reason.arguments().stream()
                        .map(Reason.Argument::because)
                        .distinct()
                        .collect(Collectors.joining(" "));
                String verdict = fit == Fit.UNFIT ? "may not enter this column" : "may enter as the last step only";
                lines.add(new PlanLine(
                        "fitness-" + Words.slug(eluent.name()),
                        Section.FITNESS,
                        Words.capital(eluent.name()) + " " + verdict + ". " + why,
                        reason));
                return;
            }
        }
    }

    /**
     * Two eluents that may both enter, but not one right after the other; and what may go between them. Where the same
     * rules bar both orders, one line tells both.
     */
    private void unmixed(Eluent before, Eluent after) {
        Conclusion.MayNotFollow conclusion = new Conclusion.MayNotFollow(before, after);
        boolean bothEnter = Stream.of(before, after)
                .noneMatch(eluent -> judgement.holds(new Conclusion.Fitness(eluent, Fit.UNFIT)));
        boolean eitherWay = rulesAgainst(before, after).equals(rulesAgainst(after, before));
        boolean isToldAlready = eitherWay && before.compareTo(after) > 0;
        if (!bothEnter || isToldAlready || !judgement.holds(conclusion)) {
            return;
        }
        lines.add(new PlanLine(
                "unmixed-" + Words.slug(before.name()) + "-" + Words.slug(after.name()),
                Section.FITNESS,
                barred(conclusion, eitherWay) + " " + bridge(before, after, eitherWay),
                judgement.reason(conclusion)));
    }

    private String barred(Conclusion.MayNotFollow conclusion, boolean eitherWay) {
        Eluent before = conclusion.before();
        Eluent after = conclusion.after();
        if (eitherWay && doNotMix(before, after)) {
            return Words.capital(before.name()) + " and " + after
                    + " do not mix: neither may directly follow the other.";
        }
        String why = judgement.reason(conclusion).arguments().stream()
                .map(Reason.Argument::because)
                .distinct()
                .collect(Collectors.joining(" "));
        return eitherWay
                ? "Of " + before + " and " + after + " neither may directly follow the other. " + why
                : Words.capital(after.name()) + " may not directly follow " + before + ". " + why;
    }

    private boolean doNotMix(Eluent one, Eluent other) {
        return judgement.miscibility().parting(one, other).isPresent();
    }

    private Set<String> rulesAgainst(Eluent before, Eluent after) {
        Conclusion.MayNotFollow conclusion = new Conclusion.MayNotFollow(before, after);
        return judgement.holds(conclusion)
                ? judgement.reason(conclusion).arguments().stream()
                        .map(Reason.Argument::ruleId)
                        .collect(Collectors.toSet())
                : Set.of();
    }

    private String bridge(Eluent before, Eluent after, boolean eitherWay) {
        List<String> bridges = judgement.miscibility().between(before, after).stream()
                .filter(bridge ->
                        judgement.judged().shelf().bottleOf(Eluent.neat(bridge)).isPresent())
                .filter(bridge -> !judgement.holds(new Conclusion.Fitness(Eluent.neat(bridge), Fit.UNFIT)))
                .filter(bridge -> mayGoBetween(before, Eluent.neat(bridge), after)
                        && (!eitherWay || mayGoBetween(after, Eluent.neat(bridge), before)))
                .map(Solvent::name)
                .toList();
        if (bridges.isEmpty()) {
            return doNotMix(before, after)
                    ? "Nothing on the shelf mixes with both."
                    : "Nothing on the shelf is listed to go between them.";
        }
        return "Between them goes about one column volume of " + String.join(" or ", bridges)
                + ", which mixes with both; it may move dyes, so run a strip in it first.";
    }

    private boolean mayGoBetween(Eluent before, Eluent bridge, Eluent after) {
        return !judgement.holds(new Conclusion.MayNotFollow(before, bridge))
                && !judgement.holds(new Conclusion.MayNotFollow(bridge, after));
    }
}
