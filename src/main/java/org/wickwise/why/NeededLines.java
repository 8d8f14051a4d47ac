package org.wickwise.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.wickwise.why.Change.OfColumn;
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
        List<OfColumn> beds = new ArrayList<>();
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
            } else if (change instanceof OfColumn column) {
                beds.add(column);
            }
        }
        bottles(bottles);
        if (!found.two().isEmpty()) {
            String both = Words.joined(found.two().stream().map(this::reading).toList());
            say("two-readings", found.two(), both);
        }
        if (found.single().size() == beds.size() && found.two().isEmpty()) {
            String text = "No single reading, limit or bottle would bring it about that " + aim.words()
                    + ", and no two readings" + (found.everyTwo() ? "" : " that were tried")
                    + (beds.isEmpty() ? ", and no other stationary phase of the table" : "") + "; " + found.tried()
                    + " changes were tried.";
            add("none", text, new Reason.Chosen(text, List.of(), List.of()));
        }
        beds(beds);
    }

    /** One line for all beds of which the same is to be said. */
    private void beds(List<OfColumn> beds) {
        Map<String, List<OfColumn>> alike = beds.stream()
                .collect(Collectors.groupingBy(
                        bed -> guess(then(List.of(bed))), LinkedHashMap::new, Collectors.toList()));
        int number = 0;
        for (Map.Entry<String, List<OfColumn>> group : alike.entrySet()) {
            OfColumn first = group.getValue().get(0);
            number++;
            say(
                    "bed-" + number,
                    List.of(first),
                    "a column of " + anyOf(group.getValue()) + " instead of "
                            + written.judged().column().phaseName(),
                    group.getKey());
        }
    }

    private static String anyOf(List<OfColumn> beds) {
        return beds.stream().map(bed -> bed.phase().name()).collect(Collectors.joining(" or "));
    }

    /** What a plan on another bed would be, and that it is a guess; nothing where what the rules say hangs on no strip. */
    private String guess(Judgement then) {
        if (aim.saidOf().isEmpty()) {
            Plan plan = planner.plan(then);
            return " It would be: " + Impact.inShort(plan) + "."
                    + plan.guess().map(guess -> " " + guess).orElse("");
        }
        return aim instanceof Aim.Concluded
                        && then.triedElsewhereOnly(aim.saidOf().orElseThrow().getKey())
                ? " A guess: its strip was run on another stationary phase."
                : "";
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

    private void say(String label, List<? extends Change> changes, String what) {
        say(label, changes, what, "");
    }

    /** Says it in words and in the words of a supposition, with the reason as it would be then. */
    private void say(String label, List<? extends Change> changes, String what, String more) {
        add(
                label,
                Words.capital(what) + ": then " + aim.words() + "." + more + " Try it: suppose CASE "
                        + changes.stream().map(one -> "\"" + one.words() + "\"").collect(Collectors.joining(" ")),
                reason(then(changes)));
    }

    private Judgement then(List<? extends Change> changes) {
        List<String> suppose = changes.stream().map(Change::words).toList();
        Supposition supposition = SuppositionReader.read(suppose, written.judged(), written.limits(), judge.data());
        return judge.judge(supposition.supposed(), supposition.limits());
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
