package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.Loading.Plug;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What a case itself says against reckoning how purely the dyes of a route leave. */
record Misgivings(Judgement judgement, Route route) {

    /** Whether some step was tried on another stationary phase only. */
    boolean isGuess() {
        return route.steps().stream().anyMatch(step -> judgement.triedElsewhereOnly(step.eluent()));
    }

    /** The dyes that tail in the eluent in which they leave, in the order of leaving. */
    List<Dye> tailing() {
        return tails().stream().map(Conclusion.Tails::dye).toList();
    }

    private List<Conclusion.Tails> tails() {
        return route.steps().stream()
                .flatMap(step -> step.leaving().stream().map(dye -> new Conclusion.Tails(dye, step.eluent())))
                .filter(judgement::holds)
                .toList();
    }

    /** The dyes of whose flasks no purity can be told: those that tail, and each that leaves next after one of them. */
    List<Dye> withoutPurity() {
        List<Dye> inOrder = route.elution().bands().keySet().stream()
                .sorted(Comparator.comparingDouble(
                        dye -> route.elution().bands().get(dye).middleMillilitres()))
                .toList();
        if (isGuess()) {
            return inOrder;
        }
        List<Dye> tailing = tailing();
        List<Dye> without = new ArrayList<>();
        for (int i = 0; i < inOrder.size(); i++) {
            if (tailing.contains(inOrder.get(i)) || i > 0 && tailing.contains(inOrder.get(i - 1))) {
                without.add(inOrder.get(i));
            }
        }
        return without;
    }

    /** Whether nothing speaks against the later end of the ranges of these dyes. */
    boolean areEndsSure(List<Dye> dyes) {
        return !isGuess() && tailing().stream().noneMatch(dyes::contains);
    }

    /** Why a figure is missing for some of these dyes: " No purity is reckoned of ...: ..."; empty where none is. */
    String why(String figure, List<Dye> dyes) {
        List<Dye> without = withoutPurity().stream().filter(dyes::contains).toList();
        if (without.isEmpty()) {
            return "";
        }
        return " No " + figure + " is reckoned"
                + (isGuess()
                        ? ": the strips were run on another stationary phase and do not tell how far apart the bands leave on"
                                + " this one."
                        : " of " + names(without) + ": " + (without.equals(tailing()) ? itOrThey() : names(tailing()))
                                + " streaked, and nobody can say how far "
                                + (tailing().size() == 1 ? "its tail reaches." : "their tails reach."));
    }

    private String itOrThey() {
        return tailing().size() == 1 ? "it" : "they";
    }

    /** What "in short" has to say of it, each sentence with a space before it. */
    String inShort() {
        StringBuilder text = new StringBuilder();
        if (isGuess()) {
            text.append(
                    " A guess: strips were run on another stationary phase than the column's, and an Rf does not carry"
                            + " over.");
        }
        if (!tailing().isEmpty()) {
            text.append(" In doubt: " + names(tailing()) + " streaked on the "
                    + (tails().stream().map(Conclusion.Tails::eluent).distinct().count() == 1 ? "strip" : "strips")
                    + ", so nobody can say how pure the fractions are.");
        }
        wideLoad()
                .ifPresent(plug -> text.append(" In doubt: the load of " + Numbers.plain(plug.millilitres(), 2)
                        + " mL fills at most about " + Numbers.poured(100 * Math.min(1, plug.shareOfBed()))
                        + " % of the bed and widens the bands."));
        return text.toString();
    }

    private Optional<Plug> wideLoad() {
        Loading loading = new Loading(judgement);
        return loading.plug(route.packing().packing()).filter(loading::isWide);
    }

    /** What these sentences rest on. */
    List<Reason> grounds() {
        List<Reason> grounds = new ArrayList<>();
        tails().forEach(tails -> grounds.add(judgement.reason(tails)));
        wideLoad().ifPresent(plug -> {
            grounds.add(plug.leastHeld().reason());
            grounds.add(judgement.limits().get("widest load").reason());
        });
        return grounds;
    }

    private static String names(List<Dye> dyes) {
        return Words.joined(dyes.stream().map(Dye::name).toList());
    }
}
