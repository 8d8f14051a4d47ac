package org.wickwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wickwise.column.Band;
import org.wickwise.column.CollectedBand;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.Fraction;
import org.wickwise.notebook.Poured;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * A finished column as an SVG picture: the band that the strips let one expect of each dye as a curve, and over it the fractions
 * that were collected as bars. A curve and the bars of its dye hold the same amount. It needs no colour.
 */
public final class RunPicture {

    private static final double WIDTH = 900;
    private static final double MARGIN = 20;
    private static final double LEFT = 50;
    private static final double RIGHT = WIDTH - 30;
    private static final double PLOT_HEIGHT = 220;
    private static final double AXIS_HEIGHT = 62;
    private static final double FONT = 12;
    private static final double LINE = 15;
    private static final double TITLE_FONT = 17;
    private static final double LANE = 8;
    private static final double BAR_TO_NEXT = 20;
    private static final double SIGMAS_SHOWN = 4;
    private static final double PEAK_OF_A_UNIT_BAND = 1 / Math.sqrt(2 * Math.PI);

    /** One for each of the dyes a mixture can have; told apart on white and from their neighbours. */
    private static final List<String> GREYS =
            List.of("#d9d9d9", "#a6a6a6", "#eeeeee", "#8c8c8c", "#cccccc", "#737373", "#e3e3e3", "#b3b3b3");

    private final RunOutcome outcome;
    private final double columnVolume;
    private final Map<Dye, Band> expected = new LinkedHashMap<>();
    private final VolumeAxis volumes;
    private final ProfileCurves curves;
    private final Drawing drawing = new Drawing();
    private double y = MARGIN + FONT;

    private RunPicture(RunOutcome outcome) {
        this.outcome = outcome;
        this.columnVolume = outcome.columnVolume().orElseThrow();
        for (DyeOutcome dye : outcome.dyes()) {
            dye.predicted()
                    .ifPresent(predicted -> expected.put(
                            dye.dye(),
                            new Band(
                                    predicted.band().middleMillilitres() / columnVolume,
                                    predicted.band().sigmaMillilitres() / columnVolume)));
        }
        double lastBand = expected.values().stream()
                .mapToDouble(band -> band.middleMillilitres() + SIGMAS_SHOWN * band.sigmaMillilitres())
                .max()
                .orElseThrow();
        double ran =
                Math.max(outcome.run().collectedMillilitres(), outcome.run().pouredMillilitres());
        this.volumes = new VolumeAxis(LEFT, RIGHT, Math.max(lastBand, ran / columnVolume), outcome.columnVolume());
        this.curves = new ProfileCurves(expected, volumes);
    }

    /** Why there is nothing to draw, and the way out; empty when there is something. */
    public static Optional<String> obstacle(RunOutcome outcome) {
        if (outcome.columnVolume().isEmpty()) {
            return Optional.of("the run cannot be drawn, because the size of the bed is not known"
                    + "\n    add `bore mm` and `bed mm` to the column");
        }
        return outcome.dyes().stream().noneMatch(dye -> dye.predicted().isPresent())
                ? Optional.of(
                        "the run cannot be drawn beside what was to be expected, because no strip tells the Rf of any dye"
                                + " in every eluent that was poured up to it\n    run strips in what was poured")
                : Optional.empty();
    }

    /** @throws java.util.NoSuchElementException when there is an {@link #obstacle} */
    public static String of(RunOutcome outcome) {
        return new RunPicture(outcome).picture();
    }

    private String picture() {
        paragraph(outcome.written().title(), TITLE_FONT, "font-size=\"17\" font-weight=\"bold\"");
        paragraph(
                "Curves: expected from the strips for what was really poured. Bars: fractions as collected.", FONT, "");
        y += LINE;
        double topOfSteps = y;
        steps();
        double bars = highestBar();
        double top = y + curves.namesHeight() + PLOT_HEIGHT * (bars - 1) / bars;
        double axis = y + curves.namesHeight() + PLOT_HEIGHT;
        for (int pour = 0; pour < outcome.run().poured().size(); pour++) {
            double x = volumes.x(outcome.run().pouredBefore(pour) / columnVolume);
            drawing.line(x, topOfSteps, x, axis, "class=\"step\" stroke=\"#777777\"");
        }
        bars(axis, (axis - top) / densityOfTheNarrowest());
        curves.draw(drawing, top, axis);
        y = axis + AXIS_HEIGHT;
        drawing.text(MARGIN, y, "font-weight=\"bold\"", "Came");
        y += LINE + 4;
        outcome.inOrder().forEach(this::lane);
        outcome.dyes().stream().filter(dye -> dye.observed().isEmpty()).forEach(this::lane);
        paragraph(
                "A curve and the bars of its dye hold the same amount, whatever was loaded or stuck. Bars with a dashed edge were"
                        + " seen and not read, and share their dye evenly by volume.",
                FONT,
                "");
        return drawing.page(
                "run",
                WIDTH,
                y + MARGIN,
                "Finished column: " + outcome.written().title(),
                inWords());
    }

    private void steps() {
        for (int pour = 0; pour < outcome.run().poured().size(); pour++) {
            Poured poured = outcome.run().poured().get(pour);
            double from = outcome.run().pouredBefore(pour) / columnVolume;
            lane(
                    "step-lane",
                    Numbers.plain(poured.millilitres(), 0) + " mL of " + poured.eluent(),
                    from,
                    from + poured.millilitres() / columnVolume,
                    2,
                    "fill=\"#000000\"");
        }
    }

    /** One dye: from which to which fraction it came, and when it was expected. */
    private void lane(DyeOutcome dye) {
        if (dye.observed().isEmpty()) {
            paragraph(words(dye), FONT, "");
            y += LINE / 2;
            return;
        }
        CollectedBand band = dye.observed().get();
        lane(
                "came",
                words(dye),
                band.fromMillilitres() / columnVolume,
                band.toMillilitres() / columnVolume,
                LANE,
                "fill=\"" + grey(dye) + "\" stroke=\"#000000\"");
    }

    private String words(DyeOutcome dye) {
        String tag = curves.tag(dye.dye());
        String came = dye.observed()
                .map(band -> " came at " + Numbers.plain(band.middleMillilitres(), 0) + " mL")
                .orElse(" is in no fraction");
        String was = dye.predicted()
                .map(predicted ->
                        ", expected at " + Numbers.plain(predicted.band().middleMillilitres(), 0) + " mL")
                .orElse(", not expected anywhere: no strip tells");
        return tag + Words.capital(dye.dye().name()) + came + was + (dye.stuck() ? "; still seen on the bed" : "");
    }

    private void lane(String kind, String words, double from, double to, double thickness, String style) {
        List<String> lines = Lettering.wrapped(words, RIGHT - LEFT - 4, FONT);
        double widest = lines.stream()
                .mapToDouble(line -> Lettering.width(line, FONT))
                .max()
                .orElse(0);
        double x = Math.max(LEFT, Math.min(volumes.x(from), RIGHT - widest - 4));
        drawing.texts(x + 4, y, LINE, Drawing.HALO, lines);
        y += (lines.size() - 1) * LINE + 6;
        drawing.rectangle(
                volumes.x(from), y, volumes.x(to) - volumes.x(from), thickness, "class=\"" + kind + "\" " + style);
        y += thickness + BAR_TO_NEXT;
    }

    /** The share of a dye in a fraction over the fraction's width in column volumes. */
    private double density(DyeOutcome dye, Fraction fraction) {
        if (!dye.byAbsorbance() && !fraction.shows(dye.dye())) {
            return 0;
        }
        double all = outcome.run().fractions().stream()
                .filter(one -> dye.byAbsorbance() || one.shows(dye.dye()))
                .mapToDouble(one -> amount(dye, one))
                .sum();
        return all == 0 ? 0 : amount(dye, fraction) / all / (fraction.millilitres() / columnVolume);
    }

    private static double amount(DyeOutcome dye, Fraction fraction) {
        return dye.byAbsorbance() ? fraction.absorbed(dye.dye()).orElse(0) : fraction.millilitres();
    }

    /** The peak of the narrowest curve, which is drawn as high as the plot. */
    private double densityOfTheNarrowest() {
        return PEAK_OF_A_UNIT_BAND
                / expected.values().stream()
                        .mapToDouble(Band::sigmaMillilitres)
                        .min()
                        .orElseThrow();
    }

    /** The highest bar in units of the highest curve, at least 1. */
    private double highestBar() {
        double highest = outcome.dyes().stream()
                .flatMapToDouble(
                        dye -> outcome.run().fractions().stream().mapToDouble(fraction -> density(dye, fraction)))
                .max()
                .orElse(0);
        return Math.max(1, highest / densityOfTheNarrowest());
    }

    private void bars(double axis, double perDensity) {
        for (Fraction fraction : outcome.run().fractions()) {
            List<DyeOutcome> there = outcome.dyes().stream()
                    .filter(dye -> density(dye, fraction) > 0)
                    .toList();
            double left = volumes.x(fraction.fromMillilitres() / columnVolume);
            double width = volumes.x(fraction.toMillilitres() / columnVolume) - left;
            for (DyeOutcome dye : there) {
                double height = density(dye, fraction) * perDensity;
                drawing.open("class=\"bar\"");
                drawing.meaning(dye.dye() + ", fraction " + fraction.number());
                drawing.rectangle(
                        left + width * there.indexOf(dye) / there.size(),
                        axis - height,
                        width / there.size(),
                        height,
                        "fill=\"" + grey(dye) + "\" stroke=\"#555555\""
                                + (dye.byAbsorbance() ? "" : " stroke-dasharray=\"3 2\""));
                drawing.close();
            }
        }
    }

    private String grey(DyeOutcome dye) {
        return GREYS.get(outcome.dyes().indexOf(dye) % GREYS.size());
    }

    /** The picture in sentences, for readers who cannot see it. */
    private String inWords() {
        return outcome.dyes().stream().map(dye -> words(dye) + ".").collect(Collectors.joining(" "));
    }

    /** Lines across the picture; moves on below them. */
    private void paragraph(String words, double fontSize, String style) {
        List<String> lines = Lettering.wrapped(words, WIDTH - 2 * MARGIN, fontSize);
        drawing.texts(MARGIN, y, fontSize + 4, style, lines);
        y += lines.size() * (fontSize + 4);
    }
}
