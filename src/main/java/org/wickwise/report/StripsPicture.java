package org.wickwise.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Strip;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * All strips of a case as one SVG picture, to one scale, their origins on one line. It needs no colour: each dye has a mark
 * and its name, outlines and words say what can be trusted.
 */
public final class StripsPicture {

    private static final double NOMINAL_MILLIMETRES = 70;
    private static final double LONGEST_STRIP = 300;
    private static final double LEAST_SCALE = 0.6;
    private static final double LARGEST_SCALE = 6;
    private static final double WIDEST = 960;
    private static final double NARROWEST = 600;
    private static final double MARGIN = 20;
    private static final double RULER = 46;
    private static final double LEAST_LABEL = 116;
    private static final double WIDEST_LABEL = 190;
    private static final double BETWEEN_STRIPS = 14;
    private static final double BETWEEN_ROWS = 26;
    private static final double LEAST_TICK_DISTANCE = 20;
    private static final String SMALL = "font-size=\"11\"";

    private final Judgement judgement;
    private final Case judged;
    private final double scale;
    private final double nominal;
    private final List<StripSketch> sketches;
    private final double labelWidth;
    private final int inRow;
    private final double cell;
    private final double width;
    private final Drawing drawing = new Drawing();
    private double y;

    private StripsPicture(Judgement judgement) {
        this.judgement = judgement;
        this.judged = judgement.judged();
        this.nominal = judged.strips().stream()
                .flatMapToDouble(strip -> strip.frontMillimetres().stream())
                .max()
                .orElse(NOMINAL_MILLIMETRES);
        this.scale = Math.max(LEAST_SCALE, Math.min(LARGEST_SCALE, Math.floor(10 * LONGEST_STRIP / nominal) / 10));
        this.sketches = judged.strips().stream()
                .map(strip -> new StripSketch(strip, judgement, scale, nominal))
                .toList();
        double room = WIDEST - 2 * MARGIN - RULER;
        double leastLabel = Math.max(LEAST_LABEL, Math.min(WIDEST_LABEL, longestWord() + StripSketch.MARK_ROOM));
        double narrowest = widestSketch(leastLabel) + BETWEEN_STRIPS;
        this.inRow = (int) Math.max(1, Math.min(sketches.size(), Math.floor(room / narrowest)));
        this.labelWidth = Math.max(leastLabel, Math.min(WIDEST_LABEL, leastLabel + room / inRow - narrowest));
        this.cell = widestSketch(labelWidth) + BETWEEN_STRIPS;
        this.width = Math.max(NARROWEST, 2 * MARGIN + RULER + inRow * cell);
    }

    public static String of(Judgement judgement) {
        return new StripsPicture(judgement).picture();
    }

    private double widestSketch(double labelled) {
        return sketches.stream()
                .mapToDouble(sketch -> sketch.width(labelled))
                .max()
                .orElse(labelled);
    }

    /** The widest word of a dye's name, which labels should not have to break. */
    private double longestWord() {
        return judged.dyes().stream()
                .flatMap(dye -> Stream.of(dye.name().split(" ")))
                .mapToDouble(word -> Lettering.width(word, StripSketch.FONT))
                .max()
                .orElse(0);
    }

    private String picture() {
        heading();
        for (int first = 0; first < sketches.size(); first += inRow) {
            row(sketches.subList(first, Math.min(sketches.size(), first + inRow)));
        }
        notes();
        return drawing.page(
                "strips",
                width,
                y + MARGIN,
                "Strips: " + judged.title(),
                scaleInWords() + " "
                        + sketches.stream().map(StripSketch::inWords).collect(Collectors.joining(" ")));
    }

    private void heading() {
        y = MARGIN + 12;
        paragraph(judged.title(), 17, "font-size=\"17\" font-weight=\"bold\"");
        y += 2;
        paragraph("Strips of " + judged.mixture() + ". " + scaleInWords(), 12, "");
        y += 12;
    }

    private String scaleInWords() {
        return anyFront(judged.strips())
                ? "Distances are to scale, in millimetres from the origin; a bar is the 95 % interval of a position."
                : "No front was measured, so no distance is in millimetres.";
    }

    private static boolean anyFront(List<Strip> strips) {
        return strips.stream().anyMatch(strip -> strip.frontMillimetres().isPresent());
    }

    private void row(List<StripSketch> row) {
        double textWidth = cell - BETWEEN_STRIPS;
        int headings = row.stream()
                .mapToInt(sketch -> sketch.heading(textWidth).size())
                .max()
                .orElse(0);
        double above = row.stream()
                .mapToDouble(sketch -> sketch.above(labelWidth))
                .max()
                .orElse(0);
        double below = row.stream()
                .mapToDouble(sketch -> sketch.below(labelWidth))
                .max()
                .orElse(0);
        int captions = row.stream()
                .mapToInt(sketch -> sketch.verdict(textWidth).size()
                        + sketch.captions(textWidth).size())
                .max()
                .orElse(0);
        double origin = y + headings * 15 + above;
        if (anyFront(row.stream().map(StripSketch::strip).toList())) {
            ruler(origin, row);
        }
        for (int i = 0; i < row.size(); i++) {
            StripSketch sketch = row.get(i);
            double x = MARGIN + RULER + i * cell;
            List<String> heading = sketch.heading(textWidth);
            drawing.texts(x, y + (headings - heading.size()) * 15 + 8, 15, "font-weight=\"bold\"", heading);
            drawing.open("class=\"strip\" transform=\"translate(" + Drawing.number(x) + " " + Drawing.number(origin)
                    + ")\"");
            sketch.draw(drawing, labelWidth);
            drawing.close();
            double under = origin + below + 15;
            List<String> verdict = sketch.verdict(textWidth);
            drawing.texts(x, under, StripSketch.LINE, SMALL + " font-weight=\"bold\"", verdict);
            under += verdict.size() * StripSketch.LINE;
            drawing.texts(x, under, StripSketch.LINE, SMALL, sketch.captions(textWidth));
        }
        y = origin + below + 15 + captions * StripSketch.LINE + BETWEEN_ROWS;
    }

    private void ruler(double origin, List<StripSketch> row) {
        double longest = row.stream()
                .mapToDouble(sketch -> sketch.strip().frontMillimetres().orElse(nominal))
                .max()
                .orElse(0);
        double step = List.of(10.0, 20.0, 50.0).stream()
                .filter(millimetres -> millimetres * scale >= LEAST_TICK_DISTANCE)
                .findFirst()
                .orElse(100.0);
        double x = MARGIN + RULER - 16;
        drawing.open("class=\"ruler\"");
        drawing.line(x, origin, x, origin - longest * scale, "stroke=\"#000000\"");
        for (double at = 0; at <= longest; at += step) {
            double tick = origin - at * scale;
            drawing.line(x - 5, tick, x, tick, "stroke=\"#000000\"");
            drawing.text(x - 8, tick + 4, SMALL + " text-anchor=\"end\"", Numbers.plain(at, 0));
        }
        drawing.close();
        drawing.text(x - 8, origin + 18, SMALL + " text-anchor=\"end\"", "mm");
    }

    /** Why a strip or a spot is not to be trusted, in the words of the rules. */
    private void notes() {
        Set<String> notes = new LinkedHashSet<>();
        for (Strip strip : judged.strips()) {
            for (Reading reading : List.of(Reading.VOID, Reading.DOUBTFUL)) {
                because(new StripVerdict(strip, reading), reading, notes);
                judged.dyes().forEach(dye -> because(new SpotVerdict(strip, dye, reading), reading, notes));
            }
        }
        if (judged.strips().stream().anyMatch(strip -> !strip.streaked().isEmpty())) {
            notes.add("A streak is drawn from the origin to its reading; how far it smeared was not written down.");
        }
        if (judged.strips().stream().anyMatch(strip -> strip.frontMillimetres().isEmpty())) {
            String length = anyFront(judged.strips())
                    ? "as if its front stood at " + Numbers.plain(nominal, 2) + " mm"
                    : "with a nominal length";
            notes.add("A strip without a measured front is drawn " + length + ".");
        }
        if (sketches.stream().anyMatch(StripSketch::isWatched)) {
            notes.add("A dotted bar is the range of the word for what was judged by eye.");
        }
        notes.forEach(note -> paragraph(note, 11, SMALL));
    }

    private void because(Conclusion verdict, Reading reading, Set<String> notes) {
        if (judgement.holds(verdict)) {
            judgement
                    .reason(verdict)
                    .arguments()
                    .forEach(argument -> notes.add(Words.capital(reading.word()) + ": " + argument.because()));
        }
    }

    /** Lines across the picture; moves on below them. */
    private void paragraph(String words, double fontSize, String style) {
        y = drawing.paragraph(MARGIN, y, width - 2 * MARGIN, fontSize, style, words);
    }
}
