package org.wickwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.wickwise.Shipped;
import org.wickwise.bench.CaseReader;
import org.wickwise.column.Band;
import org.wickwise.plan.Keeping.Flask;
import org.wickwise.plan.Plan;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Travelled;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;

/** What the pictures of strips and profiles show, read back from the SVG. */
class PicturesTest {

    private static final Path PICTURES = Path.of("src/test/resources/pictures");
    private static final Path NEAR = PICTURES.resolve("eight-near-dyes.yaml");
    private static final Path EVERY_KIND = PICTURES.resolve("every-kind-of-strip.yaml");

    static List<Path> cases() {
        return Stream.concat(Shipped.cases().stream(), Stream.of(NEAR, EVERY_KIND))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyStripAndEveryDyeIsNamed(Path file) {
        Plan plan = Shipped.planOf(file);
        String svg = StripsPicture.of(plan.judgement());
        DrawnPicture picture = new DrawnPicture(svg);
        List<Element> strips = DrawnPicture.ofClass(picture.root(), "strip");
        assertThat(strips).hasSameSizeAs(plan.judged().strips());
        for (int i = 0; i < strips.size(); i++) {
            String words = DrawnPicture.title(strips.get(i));
            assertThat(words).contains(plan.judged().strips().get(i).eluent().name());
            plan.judged().strips().get(i).spots().stream()
                    .flatMap(spot -> spot.dyes().stream())
                    .forEach(dye -> assertThat(words).contains(dye.name()));
        }
        assertThat(svg).doesNotContain("NaN", "Infinity", "null");
        assertThat(picture.words().replace(" ", ""))
                .contains(plan.judged().dyes().stream()
                        .map(dye -> dye.name().replace(" ", ""))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void spotsAndFrontsAreToScale(Path file) {
        Plan plan = Shipped.planOf(file);
        DrawnPicture picture = new DrawnPicture(StripsPicture.of(plan.judgement()));
        List<Element> rulers = DrawnPicture.ofClass(picture.root(), "ruler");
        List<Element> strips = DrawnPicture.ofClass(picture.root(), "strip");
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = plan.judged().strips().get(i);
            if (strip.frontMillimetres().isEmpty()) {
                continue;
            }
            Element drawn = strips.get(i);
            double unit = unitsPerMillimetre(rulers.get(0));
            assertThat(rulers).anySatisfy(ruler -> assertThat(zero(ruler)).isEqualTo(origin(drawn), within(0.01)));
            Element front = DrawnPicture.ofClass(drawn, "front").get(0);
            assertThat(-DrawnPicture.number(front, "y1"))
                    .isEqualTo(unit * strip.frontMillimetres().getAsDouble(), within(0.02));
            for (Spot spot : strip.spots()) {
                if (spot.position() instanceof Travelled travelled) {
                    Element mark =
                            DrawnPicture.all(drawnSpot(drawn, spot), "circle").get(0);
                    assertThat(-DrawnPicture.number(mark, "cy"))
                            .isEqualTo(unit * travelled.millimetres(), within(0.02));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyBarSpansTheNinetyFivePerCentIntervalOfItsPosition(Path file) {
        Plan plan = Shipped.planOf(file);
        DrawnPicture picture = new DrawnPicture(StripsPicture.of(plan.judgement()));
        List<Element> strips = DrawnPicture.ofClass(picture.root(), "strip");
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = plan.judged().strips().get(i);
            double length = -DrawnPicture.number(
                    DrawnPicture.ofClass(strips.get(i), "front").get(0), "y1");
            boolean isVoid = plan.judgement().holds(new StripVerdict(strip, Reading.VOID));
            for (Spot spot : strip.spots()) {
                List<Element> bars = DrawnPicture.ofClass(drawnSpot(strips.get(i), spot), "interval");
                assertThat(bars).hasSize(isVoid ? 0 : 1);
                plan.judgement().retardationFactor(strip, spot.dyes().get(0)).ifPresent(read -> assertThat(bars)
                        .allSatisfy(bar -> {
                            assertThat(-DrawnPicture.number(bar, "y1")).isEqualTo(length * read.lowest(), within(0.02));
                            assertThat(-DrawnPicture.number(bar, "y2"))
                                    .isEqualTo(length * read.highest(), within(0.02));
                        }));
            }
        }
    }

    @Test
    void theBarOfAKnownReadingIsAsWideAsItsUncertaintySays() {
        DrawnPicture picture =
                new DrawnPicture(StripsPicture.of(Shipped.planOf(Shipped.DEMO).judgement()));
        double unit =
                unitsPerMillimetre(DrawnPicture.ofClass(picture.root(), "ruler").get(0));
        Element strip = DrawnPicture.ofClass(picture.root(), "strip").get(1);
        Element spot = DrawnPicture.ofClass(strip, "spot").get(0);
        assertThat(DrawnPicture.title(spot)).isEqualTo("straw travelled 24 mm, Rf 0.33 ± 0.03");
        Element bar = DrawnPicture.ofClass(spot, "interval").get(0);
        assertThat(-DrawnPicture.number(bar, "y1"))
                .isEqualTo(72 * unit * (24 / 72.0 - 0.03), within(72 * unit * 0.005));
        assertThat(-DrawnPicture.number(bar, "y2"))
                .isEqualTo(72 * unit * (24 / 72.0 + 0.03), within(72 * unit * 0.005));
    }

    @Test
    void voidDoubtfulStreakedWatchedAndReportedStripsSaySo() {
        Plan plan = Shipped.planOf(EVERY_KIND);
        DrawnPicture picture = new DrawnPicture(StripsPicture.of(plan.judgement()));
        assertThat(picture.words())
                .contains("void: front ran off the end", "doubtful: jar left open", "streaked, doubtful", "at the edge")
                .contains("judged by eye: a sketch, not to scale", "brine travels", "moss and brine: clear")
                .contains("reported as Rf only: drawn on a nominal length", "not seen: brine")
                .contains("brine + moss Rf 0.50 ± 0.04, one spot", "strip 2", "no spot was read");
        assertThat(DrawnPicture.ofClass(picture.root(), "streak")).hasSize(1);
        Element crossed = DrawnPicture.ofClass(picture.root(), "strip").stream()
                .filter(strip -> DrawnPicture.title(strip).contains("(void)"))
                .findFirst()
                .orElseThrow();
        assertThat(DrawnPicture.title(crossed)).contains("no spot");
    }

    @Test
    void aDyeSeenAheadOfAnotherIsDrawnAheadOfIt() {
        DrawnPicture picture =
                new DrawnPicture(StripsPicture.of(Shipped.planOf(EVERY_KIND).judgement()));
        List<Element> spots = DrawnPicture.ofClass(picture.root(), "strip").stream()
                .filter(strip -> DrawnPicture.title(strip).contains("was seen"))
                .flatMap(strip -> DrawnPicture.ofClass(strip, "spot").stream())
                .toList();
        assertThat(spots)
                .extracting(DrawnPicture::title)
                .containsExactly("moss was seen: it travels", "brine was seen: it travels");
        assertThat(spots)
                .extracting(spot ->
                        DrawnPicture.number(DrawnPicture.all(spot, "circle").get(0), "cy"))
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noTextRunsOutOfThePage(Path file) {
        Plan plan = Shipped.planOf(file);
        List<String> pictures = new ArrayList<>(List.of(StripsPicture.of(plan.judgement())));
        if (ProfilePicture.obstacle(plan).isEmpty()) {
            pictures.add(ProfilePicture.of(plan));
        }
        for (String svg : pictures) {
            assertThat(new DrawnPicture(svg).wordsOutside()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void labelsOfAStripDoNotOverlap(Path file) {
        DrawnPicture picture =
                new DrawnPicture(StripsPicture.of(Shipped.planOf(file).judgement()));
        for (Element strip : DrawnPicture.ofClass(picture.root(), "strip")) {
            List<Double> baselines = DrawnPicture.all(strip, "text").stream()
                    .map(text -> DrawnPicture.number(text, "y"))
                    .sorted()
                    .toList();
            for (int i = 1; i < baselines.size(); i++) {
                assertThat(baselines.get(i) - baselines.get(i - 1)).isGreaterThanOrEqualTo(12.98);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aProfileNamesEveryDyeAndEluentOrSaysWhyThereIsNone(Path file) {
        Plan plan = Shipped.planOf(file);
        if (ProfilePicture.obstacle(plan).isPresent()) {
            assertThat(ProfilePicture.obstacle(plan).get()).startsWith("no profile can be drawn");
            return;
        }
        String svg = ProfilePicture.of(plan);
        DrawnPicture picture = new DrawnPicture(svg);
        assertThat(picture.words()).contains("estimated from the strips, not seen on a column");
        plan.judged().dyes().forEach(dye -> assertThat(picture.words()).contains(dye.name()));
        plan.route().orElseThrow().steps().forEach(step -> assertThat(picture.words())
                .contains(step.eluent().name()));
        assertThat(svg).doesNotContain("NaN", "Infinity", "null");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void peaksStepsAndBarsLieAtTheirVolumes(Path file) {
        Plan plan = Shipped.planOf(file);
        if (ProfilePicture.obstacle(plan).isPresent()) {
            return;
        }
        var elution = plan.elution().orElseThrow();
        DrawnPicture picture = new DrawnPicture(ProfilePicture.of(plan));
        double unit = plan.judged().column().columnVolumeMillilitres().orElse(1);
        for (Element curve : DrawnPicture.ofClass(picture.root(), "curve")) {
            Band band = elution.bands().entrySet().stream()
                    .filter(entry -> entry.getKey().name().equals(DrawnPicture.title(curve)))
                    .findFirst()
                    .orElseThrow()
                    .getValue();
            assertThat(picture.volume(peak(curve))).isEqualTo(unit * band.middleMillilitres(), within(unit * 0.01));
        }
        List<Element> bars = DrawnPicture.ofClass(picture.root(), "kept");
        List<Flask> kept = plan.keeping().orElseThrow().flasks();
        assertThat(bars).hasSameSizeAs(kept);
        for (int i = 0; i < bars.size(); i++) {
            double from = DrawnPicture.number(bars.get(i), "x");
            double to = from + DrawnPicture.number(bars.get(i), "width");
            assertThat(picture.volume(from)).isEqualTo(unit * kept.get(i).from(), within(unit * 0.01));
            assertThat(picture.volume(to)).isEqualTo(unit * kept.get(i).to(), within(unit * 0.01));
        }
        List<Element> steps = DrawnPicture.ofClass(picture.root(), "step");
        for (int i = 0; i < steps.size(); i++) {
            assertThat(picture.volume(DrawnPicture.number(steps.get(i), "x1")))
                    .isEqualTo(unit * elution.pouredBefore(i), within(unit * 0.01));
        }
    }

    /** Words of a late step that begin further left, for want of room, stand over the line of their step. */
    @ParameterizedTest
    @MethodSource("cases")
    void noLineOfAStepRunsThroughItsOwnWords(Path file) {
        Plan plan = Shipped.planOf(file);
        if (ProfilePicture.obstacle(plan).isPresent()) {
            return;
        }
        DrawnPicture picture = new DrawnPicture(ProfilePicture.of(plan));
        List<Element> lines = DrawnPicture.ofClass(picture.root(), "step");
        for (Element words : DrawnPicture.all(picture.root(), "text")) {
            if (words.getTextContent().matches("Step \\d+: .*")) {
                int step = Integer.parseInt(words.getTextContent().replaceFirst("Step (\\d+): .*", "$1"));
                Element line = lines.get(step - 1);
                assertThat(DrawnPicture.number(words, "x") >= DrawnPicture.number(line, "x1")
                                || DrawnPicture.number(words, "y") < DrawnPicture.number(line, "y1"))
                        .as(words.getTextContent())
                        .isTrue();
            }
        }
    }

    /** A strip without a measured front is drawn as long as the longest one, though that may stand in another row. */
    @Test
    void everyRulerReachesTheFrontsThatAreDrawnBesideIt() {
        String row = "  - {solvent: ethanol, replicate: %d, front mm: 80, travel mm: {red: 60, blue: 20}}\n";
        String text =
                """
                title: a strip by eye beside a shorter one
                mixture: {dyes: [red, blue]}
                column: {stationary phase: silica}
                setting: college
                strips:
                """
                        + row.formatted(1) + row.formatted(2) + row.formatted(3) + row.formatted(4)
                        + """
                  - {solvent: acetone, moves: {red: runs ahead, blue: travels}}
                  - {solvent: ethyl acetate, front mm: 70, travel mm: {red: 60, blue: 20}}
                """;
        Plan plan = Shipped.bench().plan(CaseReader.parse("test", text, Shipped.data()));
        DrawnPicture picture = new DrawnPicture(StripsPicture.of(plan.judgement()));
        List<Element> rulers = DrawnPicture.ofClass(picture.root(), "ruler");
        assertThat(rulers).hasSizeGreaterThan(1).allSatisfy(ruler -> assertThat(DrawnPicture.all(ruler, "text"))
                .last()
                .extracting(Element::getTextContent)
                .isEqualTo("80"));
    }

    @Test
    void aDyeThatWasNotMeasuredIsNamedAsMissing() {
        Plan plan = Shipped.planOf(Shipped.PUBLISHED.resolve("d16-madder-silica.yaml"));
        assertThat(new DrawnPicture(ProfilePicture.of(plan)).words())
                .contains("No curve for yellow: not measured in every eluent poured up to its own step.")
                .contains("(a guess, not measured)");
    }

    @Test
    void whereNamesHaveNoRoomThePeaksCarryTheNumbersOfTheBars() {
        DrawnPicture picture = new DrawnPicture(ProfilePicture.of(Shipped.planOf(NEAR)));
        assertThat(picture.words()).contains(" 1 2 3 4 5 6 7 8 ", "1  buoy orange of the outer channel, about");
    }

    @Test
    void namesAreEscapedAndKeepTheirLetters() {
        String svg = StripsPicture.of(Shipped.planOf(NEAR).judgement());
        assertThat(svg).contains("rope &amp; tar &lt;old&gt;", "deep &quot;harbour&quot; indigo", "grünlich");
        assertThat(new DrawnPicture(svg).words()).contains("rope & tar <old>", "signal flag soot & <soap>");
    }

    @Test
    void whatXmlCannotHoldDoesNotBreakThePicture() {
        Drawing drawing = new Drawing();
        drawing.text(1.5, 2, "", "rust\u0001 \ufffe\ud83d \"]]>' &amp;");
        Element root = new DrawnPicture(drawing.page("x", 10, 10, "a < b", "c & d")).root();
        assertThat(DrawnPicture.all(root, "text").get(0).getTextContent()).isEqualTo("rust  \"]]>' &amp;");
        assertThat(DrawnPicture.title(root)).isEqualTo("a < b");
    }

    @Test
    void aCoordinateThatIsNoNumberIsNeverDrawn() {
        assertThatThrownBy(() -> new Drawing().line(0, Double.NaN, 1, 1, "")).isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> new Drawing().circle(Double.POSITIVE_INFINITY, 0, 1, ""))
                .isInstanceOf(NumberFormatException.class);
    }

    @Test
    void bothPicturesHaveATitleAndADescriptionForReadersWhoListen() {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        for (String svg : List.of(StripsPicture.of(plan.judgement()), ProfilePicture.of(plan))) {
            Element root = new DrawnPicture(svg).root();
            String[] named = root.getAttribute("aria-labelledby").split(" ");
            assertThat(DrawnPicture.all(root, "title").get(0).getAttribute("id"))
                    .isEqualTo(named[0]);
            Element description = DrawnPicture.all(root, "desc").get(0);
            assertThat(description.getAttribute("id")).isEqualTo(named[1]);
            assertThat(description.getTextContent()).contains("straw", "rust", "harbour blue", "ethyl acetate");
        }
    }

    @Test
    void theSameCaseGivesTheSameBytesInEveryLocale() {
        List<String> first = pictures();
        Locale usual = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG"), usual)) {
                Locale.setDefault(locale);
                assertThat(pictures()).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Test
    void thePicturesOfTheDocumentsAreWhatTheProgramDraws() throws IOException {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        assertThat(Files.readString(Path.of("docs/ferry-ink-strips.svg")))
                .isEqualTo(StripsPicture.of(plan.judgement()));
        assertThat(Files.readString(Path.of("docs/ferry-ink-profile.svg"))).isEqualTo(ProfilePicture.of(plan));
    }

    private static List<String> pictures() {
        return Stream.of(Shipped.DEMO, NEAR)
                .map(Shipped::planOf)
                .map(plan -> List.of(StripsPicture.of(plan.judgement()), ProfilePicture.of(plan)))
                .flatMap(Collection::stream)
                .toList();
    }

    private static Element drawnSpot(Element strip, Spot spot) {
        String names = String.join(" + ", spot.dyes().stream().map(Dye::name).toList());
        return DrawnPicture.ofClass(strip, "spot").stream()
                .filter(drawn -> DrawnPicture.title(drawn)
                        .startsWith(names + " " + spot.position().words()))
                .findFirst()
                .orElseThrow();
    }

    private static double unitsPerMillimetre(Element ruler) {
        List<Element> marks = DrawnPicture.all(ruler, "text");
        double millimetres = Double.parseDouble(marks.get(1).getTextContent());
        return (DrawnPicture.number(marks.get(0), "y") - DrawnPicture.number(marks.get(1), "y")) / millimetres;
    }

    private static double zero(Element ruler) {
        return DrawnPicture.number(DrawnPicture.all(ruler, "line").get(0), "y1");
    }

    private static double origin(Element strip) {
        Matcher translation = DrawnPicture.TRANSLATION.matcher(strip.getAttribute("transform"));
        assertThat(translation.matches()).isTrue();
        return Double.parseDouble(translation.group(2));
    }

    /** Where the curve is highest. */
    private static double peak(Element curve) {
        return DrawnPicture.points(curve).stream()
                .min(Comparator.comparingDouble(point -> point[1]))
                .orElseThrow()[0];
    }
}
