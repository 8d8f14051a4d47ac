package org.wickwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.text.StringEscapeUtils;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.ShelfLadder;
import org.wickwise.substance.ShelfLadder.Rung;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Numbers;

/**
 * A shelf's ladder as an SVG picture that says the same in black and white: the rails carry the scale, each bottle is a
 * rung at its value, and letters mark its kinds of harm.
 */
public final class LadderPicture {

    private static final int WIDTH = 720;
    private static final int TOP = 90;
    private static final int LEFT_RAIL = 110;
    private static final int RIGHT_RAIL = 170;
    private static final int LABEL = 235;
    private static final int LINE = 22;
    private static final int LEAST_HEIGHT = 300;

    /** One letter for each kind of harm, explained in the picture. */
    private static final Map<String, String> LETTER =
            Map.of("burns", "F", "toxic", "T", "harms with time", "L", "skin or eyes", "S", "life in waters", "W");

    private static final String OTHER_ORDER =
            "* another scale (polarity index, dielectric constant) would order it otherwise; `shelf` in words says which";

    private LadderPicture() {}

    public static String of(ShelfLadder ladder, SolventData data) {
        List<Rung> rungs = ladder.rungs();
        int height = Math.max(LEAST_HEIGHT, rungs.size() * LINE);
        int below = TOP + height + 40;
        int total = below + LINE * (4 + (ladder.unranked().size() + 2) / 3);
        StringBuilder svg = new StringBuilder();
        svg.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " " + total + "\" width=\"" + WIDTH
                        + "\" height=\"" + total
                        + "\" font-family=\"sans-serif\" font-size=\"13\" role=\"img\" aria-label=\"Ladder of solvents for "
                        + escaped(ladder.phase().name()) + "\">\n");
        svg.append("<rect width=\"" + WIDTH + "\" height=\"" + total + "\" fill=\"#ffffff\"/>\n");
        text(
                svg,
                20,
                28,
                "font-size=\"17\" font-weight=\"bold\"",
                "Ladder for " + ladder.phase().name());
        text(svg, 20, 50, "", "scale: " + ladder.scale().property() + "; strongest at the top");
        rails(svg, height);
        ticks(svg, ladder, height);
        int[] labels = labelHeights(ladder, height);
        for (int i = 0; i < rungs.size(); i++) {
            rung(svg, rungs.get(i), y(ladder, rungs.get(i).height(), height), labels[i], data);
        }
        footer(svg, ladder, below);
        return svg.append("</svg>\n").toString();
    }

    private static void rails(StringBuilder svg, int height) {
        for (int x : List.of(LEFT_RAIL, RIGHT_RAIL)) {
            svg.append("<line x1=\"" + x + "\" x2=\"" + x + "\" y1=\"" + (TOP - 12) + "\" y2=\"" + (TOP + height + 12)
                    + "\" stroke=\"#000000\" stroke-width=\"3\"/>\n");
        }
    }

    private static void ticks(StringBuilder svg, ShelfLadder ladder, int height) {
        int steps = 5;
        for (int i = 0; i <= steps; i++) {
            double value = weakest(ladder) + (strongest(ladder) - weakest(ladder)) * i / steps;
            String at = Numbers.fixed(y(ladder, value, height), 1);
            svg.append("<line x1=\"" + (LEFT_RAIL - 8) + "\" x2=\"" + LEFT_RAIL + "\" y1=\"" + at + "\" y2=\"" + at
                    + "\" stroke=\"#000000\"/>\n");
            svg.append("<text x=\"" + (LEFT_RAIL - 14) + "\" y=\"" + Numbers.fixed(y(ladder, value, height) + 4, 1)
                    + "\" text-anchor=\"end\">" + Numbers.plain(value, 2) + "</text>\n");
        }
    }

    private static void rung(StringBuilder svg, Rung rung, double at, int labelAt, SolventData data) {
        boolean banned = rung.bottle().banned().isPresent();
        boolean questioned = !rung.differences().isEmpty();
        String y = Numbers.fixed(at, 1);
        svg.append("<line x1=\"" + LEFT_RAIL + "\" x2=\"" + RIGHT_RAIL + "\" y1=\"" + y + "\" y2=\"" + y
                + "\" stroke=\"#1f3f6e\" stroke-width=\"5\"" + (banned ? " stroke-dasharray=\"6 5\"" : "") + "/>\n");
        svg.append("<path d=\"M" + (RIGHT_RAIL + 4) + " " + y + " L" + (LABEL - 30) + " " + labelAt + " H" + (LABEL - 6)
                + "\" fill=\"none\" stroke=\"#777777\"/>\n");
        String name = rung.bottle().name() + (questioned ? " *" : "") + (banned ? " (banned)" : "");
        text(svg, LABEL, labelAt + 4, banned ? "text-decoration=\"line-through\"" : "", name);
        text(svg, LABEL + 230, labelAt + 4, "font-weight=\"bold\"", letters(rung.bottle(), data));
        text(svg, LABEL + 320, labelAt + 4, "fill=\"#444444\"", rung.value().shown());
    }

    private static String letters(Bottle bottle, SolventData data) {
        TreeSet<String> letters = new TreeSet<>();
        bottle.contents().parts().get(0).solvent().value("hazard codes").stream()
                .flatMap(value -> value.texts().stream())
                .flatMap(code -> data.hazard(code).stream())
                .map(statement -> LETTER.getOrDefault(statement.group(), "?"))
                .forEach(letters::add);
        return String.join(" ", letters);
    }

    private static void footer(StringBuilder svg, ShelfLadder ladder, int below) {
        text(svg, 20, below, "", "F burns; T toxic; L harms with time; S hurts skin or eyes; W harms life in waters");
        if (ladder.rungs().stream().anyMatch(rung -> !rung.differences().isEmpty())) {
            text(svg, 20, below + LINE, "", OTHER_ORDER);
        }
        if (!ladder.unranked().isEmpty()) {
            text(svg, 20, below + 2 * LINE, "font-weight=\"bold\"", "Not on this ladder:");
            List<String> names = ladder.unranked().stream().map(Bottle::name).toList();
            for (int i = 0; i < names.size(); i++) {
                text(svg, 20 + 230 * (i % 3), below + (3 + i / 3) * LINE, "", names.get(i));
            }
        }
    }

    /** Labels keep their order and a line's distance; each is drawn as near to its rung as that allows. */
    private static int[] labelHeights(ShelfLadder ladder, int height) {
        List<Rung> rungs = ladder.rungs();
        List<Integer> heights = new ArrayList<>();
        int lowest = TOP + height;
        for (Rung rung : rungs) {
            lowest = Math.min(lowest, (int) Math.round(y(ladder, rung.height(), height)));
            heights.add(lowest);
            lowest -= LINE;
        }
        int overflow = heights.isEmpty() ? 0 : Math.max(0, TOP - heights.get(heights.size() - 1));
        int[] settled = new int[heights.size()];
        int least = TOP;
        for (int i = heights.size() - 1; i >= 0; i--) {
            settled[i] = overflow == 0 ? heights.get(i) : Math.max(least, heights.get(i));
            least = settled[i] + LINE;
        }
        return settled;
    }

    private static double weakest(ShelfLadder ladder) {
        return ladder.rungs().isEmpty() ? 0 : ladder.rungs().get(0).height();
    }

    private static double strongest(ShelfLadder ladder) {
        return ladder.rungs().isEmpty()
                ? 1
                : ladder.rungs().get(ladder.rungs().size() - 1).height();
    }

    private static double y(ShelfLadder ladder, double value, int height) {
        double span = strongest(ladder) - weakest(ladder);
        double share = span == 0 ? 0.5 : (value - weakest(ladder)) / span;
        return TOP + height * (1 - share);
    }

    private static void text(StringBuilder svg, int x, int y, String style, String words) {
        svg.append(String.format(
                        Locale.ROOT,
                        "<text x=\"%d\" y=\"%d\"%s>%s</text>%n",
                        x,
                        y,
                        style.isEmpty() ? "" : " " + style,
                        escaped(words))
                .replace("\r\n", "\n"));
    }

    private static String escaped(String words) {
        return StringEscapeUtils.escapeXml10(words);
    }
}
