package org.wickwise.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.wickwise.notebook.Entry;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What an entry of a notebook says, spot by spot. */
public final class EntryLines {

    private static final String ETTRE = "IUPAC; Ettre, Pure Appl. Chem. 1993, 65, 819";
    private static final int DECIMALS_OF_RF = 2;

    private final Set<String> labels = new HashSet<>();
    private final List<PlanLine> lines = new ArrayList<>();

    private EntryLines() {}

    /** One line a spot, labelled by solvent and dye; one line for a strip that shows none. */
    public static List<PlanLine> of(Entry entry) {
        EntryLines lines = new EntryLines();
        entry.strips().strips().forEach(lines::strip);
        return List.copyOf(lines.lines);
    }

    private void strip(Strip strip) {
        String mishaps = strip.mishaps().stream().map(Mishap::word).sorted().collect(Collectors.joining(", "));
        String wentWrong = mishaps.isEmpty() ? "" : "; went wrong: " + mishaps;
        for (Spot spot : strip.spots()) {
            String dyes = spot.dyes().stream().map(Dye::name).collect(Collectors.joining(" and "));
            add(strip, dyes, reason(strip, spot, dyes), wentWrong);
        }
        for (Dye dye : strip.notSeen()) {
            String statement = dye + " was not seen on " + strip;
            add(strip, dye.name(), new Reason.Observed(statement, strip.place()), wentWrong);
        }
        if (strip.spots().isEmpty() && strip.notSeen().isEmpty()) {
            String statement = strip + " shows no spot";
            add(strip, "", new Reason.Observed(statement, strip.place()), wentWrong);
        }
    }

    private void add(Strip strip, String dyes, Reason reason, String remark) {
        String slug = Words.slug(strip.eluent().name() + " " + dyes);
        String label = slug;
        for (int number = 2; !labels.add(label); number++) {
            label = slug + "-" + number;
        }
        lines.add(new PlanLine(label, Section.STRIPS, Words.capital(reason.statement()) + remark + ".", reason));
    }

    private static Reason reason(Strip strip, Spot spot, String dyes) {
        Reason seen = new Reason.Observed(dyes + " " + spot.position().words() + " on " + strip, spot.place());
        if (!(spot.position() instanceof Spot.Travelled travelled)
                || strip.frontMillimetres().isEmpty()) {
            return seen;
        }
        double front = strip.frontMillimetres().getAsDouble();
        String rf = Numbers.fixed(travelled.millimetres() / front, DECIMALS_OF_RF);
        return new Reason.Calculated(
                dyes + " has Rf " + rf + " on " + strip,
                "travel / front = " + Numbers.plain(travelled.millimetres(), 2) + " mm / " + Numbers.plain(front, 2)
                        + " mm = " + rf,
                ETTRE,
                List.of(
                        seen,
                        new Reason.Observed(
                                "the front of " + strip + " is at " + Numbers.plain(front, 2) + " mm", strip.place())));
    }
}
