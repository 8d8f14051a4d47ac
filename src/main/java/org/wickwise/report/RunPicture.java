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
import org.wickwise.report.VolumePage.Bar;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * A finished column as an SVG picture: the band that the strips let one expect of each dye as a curve, and over it the fractions
 * that were collected as bars. A curve and the bars of its dye hold the same amount. It needs no colour.
 */
public final class RunPicture {

    private static final double LANE = 8;
    private static final double PEAK_OF_A_UNIT_BAND = 1 / Math.sqrt(2 * Math.PI);

    /** One for each of the dyes a mixture can have; told apart on white and from their neighbours. */
    private static final List<String> GREYS =
            List.of("#d9d9d9", "#a6a6a6", "#eeeeee", "#8c8c8c", "#cccccc", "#737373", "#e3e3e3", "#b3b3b3");

    private final RunOutcome outcome;
    private final double columnVolume;
    private final Map<Dye, Band> expected = new LinkedHashMap<>();
    private final VolumePage page;
    private final VolumeAxis volumes;
    private final ProfileCurves curves;

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
        double ran =
                Math.max(outcome.run().collectedMillilitres(), outcome.run().pouredMillilitres());
        double last = Math.max(ProfileCurves.end(expected.values()), ran / columnVolume);
        this.page = new VolumePage(last, outcome.columnVolume());
        this.volumes = page.volumes();
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
        page.title(outcome.written().title());
        page.paragraph("Curves: expected from the strips for what was really poured. Bars: fractions as collected.");
        page.space(VolumePage.LINE);
        steps();
        double axis = page.plot(curves);
        double plotted = VolumePage.PLOT_HEIGHT / highestBar();
        bars(axis, plotted / densityOfTheNarrowest());
        curves.draw(page.drawing(), axis - plotted, axis);
        page.heading("Came");
        outcome.inOrder().forEach(this::came);
        outcome.dyes().stream().filter(dye -> dye.observed().isEmpty()).forEach(this::cameNowhere);
        page.layLanes();
        page.paragraph(
                "A curve and the bars of its dye hold the same amount, whatever was loaded or stuck. Bars with a dashed edge were"
                        + " seen and not read, and share their dye evenly by volume.");
        return page.page("run", "Finished column: " + outcome.written().title(), inWords());
    }

    private void steps() {
        for (int pour = 0; pour < outcome.run().poured().size(); pour++) {
            Poured poured = outcome.run().poured().get(pour);
            double from = outcome.run().pouredBefore(pour) / columnVolume;
            page.step(
                    Numbers.plain(poured.millilitres(), 0) + " mL of " + poured.eluent(),
                    from,
                    from + poured.millilitres() / columnVolume);
        }
    }

    /** From which to which fraction a dye came, and when it was expected. */
    private void came(DyeOutcome dye) {
        CollectedBand band = dye.observed().orElseThrow();
        Bar bar = new Bar("came", LANE, "fill=\"" + grey(dye) + "\" stroke=\"#000000\"");
        page.lane(
                words(dye),
                Optional.empty(),
                band.fromMillilitres() / columnVolume,
                band.toMillilitres() / columnVolume,
                bar);
    }

    private void cameNowhere(DyeOutcome dye) {
        page.paragraph(words(dye));
        page.space(VolumePage.LINE / 2);
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
                page.drawing().open("class=\"bar\"");
                page.drawing().meaning(dye.dye() + ", fraction " + fraction.number());
                page.drawing()
                        .rectangle(
                                left + width * there.indexOf(dye) / there.size(),
                                axis - height,
                                width / there.size(),
                                height,
                                "fill=\"" + grey(dye) + "\" stroke=\"#555555\""
                                        + (dye.byAbsorbance() ? "" : " stroke-dasharray=\"3 2\""));
                page.drawing().close();
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
}
