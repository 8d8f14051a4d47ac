package org.wickwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.wickwise.Shipped;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Step;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.strip.Spot.Travelled;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Words;

/** The picture at the head of the README is drawn by hand; it still shows the strips and the plan of the example. */
class HandDrawnPictureTest {

    private static final double UNITS_PER_MILLIMETRE = 3.4;
    private static final double ORIGIN = 336;
    private static final Map<String, String> DYES = Map.of("s", "straw", "r", "rust", "b", "harbour blue");

    private final Plan plan = Shipped.planOf(Shipped.DEMO);
    private final Element root;

    HandDrawnPictureTest() throws IOException {
        this.root = new DrawnPicture(Files.readString(Path.of("docs/picture.svg"))).root();
    }

    @Test
    void everyStripIsThereWithItsEluentAndCrossedOutWhereItIsVoid() {
        List<Strip> strips = plan.judged().strips();
        assertThat(drawnStrips()).hasSameSizeAs(strips);
        for (int i = 0; i < strips.size(); i++) {
            Element drawn = drawnStrips().get(i);
            boolean isVoid = plan.judgement().holds(new StripVerdict(strips.get(i), Reading.VOID));
            assertThat(String.join(" ", texts(drawn)))
                    .contains(" " + strips.get(i).eluent().name());
            assertThat(DrawnPicture.all(drawn, "path")).hasSize(isVoid ? 1 : 0);
        }
    }

    @Test
    void spotsAndFrontsAreToScale() {
        List<Strip> strips = plan.judged().strips();
        for (int i = 0; i < strips.size(); i++) {
            Element drawn = drawnStrips().get(i);
            Element front = DrawnPicture.all(drawn, "line").get(0);
            assertThat(millimetres(front, "y1"))
                    .isEqualTo(strips.get(i).frontMillimetres().orElseThrow(), within(0.02));
            List<Element> spots = DrawnPicture.all(drawn, "circle");
            assertThat(spots).hasSameSizeAs(strips.get(i).spots());
            for (int j = 0; j < spots.size(); j++) {
                String dye = DYES.get(texts(drawn).get(j));
                assertThat(millimetres(spots.get(j), "cy")).isEqualTo(travelled(strips.get(i), dye), within(0.02));
            }
        }
    }

    @Test
    void thePlanBesideTheColumnIsThatOfTheProgram() {
        List<String> lines = new ArrayList<>(
                List.of("Pack and load", plan.packing().orElseThrow().name()));
        for (Step step : plan.route().orElseThrow().steps()) {
            lines.add(step.eluent().name());
            lines.add(Words.joined(step.leaving().stream().map(Dye::name).toList()) + " leaves");
        }
        assertThat(texts(DrawnPicture.ofClass(root, "plan").get(0)))
                .extracting(line -> line.replaceAll("^\\d {2}| sweeps$", ""))
                .isEqualTo(lines);
    }

    private List<Element> drawnStrips() {
        return DrawnPicture.ofClass(root, "strip");
    }

    private static double millimetres(Element element, String attribute) {
        return (ORIGIN - DrawnPicture.number(element, attribute)) / UNITS_PER_MILLIMETRE;
    }

    private static double travelled(Strip strip, String dye) {
        return strip.spots().stream()
                .filter(spot -> spot.dyes().get(0).name().equals(dye))
                .map(spot -> (Travelled) spot.position())
                .mapToDouble(Travelled::millimetres)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Element above) {
        return DrawnPicture.all(above, "text").stream()
                .map(Element::getTextContent)
                .toList();
    }
}
