package org.wickwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A page whose width is the volume poured, written from the top down: paragraphs, a lane for each step, one plot with a line
 * through it where a step begins, more lanes. Takes column volumes.
 */
final class VolumePage {

    static final double FONT = 12;
    static final double LINE = 15;
    static final double PLOT_HEIGHT = 220;

    private static final double WIDTH = 900;
    private static final double MARGIN = 20;
    private static final double LEFT = 50;
    private static final double RIGHT = WIDTH - 30;
    private static final double AXIS_HEIGHT = 62;
    private static final double WORDS_TO_BAR = 6;
    private static final double BAR_TO_NEXT = 20;
    private static final double INDENT = 4;
    private static final double SAMPLE = 34;
    private static final Bar STEP = new Bar("step-lane", 2, "fill=\"#000000\"");

    private final VolumeAxis volumes;
    private final Drawing drawing = new Drawing();
    private final Drawing lanes = new Drawing();
    private final List<Beginning> stepsBegin = new ArrayList<>();
    private double topOfSteps;
    private double y = MARGIN + FONT;

    /** @param top where the line of a step begins that is poured from so many column volumes on */
    private record Beginning(double from, double top) {}

    /** @param kind the class of its mark in the picture */
    record Bar(String kind, double thickness, String style) {}

    /**
     * @param last the column volumes at the right end, above 0
     * @param columnVolumeMillilitres one column volume, where it is known
     */
    VolumePage(double last, OptionalDouble columnVolumeMillilitres) {
        this.volumes = new VolumeAxis(LEFT, RIGHT, last, columnVolumeMillilitres);
    }

    VolumeAxis volumes() {
        return volumes;
    }

    /** What lies under the words of the lanes. */
    Drawing drawing() {
        return drawing;
    }

    void title(String words) {
        y = drawing.paragraph(MARGIN, y, WIDTH - 2 * MARGIN, 17, "font-size=\"17\" font-weight=\"bold\"", words);
    }

    void paragraph(String words) {
        y = drawing.paragraph(MARGIN, y, WIDTH - 2 * MARGIN, FONT, "", words);
    }

    /** A word in bold over what belongs to it. */
    void heading(String word) {
        drawing.text(MARGIN, y, "font-weight=\"bold\"", word);
        y += LINE + 4;
    }

    void space(double height) {
        y += height;
    }

    /** The lane of the next step, over the volume for which it is poured. */
    void step(String words, double from, double to) {
        if (stepsBegin.isEmpty()) {
            topOfSteps = y;
        }
        boolean wordsBeginAtTheLine = lane(words, Optional.empty(), from, to, STEP) >= volumes.x(from);
        double bar = y - BAR_TO_NEXT - STEP.thickness();
        stepsBegin.add(new Beginning(from, wordsBeginAtTheLine ? topOfSteps : bar));
    }

    /** Makes room for the plot and draws the lines where steps begin; gives the height of its axis. */
    double plot(ProfileCurves curves) {
        double axis = y + curves.namesHeight() + PLOT_HEIGHT;
        for (Beginning step : stepsBegin) {
            double x = volumes.x(step.from());
            drawing.line(x, step.top(), x, axis, "class=\"step\" stroke=\"#777777\"");
        }
        y = axis + AXIS_HEIGHT;
        return axis;
    }

    /**
     * Words over a bar; words that would run out of the page begin further left.
     *
     * @param curve the style of a curve, of which a sample stands before the words
     * @return where the words begin, or the sample before them
     */
    double lane(String words, Optional<String> curve, double from, double to, Bar bar) {
        double indent = curve.isPresent() ? SAMPLE : INDENT;
        List<String> lines = Lettering.wrapped(words, RIGHT - LEFT - indent, FONT);
        double widest = lines.stream()
                .mapToDouble(line -> Lettering.width(line, FONT))
                .max()
                .orElse(0);
        double x = Math.max(LEFT, Math.min(volumes.x(from), RIGHT - widest - indent));
        curve.ifPresent(style -> lanes.line(x, y - 4, x + SAMPLE - 6, y - 4, style));
        lanes.texts(x + indent, y, LINE, Drawing.HALO, lines);
        y += (lines.size() - 1) * LINE + WORDS_TO_BAR;
        lanes.rectangle(
                volumes.x(from),
                y,
                volumes.x(to) - volumes.x(from),
                bar.thickness(),
                "class=\"" + bar.kind() + "\" " + bar.style());
        y += bar.thickness() + BAR_TO_NEXT;
        return x;
    }

    /** Lays the lanes over what was drawn. */
    void layLanes() {
        drawing.add(lanes);
    }

    String page(String name, String title, String description) {
        return drawing.page(name, WIDTH, y + MARGIN, title, description);
    }
}
