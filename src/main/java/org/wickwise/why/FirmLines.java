package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Margin;
import org.wickwise.strip.Spot;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** How firm a plan is, in lines with reasons. */
public final class FirmLines {

    private static final int MOST_OTHERS = 5;
    private static final int MOST_LINKS = 3;
    private static final String LEANING = "leaning of a weak link";
    private static final double PER_CENT = 100;
    private static final String REFERENCE =
            "JCGM 101:2008, propagation of distributions by drawing; readings taken as Gaussian";

    private static final String REFERENCE_OF_MARGINS = "JCGM 100:2008, G.1";

    private final Firmness firmness;
    private final List<PlanLine> lines = new ArrayList<>();
    private int margins;

    private FirmLines(Firmness firmness) {
        this.firmness = firmness;
    }

    public static List<PlanLine> of(Firmness firmness) {
        FirmLines made = new FirmLines(firmness);
        made.share();
        made.others();
        made.links();
        made.onlySeen();
        made.margins();
        return List.copyOf(made.lines);
    }

    private void share() {
        double percent = PER_CENT * firmness.share();
        double half = PER_CENT * 2 * firmness.shareUncertainty();
        String certainty = firmness.same() == firmness.redraws()
                ? ""
                : " (" + Numbers.fixed(percent, 1) + " ± " + Numbers.fixed(half, 1) + " %)";
        String text = Words.capital(firmness.usual()) + ": the same in " + firmness.same() + " of " + firmness.redraws()
                + " redraws of the readings" + certainty + ".";
        add("firm", text);
    }

    private void others() {
        int number = 0;
        for (Map.Entry<String, Integer> other : firmness.othersByFrequency()) {
            number++;
            if (number > MOST_OTHERS) {
                add("firm-rest", firmness.others().size() - MOST_OTHERS + " more outcomes, each rarer than these.");
                return;
            }
            add("instead-" + number, "In " + other.getValue() + " redraws instead: " + other.getKey() + ".");
        }
    }

    private void links() {
        List<Firmness.Link> leaning = firmness.links().stream()
                .filter(link -> Math.abs(link.leaning()) >= firmness.judgement().limit(LEANING))
                .limit(MOST_LINKS)
                .toList();
        if (firmness.same() == firmness.redraws()) {
            add("weakest", "No reading is a weak link: none of them, read again, changes the plan.");
        } else if (leaning.isEmpty()) {
            addOfLinks("weakest", "No single reading is the weak link; several together make the difference.");
        }
        for (int i = 0; i < leaning.size(); i++) {
            Firmness.Link link = leaning.get(i);
            String dyes = Words.joined(
                    link.spot().dyes().stream().map(dye -> dye.name()).toList());
            String text = (i == 0 ? "The weakest link is " : "Then comes ") + "the reading of " + dyes + " on "
                    + link.strip() + " (" + link.spot().place() + "): where something else came out, it lay "
                    + Numbers.fixed(Math.abs(link.leaning()), 1) + " standard uncertainties "
                    + (link.leaning() > 0 ? "further from" : "nearer to") + " the origin"
                    + (i == 0 ? ". Measure it again, or run that strip longer." : ".");
            addOfLinks(i == 0 ? "weakest" : "weak-" + (i + 1), text);
        }
    }

    /** What has no number cannot be drawn again, however much hangs on it. */
    private void onlySeen() {
        List<String> seen = firmness.judgement().judged().strips().stream()
                .flatMap(strip -> strip.spots().stream()
                        .filter(spot -> spot.position() instanceof Spot.Seen)
                        .map(spot ->
                                Words.joined(spot.dyes().stream().map(Dye::name).toList()) + " in " + strip.eluent()))
                .distinct()
                .toList();
        if (!seen.isEmpty()) {
            add(
                    "by-eye",
                    "Not redrawn, because it was judged by eye: " + String.join("; ", seen)
                            + ". How firm the plan is without that, a strip that is measured would tell.");
        }
    }

    /** One line for each reading that decided something the plan rests on. */
    private void margins() {
        for (Margin margin : firmness.margins()) {
            String text = Words.capital(margin.conclusion().statement()) + ": the reading lies "
                    + Numbers.fixed(margin.distance(), 2) + " from the "
                    + margin.limit().name() + " ("
                    + margin.limit().shown() + "), "
                    + Numbers.fixed(margin.uncertainties(), 1) + " standard uncertainties.";
            Reason reason = new Reason.Calculated(
                    text,
                    "margin = |reading - limit| / standard uncertainty of the reading",
                    REFERENCE_OF_MARGINS,
                    List.of(margin.reading(), margin.limit().reason()));
            lines.add(new PlanLine("margin-" + (++margins), Section.BASIS, text, reason));
        }
    }

    private void add(String label, String text) {
        add(label, text, List.of("usual ruler division", "spot centre half-width", "uncertainty of a reported Rf"));
    }

    private void addOfLinks(String label, String text) {
        add(
                label,
                text,
                List.of("usual ruler division", "spot centre half-width", "uncertainty of a reported Rf", LEANING));
    }

    private void add(String label, String text, List<String> limits) {
        List<Reason> grounds = new ArrayList<>();
        for (String limit : limits) {
            grounds.add(firmness.judgement().limits().get(limit).reason());
        }
        String formula = firmness.redraws() + " redraws from seed " + firmness.seed()
                + ": on each strip the origin, the front and the middle of every spot are moved by errors of their own"
                + " standard uncertainty, the rules judge again, and the best plan is looked for again";
        lines.add(new PlanLine(
                label, Section.DOUBTS, text, new Reason.Calculated(text, formula, REFERENCE, List.copyOf(grounds))));
    }
}
