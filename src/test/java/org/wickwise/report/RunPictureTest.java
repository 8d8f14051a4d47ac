package org.wickwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.wickwise.Shipped;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.EntryReader;
import org.wickwise.notebook.Fraction;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.rulebook.RunFacts;

/** What the picture of a finished column shows, read back from the SVG. */
class RunPictureTest {

    private final RunOutcome outcome = outcome();
    private final DrawnPicture picture = new DrawnPicture(RunPicture.of(outcome));

    private static RunOutcome outcome() {
        Entry entry = EntryReader.read(Path.of("docs/examples/ferry-ink-run.yaml"), Shipped.data());
        var run = entry.run().orElseThrow();
        return RunFacts.outcome(Shipped.bench().judge().judge(entry.column().orElseThrow(), run), run);
    }

    @Test
    void aBarSpansItsFraction() {
        for (Element bar : DrawnPicture.ofClass(picture.root(), "bar")) {
            Fraction fraction = outcome.run().fractions().stream()
                    .filter(one -> DrawnPicture.title(bar).endsWith(", fraction " + one.number()))
                    .findFirst()
                    .orElseThrow();
            Element drawn = DrawnPicture.all(bar, "rect").get(0);
            double left = DrawnPicture.number(drawn, "x");
            double right = left + DrawnPicture.number(drawn, "width");
            assertThat(picture.volume(left)).isEqualTo(fraction.fromMillilitres(), within(0.1));
            assertThat(picture.volume(right)).isEqualTo(fraction.toMillilitres(), within(0.1));
        }
    }

    @Test
    void aLaneSpansTheFractionsInWhichADyeCame() {
        List<Element> lanes = DrawnPicture.ofClass(picture.root(), "came");
        List<DyeOutcome> came = outcome.inOrder();
        assertThat(lanes).hasSameSizeAs(came).hasSize(3);
        for (int i = 0; i < lanes.size(); i++) {
            var band = came.get(i).observed().orElseThrow();
            double left = DrawnPicture.number(lanes.get(i), "x");
            double right = left + DrawnPicture.number(lanes.get(i), "width");
            assertThat(picture.volume(left)).isEqualTo(band.fromMillilitres(), within(0.1));
            assertThat(picture.volume(right)).isEqualTo(band.toMillilitres(), within(0.1));
        }
    }

    @Test
    void aCurveAndTheBarsOfItsDyeHoldTheSameAmount() {
        List<Element> curves = DrawnPicture.ofClass(picture.root(), "curve");
        assertThat(curves).hasSize(3);
        for (Element curve : curves) {
            double bars = DrawnPicture.ofClass(picture.root(), "bar").stream()
                    .filter(bar -> DrawnPicture.title(bar).startsWith(DrawnPicture.title(curve) + ", fraction "))
                    .map(bar -> DrawnPicture.all(bar, "rect").get(0))
                    .mapToDouble(bar -> DrawnPicture.number(bar, "width") * DrawnPicture.number(bar, "height"))
                    .sum();
            assertThat(bars).isEqualTo(areaUnder(curve), within(0.01 * bars));
        }
    }

    @Test
    void noTextRunsOutOfThePage() {
        assertThat(picture.wordsOutside()).isEmpty();
    }

    /** By trapezia, down to the lowest point of the curve. */
    private static double areaUnder(Element curve) {
        List<double[]> points = DrawnPicture.points(curve);
        double lowest = points.stream().mapToDouble(point -> point[1]).max().orElseThrow();
        double area = 0;
        for (int i = 1; i < points.size(); i++) {
            double width = points.get(i)[0] - points.get(i - 1)[0];
            area += width * (lowest - (points.get(i)[1] + points.get(i - 1)[1]) / 2);
        }
        return area;
    }
}
