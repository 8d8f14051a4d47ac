package org.wickwise.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Levels;
import org.wickwise.reason.Reason;
import org.wickwise.report.ReasonLayout.Place;

/**
 * A reason as an SVG picture: boxes in columns, each statement left of what it rests on, lines between; every reason once,
 * however many need it. Words and outlines tell the kinds apart, so it needs no colour.
 */
public final class ReasonPicture {

    /** A picture with more boxes than this is not taken in; deeper levels are left out then. */
    private static final int MOST_BOXES = 30;

    private static final int FEWEST_LEVELS = 2;
    private static final double MARGIN = 20;
    private static final double GUTTER = 70;
    private static final double LINE = 16;
    private static final double TITLE_SIZE = 14;
    private static final String LINE_STYLE = "fill=\"none\" stroke=\"#555555\"";

    private ReasonPicture() {}

    /**
     * @param levels how many steps below the statement are drawn, 1 or more; empty for as many as can be taken in at a glance
     */
    public static String of(PlanLine line, OptionalInt levels) {
        int drawn = levels.orElseGet(() -> levelsThatFit(line.reason()));
        ReasonLayout layout = new ReasonLayout(line.reason(), drawn);
        double width = 2 * MARGIN + layout.columnCount() * (ReasonBox.WIDTH + GUTTER) - GUTTER;
        width = Math.max(width, 2 * ReasonBox.WIDTH + 2 * MARGIN);
        List<String> title = Lettering.wrapped("Why: " + line.text(), width - 2 * MARGIN, TITLE_SIZE);
        List<String> below = Lettering.wrapped(footer(layout, drawn), width - 2 * MARGIN, 12);
        double top = MARGIN + LINE * 1.25 * title.size() + LINE;
        Drawing drawing = new Drawing();
        drawing.texts(
                MARGIN, MARGIN + LINE, LINE * 1.25, "font-size=\"" + TITLE_SIZE + "\" font-weight=\"bold\"", title);
        layout.all().forEach(place -> lines(drawing, layout, place, top));
        for (Map.Entry<Reason, ReasonBox> box : layout.boxes().entrySet()) {
            Place place = layout.placeOf(box.getKey());
            box.getValue().draw(drawing, left(place.column()), top + place.top());
        }
        double bottom = top + layout.height() + LINE;
        drawing.texts(MARGIN, bottom, LINE, "", below);
        return drawing.page(
                "reason",
                width,
                bottom + LINE * below.size() + MARGIN - LINE / 2,
                "Why: " + line.text(),
                description(layout));
    }

    private static int levelsThatFit(Reason reason) {
        Map<Reason, Integer> depths = Levels.of(reason);
        int deepest = depths.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int levels = deepest; levels > FEWEST_LEVELS; levels--) {
            int most = levels;
            if (depths.values().stream().filter(depth -> depth <= most).count() <= MOST_BOXES) {
                return levels;
            }
        }
        return FEWEST_LEVELS;
    }

    private static String footer(ReasonLayout layout, int levels) {
        String reading = "Read from left to right: a line leads from a statement to what it rests on.";
        return layout.leftOut() == 0
                ? reading
                : reading + " Left out: " + layout.leftOut() + " statements more than " + levels
                        + " steps below the first; --levels " + (levels + 1) + " shows one step more.";
    }

    private static String description(ReasonLayout layout) {
        StringBuilder words = new StringBuilder();
        layout.boxes().forEach((reason, box) -> words.append(box.kind().word())
                .append(": ")
                .append(reason.statement())
                .append(". "));
        return words.toString().strip();
    }

    private static void lines(Drawing drawing, ReasonLayout layout, Place from, double top) {
        double passed = left(from.column()) + (layout.isPassing(from) ? 0 : ReasonBox.WIDTH);
        if (layout.isPassing(from)) {
            drawing.line(passed, top + from.middle(), passed + ReasonBox.WIDTH, top + from.middle(), LINE_STYLE);
            passed += ReasonBox.WIDTH;
        }
        for (Place to : from.restsOn()) {
            double end = left(to.column());
            double bend = (passed + end) / 2;
            drawing.path(
                    "M" + at(passed, top + from.middle()) + " C" + at(bend, top + from.middle()) + " "
                            + at(bend, top + to.middle()) + " " + at(end, top + to.middle()),
                    LINE_STYLE);
        }
    }

    private static double left(int column) {
        return MARGIN + column * (ReasonBox.WIDTH + GUTTER);
    }

    private static String at(double x, double y) {
        return Drawing.number(x) + " " + Drawing.number(y);
    }
}
