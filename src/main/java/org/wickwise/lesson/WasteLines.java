package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.column.Column;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** Which waste containers stand ready and how large they are; liquids are sorted by the rules on waste. */
final class WasteLines {

    private static final String FILLING = "filling of a waste bottle";
    private static final double PER_CENT = 100;

    private final LaidOutLesson laidOut;
    private final ReasonedLines lines = new ReasonedLines();

    WasteLines(LaidOutLesson laidOut) {
        this.laidOut = laidOut;
    }

    List<PlanLine> lines() {
        WasteStreams streams =
                WasteStreams.of(LiquidUses.of(laidOut), laidOut.plan().judgement());
        streams.uses().forEach((stream, uses) -> liquid(stream, uses, streams));
        beds();
        return lines.all();
    }

    /** Everything poured comes back as waste but for what evaporates and the reserve, which is not poured. */
    private void liquid(String stream, List<LiquidUse> uses, WasteStreams streams) {
        double ofAGroup =
                uses.stream().mapToDouble(LiquidUse::millilitresOfAGroup).sum();
        double all = ofAGroup * laidOut.groups();
        double bottle = all * PER_CENT / laidOut.value(FILLING);
        String eluents = uses.stream()
                .map(use -> use.eluent().name())
                .distinct()
                .sorted()
                .collect(Collectors.joining("; "));
        String text = Words.capital(stream) + ": up to " + ReadyAmount.millilitres(all) + " (" + eluents
                + "). Have labelled containers for " + ReadyAmount.millilitres(bottle) + ", filled to at most "
                + laidOut.limit(FILLING).shown() + ".";
        List<Reason> grounds = new ArrayList<>();
        if (streams.reasons().containsKey(stream)) {
            grounds.add(streams.reasons().get(stream));
        }
        grounds.add(laidOut.groupsStated());
        grounds.add(laidOut.limit(FILLING).reason());
        uses.forEach(use -> grounds.add(use.reason()));
        lines.reckoned(
                Section.SAFETY,
                "waste-" + Words.slug(stream.replace(" waste", "")),
                text,
                "groups x what a group pours / filling: " + laidOut.groups() + " x " + Numbers.fixed(ofAGroup, 1)
                        + " / " + Numbers.plain(laidOut.value(FILLING) / PER_CENT, 3),
                grounds);
    }

    private void beds() {
        Column column = laidOut.plan().judged().column();
        if (laidOut.columnVolumeMillilitres().isEmpty()) {
            return;
        }
        double liquid = laidOut.columnVolumeMillilitres().getAsDouble() * laidOut.groups();
        double dry = column.bedGrams().orElseThrow() * laidOut.groups();
        String text = "Used beds: about " + ReadyAmount.gramsShown(dry) + " of " + column.phaseName()
                + " with the sand on it, still holding up to " + ReadyAmount.millilitres(liquid)
                + " of eluent. Dry them in the hood, then bag and label them apart from glass.";
        List<Reason> grounds = new ArrayList<>(List.of(laidOut.groupsStated()));
        column.sizeStated().ifPresent(grounds::add);
        lines.reckoned(
                Section.SAFETY,
                "waste-beds",
                text,
                "groups x bed volume x packed density, and groups x column volume; "
                        + column.phase().figuresFrom(),
                grounds);
    }
}
