package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.plan.NeverParted;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Movement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Which strip to run next and when to stop, in lines with reasons. */
public final class NextLines {

    private static final int MOST_OTHERS = 4;
    private static final double PER_CENT = 100;
    private static final String REFERENCE =
            "expected value of sample information, H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory, 1961,"
                    + " from memory; JCGM 101:2008, propagation of distributions by drawing";
    private static final List<String> LIMITS_OF_WORTH = List.of("chance worth a strip", "saving worth a strip");

    private final NextStrips next;
    private final Judgement judgement;
    private static final String TRUST_ALIKE = "trust that dyes never parted are alike";

    private final List<PlanLine> lines = new ArrayList<>();

    private NextLines(NextStrips next) {
        this.next = next;
        this.judgement = next.plan().judgement();
    }

    public static List<PlanLine> of(NextStrips next) {
        NextLines made = new NextLines(next);
        made.verdict();
        made.others();
        made.perhapsOneDye();
        made.whenToStop();
        made.whatTheRulesAsk();
        return List.copyOf(made.lines);
    }

    private void verdict() {
        switch (next.advice()) {
            case RUN -> run(next.worthRunning().get(0));
            case STOP_FIRM ->
                stop("Stop testing: the plan (" + next.firmness().usual() + ") stays in " + redraws() + ", and "
                        + noStripHelps() + ".");
            case STOP_IN_DOUBT ->
                stop("No strip within reach settles it: the plan ("
                        + next.firmness().usual() + ") stays in " + redraws()
                        + " only, but " + noStripHelps()
                        + ". Read the strips you have again, or think of an eluent that the shelf does not hold.");
            case STOP_WITHOUT_PLAN ->
                stop("No strip within reach is likely to open a plan: " + noStripHelps()
                        + ". Think of another bed, or of an eluent that the shelf does not hold.");
        }
    }

    private void run(Prospect best) {
        add("run", "Run " + best.strip().words() + ": " + reasons(best), best);
    }

    private void stop(String text) {
        lines.add(new PlanLine(
                "stop", Section.NEXT, text, calculated(text, limits("firm enough to stop testing", LIMITS_OF_WORTH))));
    }

    /** The next few that are worth a strip, or that come nearest to it. */
    private void others() {
        boolean run = next.advice() == NextStrips.Advice.RUN;
        List<Prospect> others = next.prospects().stream()
                .skip(run ? 1 : 0)
                .filter(prospect -> prospect.worth() > 0)
                .toList();
        for (int i = 0; i < Math.min(MOST_OTHERS, others.size()); i++) {
            Prospect other = others.get(i);
            String alike = run && cannotBeToldApart(next.prospects().get(0), other)
                    ? " So many draws cannot tell it from the first."
                    : "";
            add("then-" + (i + 1), Words.capital(other.strip().words()) + ": " + reasons(other) + alike, other);
        }
        int rest = next.prospects().size() - (run ? 1 : 0) - Math.min(MOST_OTHERS, others.size());
        if (rest > 0) {
            long hopeful = Math.max(0, others.size() - MOST_OTHERS);
            String text = rest + (rest == 1 ? " more strip was" : " more strips were") + " weighed; "
                    + (hopeful == 0
                            ? "in no draw did one change the plan for the better."
                            : hopeful + " of them did some good in some draw, each with less chance than these.");
            lines.add(new PlanLine("others", Section.NEXT, text, calculated(text, limits("", LIMITS_OF_WORTH))));
        }
    }

    private boolean cannotBeToldApart(Prospect one, Prospect other) {
        return one.worth() - other.worth() < 2 * Math.hypot(one.worthUncertainty(), other.worthUncertainty());
    }

    private String reasons(Prospect prospect) {
        List<String> sentences = new ArrayList<>();
        sentences.add("in " + prospect.better() + " of " + next.draws() + " draws "
                + (next.plan().isRefusal() ? "it opens a plan" : "it opens a better plan") + chance(prospect) + ".");
        prospect.usualBetter().ifPresent(draw -> sentences.add(better(draw)));
        if (prospect.hasRight()) {
            sentences.add(right(prospect));
        }
        if (prospect.worth() > 0) {
            turning(prospect, sentences);
        }
        return String.join(" ", sentences);
    }

    private void turning(Prospect prospect, List<String> sentences) {
        prospect.turning(judgement.judged().dyes()).ifPresent(turning -> sentences.add(turns(turning)));
    }

    private static String chance(Prospect prospect) {
        return prospect.better() == 0
                ? " (at most " + percent(prospect.chanceAtMost()) + " %)"
                : " (" + percent(prospect.chance()) + " ± " + percent(2 * prospect.chanceUncertainty()) + " %)";
    }

    private String better(Prospect.Draw draw) {
        Prospect.Better better = draw.better().orElseThrow();
        String most = "Most often that would be " + draw.outcome();
        String advantage = better.advantage().map(found -> ", " + found.told()).orElse("");
        String shorter = better.advantage().isPresent() && better.fewerSteps() > 0
                ? ", with " + (better.fewerSteps() == 1 ? "one step" : better.fewerSteps() + " steps") + " less"
                : "";
        return most + advantage + shorter + ".";
    }

    private static String right(Prospect prospect) {
        String before = percent(prospect.rightBefore());
        if (prospect.gain() <= 0) {
            return "The right plan is chosen no more often with it than without (" + percent(prospect.rightAfter())
                    + " % against " + before + " %).";
        }
        return "With it the right plan is chosen in " + percent(prospect.rightAfter())
                + " % of the draws, without it in "
                + before + " % (" + percent(prospect.gain()) + " ± " + percent(2 * prospect.gainUncertainty())
                + " % more).";
    }

    private static String turns(Prospect.Turning turning) {
        return "It turns on " + turning.dye() + ": where the plan changes, its Rf there is "
                + Numbers.fixed(turning.changed(), 2) + " on average, and where it stays, "
                + Numbers.fixed(turning.unchanged(), 2) + ".";
    }

    private void perhapsOneDye() {
        Reason limit = judgement.limits().get(TRUST_ALIKE).reason();
        for (NeverParted pair : NeverParted.all(judgement)) {
            String text = Words.capital(pair.words()) + "; with a chance of "
                    + percent(pair.chanceAlike(judgement.limit(TRUST_ALIKE) / PER_CENT))
                    + " % a draw takes them to be alike in what nobody ran.";
            List<Reason> grounds = new ArrayList<>(pair.reasons(judgement));
            grounds.add(limit);
            lines.add(new PlanLine(
                    "alike-" + Words.slug(pair.one().name()) + "-"
                            + Words.slug(pair.other().name()),
                    Section.NEXT,
                    text,
                    new Reason.Calculated(
                            text,
                            "1 - (1 - trust)^(n - 1), n eluents in which they lie together",
                            "our choice",
                            grounds)));
        }
    }

    private void whenToStop() {
        if (next.advice() != NextStrips.Advice.RUN) {
            return;
        }
        String firm = next.plan().isRefusal()
                ? "There is no plan yet"
                : next.isFirm()
                        ? "The plan (" + next.firmness().usual() + ") is firm, it stays in " + redraws()
                        : "The plan (" + next.firmness().usual() + ") is not firm, it stays in " + redraws() + " only";
        String text = firm + "; " + next.worthRunning().size() + " of "
                + next.prospects().size()
                + " possible strips " + (next.worthRunning().size() == 1 ? "is" : "are")
                + " worth running. Stop testing when a plan stays in "
                + limit("firm enough to stop testing")
                + " of the redraws and no strip has a chance of " + limit("chance worth a strip")
                + " or more to better it.";
        lines.add(new PlanLine(
                "until", Section.NEXT, text, calculated(text, limits("firm enough to stop testing", LIMITS_OF_WORTH))));
    }

    /** The rules ask for strips of their own accord; what the draws say of each stands beside it. */
    private void whatTheRulesAsk() {
        for (PlanLine asked : next.plan().linesIn(Section.NEXT)) {
            if (asked.label().startsWith("next-")) {
                String text = "The rules of the plan say (" + asked.label() + "): " + asked.text() + beside(asked);
                lines.add(new PlanLine(
                        "rules-" + asked.label().substring("next-".length()),
                        Section.NEXT,
                        text,
                        new Reason.Chosen(text, List.of(), List.of(asked.reason()))));
            }
        }
    }

    private String beside(PlanLine asked) {
        Optional<Prospect> drawn = eluentOf(asked).flatMap(eluent -> next.prospects().stream()
                .filter(prospect -> prospect.strip().eluent().equals(eluent))
                .findFirst());
        if (drawn.isEmpty()) {
            return "";
        }
        int rank = next.prospects().indexOf(drawn.get()) + 1;
        if (next.isWorthRunning(drawn.get())) {
            return rank == 1 ? " The draws say the same." : " The draws agree, but put it in place " + rank + ".";
        }
        return " By the draws it hardly changes the plan" + chance(drawn.get())
                + "; run it for certainty, not for a better plan.";
    }

    private Optional<Eluent> eluentOf(PlanLine asked) {
        Stream<Conclusion> again = judgement.all(Conclusion.RunAgain.class).stream()
                .filter(run -> judgement.reason(run).equals(asked.reason()))
                .map(run -> run);
        Stream<Conclusion> about = judgement.all(Conclusion.RunNextEluent.class).stream()
                .filter(run -> judgement.reason(run).equals(asked.reason()))
                .map(run -> run);
        return Stream.concat(again, about).findFirst().map(NextLines::eluent);
    }

    private static Eluent eluent(Conclusion run) {
        return run instanceof Conclusion.RunAgain again
                ? again.strip().eluent()
                : ((Conclusion.RunNextEluent) run).eluent();
    }

    private String redraws() {
        return next.firmness().same() + " of " + next.firmness().redraws() + " redraws of the readings";
    }

    private String noStripHelps() {
        double chance =
                next.prospects().stream().mapToDouble(Prospect::chance).max().orElse(0);
        double worth =
                next.prospects().stream().mapToDouble(Prospect::worth).max().orElse(0);
        double atMost = next.prospects().stream()
                .mapToDouble(Prospect::chanceAtMost)
                .max()
                .orElse(0);
        if (next.prospects().isEmpty()) {
            return "no eluent may enter this column";
        }
        return "none of the " + next.prospects().size() + " strips that could be run has more than a "
                + percent(chance) + " % chance to open " + (next.plan().isRefusal() ? "one" : "a better one")
                + (worth > chance
                        ? ", or makes the right one be chosen more than " + percent(worth) + " % more often"
                        : "")
                + " (" + next.draws() + " draws of each; they cannot exclude " + percent(atMost) + " %)";
    }

    private String limit(String name) {
        return judgement.limits().get(name).shown();
    }

    private void add(String label, String text, Prospect prospect) {
        List<Reason> grounds = new ArrayList<>();
        for (Dye dye : judgement.judged().dyes()) {
            known(dye, prospect.strip().eluent()).ifPresent(grounds::add);
        }
        grounds.addAll(limits("", LIMITS_OF_WORTH));
        grounds.addAll(limits(
                "", List.of("least RM to be expected", "greatest RM to be expected", "scatter of unknown dyes")));
        lines.add(new PlanLine(label, Section.NEXT, text, calculated(text, grounds)));
    }

    private Optional<Reason> known(Dye dye, Eluent eluent) {
        return judgement.movement(dye, eluent).map(Movement::reason).or(() -> judgement
                .behaviour(dye, eluent)
                .map(judgement::reason));
    }

    private List<Reason> limits(String first, List<String> more) {
        return Stream.concat(Stream.of(first), more.stream())
                .filter(name -> !name.isEmpty())
                .<Reason>map(name -> judgement.limits().get(name).reason())
                .toList();
    }

    private Reason calculated(String text, List<Reason> grounds) {
        String formula = next.draws() + " draws from seed " + next.seed()
                + ": the true Rf is drawn from what is known of it, the strip is read with the usual uncertainty, judged"
                + " with the others, and the best plan looked for; ± is twice sqrt(p (1 - p)/n)";
        return new Reason.Calculated(text, formula, REFERENCE, grounds);
    }

    private static String percent(double share) {
        return Numbers.fixed(PER_CENT * share, share > 0 && share < 0.01 ? 1 : 0);
    }
}
