package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Planner;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Strip;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;
import org.wickwise.why.Change.OfBottle;
import org.wickwise.why.Change.OfLimit;
import org.wickwise.why.Change.OfReading;

/** What would have to be different for something to be so, in lines with reasons. */
public final class NeededLines {

    private static final int MOST_BOTTLES = 6;

    private final Judgement written;
    private final Judge judge;
    private final Planner planner;
    private final Aim aim;
    private final List<PlanLine> lines = new ArrayList<>();

    private NeededLines(Judgement written, Judge judge, Planner planner, Aim aim) {
        this.written = written;
        this.judge = judge;
        this.planner = planner;
        this.aim = aim;
    }

    /** One line for each kind of change that would bring it about; a single line where it is so, or where none does. */
    public static List<PlanLine> of(Judgement written, Judge judge, Planner planner, Aim aim) {
        NeededLines made = new NeededLines(written, judge, planner, aim);
        if (aim.isMet(written, planner)) {
            made.add("so", "Nothing: " + aim.words() + " as it is.", made.reason(written));
        } else {
            made.changes(SmallestChange.of(written, judge, planner, aim));
        }
        made.voidStrips();
        return List.copyOf(made.lines);
    }

    private void changes(SmallestChange found) {
        List<OfBottle> bottles = new ArrayList<>();
        for (Change change : found.single()) {
            if (change instanceof OfReading reading) {
                say("reading", List.of(reading), reading(reading));
            } else if (change instanceof OfLimit limit) {
                say(
                        "limit",
                        List.of(limit),
                        "the " + limit.limit().name() + " at " + Numbers.plain(limit.value(), 6) + " instead of "
                                + limit.limit().shown());
            } else if (change instanceof OfBottle bottle) {
                bottles.add(bottle);
            }
        }
        bottles(bottles);
        if (!found.two().isEmpty()) {
            String both = Words.joined(found.two().stream().map(this::reading).toList());
            say("two-readings", found.two(), both);
        }
        if (found.single().isEmpty() && found.two().isEmpty()) {
            String text = "No single reading, limit or bottle would bring it about that " + aim.words()
                    + ", and no two readings" + (found.everyTwo() ? "" : " that were tried") + "; " + found.tried()
                    + " changes were tried.";
            add("none", text, new Reason.Chosen(text, List.of(), List.of()));
        }
    }

    private void bottles(List<OfBottle> bottles) {
        for (int i = 0; i < Math.min(MOST_BOTTLES, bottles.size()); i++) {
            String word = bottles.get(i).isAdded() ? "a bottle of " : "no bottle of ";
            say(
                    "bottle-" + (i + 1),
                    List.of(bottles.get(i)),
                    word + bottles.get(i).name() + " on the shelf");
        }
        if (bottles.size() > MOST_BOTTLES) {
            String others =
                    bottles.stream().skip(MOST_BOTTLES).map(OfBottle::words).collect(Collectors.joining("; "));
            String text = "Just so: " + others + ".";
            add("bottle-more", text, new Reason.Chosen(text, List.of(), List.of()));
        }
    }

    private String reading(OfReading change) {
        String far = change.isFurtherOffThan(written.limit("another dye limit"))
                ? ", which would be another dye rather than another reading"
                : "";
        return change.dye() + " in " + change.strip().eluent()
                + (change.strip().replicate() == 1
                        ? ""
                        : " on strip " + change.strip().replicate()) + " at Rf "
                + Numbers.fixed(change.retardationFactor(), 2) + " instead of "
                + change.written().shown() + ", " + Numbers.fixed(change.size(), 1)
                + " standard uncertainties nearer to the "
                + (change.retardationFactor() < change.written().value() ? "origin" : "front")
                + far;
    }

    /** Says it in words and in the words of a supposition, with the reason as it would be then. */
    private void say(String label, List<? extends Change> changes, String what) {
        List<String> suppose = changes.stream().map(Change::words).toList();
        Supposition supposition = SuppositionReader.read(suppose, written.judged(), written.limits(), judge.data());
        Judgement then = judge.judge(supposition.supposed(), supposition.limits());
        add(
                label,
                Words.capital(what) + ": then " + aim.words() + ". Try it: suppose CASE "
                        + suppose.stream().map(one -> "\"" + one + "\"").collect(Collectors.joining(" ")),
                reason(then));
    }

    private Reason reason(Judgement then) {
        if (aim instanceof Aim.Concluded concluded) {
            return then.reason(concluded.conclusion());
        }
        Plan plan = planner.plan(then);
        return new Reason.Chosen(
                aim.words(),
                List.of(),
                plan.linesIn(Section.VERDICT).stream().map(PlanLine::reason).toList());
    }

    private void voidStrips() {
        for (Strip strip : written.judged().strips()) {
            StripVerdict verdict = new StripVerdict(strip, Conclusion.Reading.VOID);
            if (written.holds(verdict)) {
                Reason.Concluded reason = written.reason(verdict);
                add("void-" + Words.slug(strip.toString()), "Not asked: " + Told.becauses(reason), reason);
            }
        }
    }

    private void add(String label, String text, Reason reason) {
        lines.add(new PlanLine(label, Section.CHOICE, text, reason));
    }
}
