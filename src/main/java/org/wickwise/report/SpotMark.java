package org.wickwise.report;

import java.util.List;
import org.wickwise.substance.Dye;

/** How the spots of a dye are filled, so that each dye keeps its look on every strip without any colour. */
enum SpotMark {
    FULL,
    OPEN,
    RIGHT_HALF,
    UPPER_HALF,
    UPRIGHT_CROSS,
    DOT,
    SLANTED_CROSS,
    BAR,
    SHARED;

    static final double RADIUS = 5;

    /** The mark of the only dye of a spot, by its place in the mixture; a mark of its own for a spot of several. */
    static SpotMark of(List<Dye> spot, List<Dye> mixture) {
        return spot.size() > 1 ? SHARED : values()[mixture.indexOf(spot.get(0)) % SHARED.ordinal()];
    }

    void draw(Drawing drawing, double x, double y) {
        String fill = this == FULL ? "fill=\"#000000\"" : "fill=\"#ffffff\"";
        drawing.circle(x, y, RADIUS, fill + " stroke=\"#000000\" stroke-width=\"1.2\"");
        String black = "fill=\"#000000\"";
        String stroke = "stroke=\"#000000\" stroke-width=\"1.6\"";
        double reach = RADIUS * Math.sqrt(0.5);
        switch (this) {
            case FULL, OPEN -> {}
            case RIGHT_HALF -> drawing.path(half(x, y - RADIUS, x, y + RADIUS), black);
            case UPPER_HALF -> drawing.path(half(x - RADIUS, y, x + RADIUS, y), black);
            case UPRIGHT_CROSS -> {
                drawing.line(x - RADIUS, y, x + RADIUS, y, stroke);
                drawing.line(x, y - RADIUS, x, y + RADIUS, stroke);
            }
            case DOT -> drawing.circle(x, y, 2, black);
            case SLANTED_CROSS -> {
                drawing.line(x - reach, y - reach, x + reach, y + reach, stroke);
                drawing.line(x - reach, y + reach, x + reach, y - reach, stroke);
            }
            case BAR -> drawing.line(x - RADIUS, y, x + RADIUS, y, "stroke=\"#000000\" stroke-width=\"3\"");
            case SHARED -> drawing.circle(x, y, RADIUS / 2, "fill=\"none\" stroke=\"#000000\"");
        }
    }

    private static String half(double x1, double y1, double x2, double y2) {
        String radius = Drawing.number(RADIUS);
        return "M" + Drawing.number(x1) + " " + Drawing.number(y1) + " A" + radius + " " + radius + " 0 0 1 "
                + Drawing.number(x2) + " " + Drawing.number(y2) + " Z";
    }
}
