package org.wickwise.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.ShelfLadder;
import org.wickwise.substance.ShelfLadder.Rung;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Numbers;

/**
 * A shelf's ladder as an SVG picture: the rails carry the scale, each bottle is a rung at its value, and letters mark its
 * kinds of harm. It needs no colour.
 */
public final class LadderPicture {

    private static final double WIDTH = 720;
    private static final double MARGIN = 20;
    private static final double TOP = 90;
    private static final double LEFT_RAIL = 110;
    private static final double RIGHT_RAIL = 170;
    private static final double NAMES = 235;
    private static final double LETTERS = 465;
    private static final double VALUES = 555;
    private static final double WIDEST_NAME = LETTERS - NAMES - 10;
    private static final double RAIL_ENDS = 12;
    private static final double FONT = 12;
    private static final double LINE = 15;
    private static final double BETWEEN_NAMES = 7;
    private static final double LEAST_HEIGHT = 300;
    private static final double LEAST_TICK_DISTANCE = 40;
    private static final double ROUNDING = 1e-9;
    private static final double TO_BASELINE = 4;
    private static final String BLACK = "stroke=\"#000000\"";

    private static final String OTHER_ORDER =
            "* another scale would order it otherwise; `shelf` without `--as svg` says which";

    private final ShelfLadder ladder;
    private final SolventData data;

    /** The strongest first, as they stand from top to bottom. */
    private final List<Rung> rungs;

    private final double height;
    private final Drawing drawing = new Drawing();
    private double y;

    private LadderPicture(ShelfLadder ladder, SolventData data) {
        this.ladder = ladder;
        this.data = data;
        this.rungs = new ArrayList<>(ladder.rungs());
        Collections.reverse(rungs);
        double names = rungs.stream().mapToDouble(rung -> room(name(rung))).sum();
        this.height = Math.max(LEAST_HEIGHT, names - 2 * RAIL_ENDS);
    }

    public static String of(ShelfLadder ladder, SolventData data) {
        return new LadderPicture(ladder, data).picture();
    }

    private String picture() {
        drawing.text(MARGIN, 28, "font-size=\"17\" font-weight=\"bold\"", title());
        drawing.text(MARGIN, 50, "", "scale: " + ladder.scale().property() + "; strongest at the top");
        y = TOP;
        if (rungs.isEmpty()) {
            paragraph("No bottle of this shelf has a place on it.");
        } else {
            rails();
            ticks();
            rungs();
            y = TOP + height + 40;
        }
        paragraph(Hazards.legend());
        if (rungs.stream().anyMatch(LadderPicture::isQuestioned)) {
            paragraph(OTHER_ORDER);
        }
        unranked();
        return drawing.page("ladder", WIDTH, y, title(), inWords());
    }

    private String title() {
        return "Ladder for " + ladder.phase().name();
    }

    private void rails() {
        for (double x : List.of(LEFT_RAIL, RIGHT_RAIL)) {
            drawing.line(x, TOP - RAIL_ENDS, x, TOP + height + RAIL_ENDS, BLACK + " stroke-width=\"3\"");
        }
    }

    /** Round values along the left rail; the value itself where all bottles have the same. */
    private void ticks() {
        drawing.open("class=\"ticks\"");
        double least = Math.min(strongest(), weakest());
        double most = Math.max(strongest(), weakest());
        if (least == most) {
            tick(least, rungs.get(0).value().shown());
        } else {
            RoundStep step = RoundStep.atLeast((most - least) * LEAST_TICK_DISTANCE / height);
            long first = (long) Math.ceil(least / step.size() - ROUNDING);
            for (long i = first; i <= most / step.size() + ROUNDING; i++) {
                tick(i * step.size(), Numbers.plain(i * step.size(), step.decimals()));
            }
        }
        drawing.close();
    }

    private void tick(double value, String label) {
        drawing.line(LEFT_RAIL - 8, y(value), LEFT_RAIL, y(value), BLACK);
        drawing.text(LEFT_RAIL - 14, y(value) + TO_BASELINE, "text-anchor=\"end\"", label);
    }

    /** Names keep the order of their rungs; each stands as near to its own as the others allow. */
    private void rungs() {
        double[] middles = Spread.apart(
                rungs.stream().mapToDouble(rung -> y(rung.height())).toArray(),
                rungs.stream().mapToDouble(rung -> room(name(rung))).toArray(),
                TOP - RAIL_ENDS,
                TOP + height + RAIL_ENDS);
        for (int i = 0; i < rungs.size(); i++) {
            rung(rungs.get(i), middles[i]);
        }
    }

    private void rung(Rung rung, double middle) {
        Bottle bottle = rung.bottle();
        double at = y(rung.height());
        String dashes = isBanned(bottle) ? " stroke-dasharray=\"6 5\"" : "";
        drawing.open("class=\"rung\"");
        drawing.meaning(bottle.name());
        drawing.line(LEFT_RAIL, at, RIGHT_RAIL, at, BLACK + " stroke-width=\"5\"" + dashes);
        drawing.close();
        drawing.path(
                "M" + Drawing.number(RIGHT_RAIL + 4) + " " + Drawing.number(at) + " L" + Drawing.number(NAMES - 30)
                        + " " + Drawing.number(middle) + " H" + Drawing.number(NAMES - 6),
                "fill=\"none\" stroke=\"#777777\"");
        bottle(bottle, name(rung), middle);
        drawing.text(VALUES, middle + TO_BASELINE, "", rung.value().shown());
    }

    /** The name of a bottle and the letters of its harms, both around this height. */
    private void bottle(Bottle bottle, List<String> name, double middle) {
        double first = middle + TO_BASELINE - (name.size() - 1) * LINE / 2;
        drawing.texts(NAMES, first, LINE, isBanned(bottle) ? "text-decoration=\"line-through\"" : "", name);
        drawing.text(LETTERS, middle + TO_BASELINE, "font-weight=\"bold\"", Hazards.letters(bottle.contents(), data));
    }

    private void unranked() {
        if (ladder.unranked().isEmpty()) {
            return;
        }
        y += LINE;
        drawing.text(MARGIN, y, "font-weight=\"bold\"", "Not on this ladder:");
        y -= TO_BASELINE + room(List.of("")) / 2;
        for (Bottle bottle : ladder.unranked()) {
            List<String> name = wrapped(bottle, "");
            bottle(bottle, name, y + room(name) / 2);
            y += room(name);
        }
        y += LINE;
    }

    private static List<String> name(Rung rung) {
        return wrapped(rung.bottle(), isQuestioned(rung) ? " *" : "");
    }

    private static List<String> wrapped(Bottle bottle, String mark) {
        return Lettering.wrapped(bottle.name() + mark + (isBanned(bottle) ? " (banned)" : ""), WIDEST_NAME, FONT);
    }

    private static boolean isBanned(Bottle bottle) {
        return bottle.banned().isPresent();
    }

    private static boolean isQuestioned(Rung rung) {
        return !rung.differences().isEmpty();
    }

    /** The height that a name takes. */
    private static double room(List<String> name) {
        return name.size() * LINE + BETWEEN_NAMES;
    }

    private double strongest() {
        return rungs.get(0).height();
    }

    private double weakest() {
        return rungs.get(rungs.size() - 1).height();
    }

    private double y(double value) {
        double span = strongest() - weakest();
        double share = span == 0 ? 0.5 : (value - weakest()) / span;
        return TOP + height * (1 - share);
    }

    /** The picture in sentences, for readers who cannot see it. */
    private String inWords() {
        String ranked = ladder.rungs().stream()
                .map(rung -> inWords(rung.bottle(), " " + rung.value().shown()))
                .collect(Collectors.joining("; "));
        String unranked =
                ladder.unranked().stream().map(bottle -> inWords(bottle, "")).collect(Collectors.joining("; "));
        return (ranked.isEmpty() ? "" : "Weakest first: " + ranked + ". ")
                + (unranked.isEmpty() ? "" : "Not on this ladder: " + unranked + ". ")
                + Hazards.legend() + ".";
    }

    private String inWords(Bottle bottle, String value) {
        String letters = Hazards.letters(bottle.contents(), data);
        return bottle.name() + value + (isBanned(bottle) ? ", banned" : "") + (letters.isEmpty() ? "" : ", " + letters);
    }

    /** Lines across the picture; moves on below them. */
    private void paragraph(String words) {
        y = drawing.paragraph(MARGIN, y, WIDTH - 2 * MARGIN, FONT, "", words) + BETWEEN_NAMES;
    }
}
