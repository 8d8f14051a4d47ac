package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.column.Column;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.substance.MineralDust;
import org.wickwise.substance.RoomAir;
import org.wickwise.text.Figures;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** How little dust of the dry adsorbent is too much. */
final class DustLines {

    private static final String FIGURE = "dust figure of the regulation";
    private static final double LITRES_PER_CUBIC_METRE = 1000;

    private final LaidOutLesson laidOut;
    private final ReasonedLines lines = new ReasonedLines();

    DustLines(LaidOutLesson laidOut) {
        this.laidOut = laidOut;
    }

    /** None where the adsorbent is not of the mineral that the figure is about. */
    List<PlanLine> lines() {
        Column column = laidOut.plan().judged().column();
        column.phase().mineralPercentOfDust().ifPresent(percent -> dust(column, percent));
        return lines.all();
    }

    private void dust(Column column, double percent) {
        double limit = MineralDust.milligramsPerCubicMetre(laidOut.value(FIGURE), percent);
        List<Reason> grounds = new ArrayList<>(List.of(laidOut.limit(FIGURE).reason(), column.reason()));
        String room = laidOut.lesson()
                .room()
                .map(Room::cubicMetres)
                .map(cubicMetres -> "; in the " + Numbers.plain(cubicMetres, 1) + " m3 of the room "
                        + Figures.three(new RoomAir(cubicMetres).gramsToReach(limit / LITRES_PER_CUBIC_METRE))
                        + " g afloat reach it")
                .orElse("");
        OptionalDouble grams = laidOut.adsorbentGrams();
        String weighed = grams.isPresent() ? ". The class weighs out " + ReadyAmount.grams(grams.getAsDouble()) : "";
        if (grams.isPresent()) {
            grounds.add(laidOut.groupsStated());
            grounds.add(laidOut.limit(LaidOutLesson.SPARE_ADSORBENT).reason());
        }
        lines.reckoned(
                Section.SAFETY,
                "dust",
                Words.capital(column.phaseName()) + " dust: the exposure limit is " + Figures.three(limit) + " mg/m3"
                        + room + weighed
                        + "; weigh and pour it in the hood, wet it before it is moved, and wipe up wet.",
                "figure of the regulation / per cent of the mineral: " + Numbers.plain(laidOut.value(FIGURE), 1) + " / "
                        + Numbers.plain(percent, 1) + "; grams = limit x room",
                "29 CFR 1910.1000, Table Z-3",
                grounds);
    }
}
