package org.wickwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.wickwise.Shipped;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.ShelfLadder;
import org.wickwise.substance.ShelfLadder.Rung;
import org.wickwise.substance.ShelfReader;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;

/** What the picture of a ladder shows, read back from the SVG. */
class LadderPictureTest {

    private static final Path EVENING = Path.of("docs/examples/evening-shelf.yaml");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"silica", "alumina", "C18"})
    void rungsLieAtTheirValuesBetweenRoundTicks(String phase) {
        ShelfLadder ladder = wholeTable(phase);
        DrawnPicture picture = drawn(ladder);
        List<Element> rungs = DrawnPicture.ofClass(picture.root(), "rung");
        assertThat(rungs).hasSameSizeAs(ladder.rungs());
        for (Rung rung : ladder.rungs()) {
            Element drawn = rungs.stream()
                    .filter(one -> DrawnPicture.title(one).equals(rung.bottle().name()))
                    .findFirst()
                    .orElseThrow();
            double at = DrawnPicture.number(DrawnPicture.all(drawn, "line").get(0), "y1");
            assertThat(value(picture, at)).isEqualTo(rung.height(), within(1e-3));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"silica", "alumina", "C18"})
    void everyBottleIsNamedOnceAndNoTextRunsOutOfThePage(String phase) {
        ShelfLadder ladder = wholeTable(phase);
        DrawnPicture picture = drawn(ladder);
        List<String> texts = DrawnPicture.all(picture.root(), "text").stream()
                .map(text -> text.getTextContent().replace(" *", ""))
                .toList();
        ladder.rungs().forEach(rung -> assertThat(texts)
                .containsOnlyOnce(rung.bottle().name()));
        ladder.unranked().forEach(bottle -> assertThat(texts).containsOnlyOnce(bottle.name()));
        assertThat(picture.wordsOutside()).isEmpty();
    }

    @Test
    void aBottleThatIsNotOnTheLadderHasTheLettersOfEveryPart() throws IOException {
        String words = drawn(
                        of(
                                """
                  - {name: window spirit, blend: ethanol 96 % + toluene 4 %, banned: it smells}
                  - {name: salt water, blend: water 90 % + ethanol 10 % with salt 2 %}
                  - {solvent: water}
                """))
                .words();
        assertThat(words)
                .contains("Not on this ladder: salt water F S ? water  window spirit (banned) F T L S")
                .contains("No bottle of this shelf has a place on it.")
                .contains("F burns; T toxic; L harms with time; S hurts skin or eyes; W harms life in waters");
    }

    @Test
    void bottlesOfOneStrengthShareOneTickAndAShelfWithoutAnyHasNone() throws IOException {
        assertThat(ticks(of("  - {solvent: acetone}\n"))).containsExactly("0.53");
        assertThat(ticks(of("  - {solvent: acetone}\n  - {solvent: tetrahydrofuran}\n")))
                .containsExactly("0.53");
        assertThat(ticks(of("  - {solvent: ethanol}\n"))).isEmpty();
    }

    @Test
    void ticksOfNearStrengthsAreToldApart() throws IOException {
        assertThat(ticks(of("  - {solvent: acetone}\n  - {solvent: ethyl acetate}\n")))
                .startsWith("0.48", "0.49")
                .doesNotHaveDuplicates();
    }

    @Test
    void theTickOfTheStrongestIsThere() {
        assertThat(ticks(wholeTable("silica"))).startsWith("0", "0.1").endsWith("0.7");
    }

    @Test
    void aLongNameIsBrokenBeforeTheLetters() throws IOException {
        DrawnPicture picture = drawn(
                of(
                        """
                  - {solvent: acetone}
                  - {name: "what is left of the spirit that Ms Tern brought from the harbour", blend: ethanol 96 % + water 4 %}
                """));
        List<String> lines = DrawnPicture.all(picture.root(), "text").stream()
                .filter(text -> text.getAttribute("x").equals("235"))
                .map(Element::getTextContent)
                .toList();
        assertThat(lines).hasSizeGreaterThan(2).allMatch(line -> Lettering.width(line, 12) <= 220);
        assertThat(String.join(" ", lines))
                .isEqualTo("acetone what is left of the spirit that Ms Tern brought from the harbour");
    }

    @Test
    void thePictureOfTheGuideIsWhatTheProgramDraws() throws IOException {
        ShelfLadder ladder = ladder(ShelfReader.read(EVENING, Shipped.data()), "silica");
        assertThat(Files.readString(Path.of("docs/evening-ladder.svg")))
                .isEqualTo(LadderPicture.of(ladder, Shipped.data()));
    }

    /** A shelf of these bottles, for silica. */
    private ShelfLadder of(String bottles) throws IOException {
        Path file = Files.writeString(folder.resolve("shelf.yaml"), "shelf: made up\nbottles:\n" + bottles);
        return ladder(ShelfReader.read(file, Shipped.data()), "silica");
    }

    private static ShelfLadder wholeTable(String phase) {
        return ladder(Shelf.wholeTable(Shipped.data(), Place.wholeFile("solvent-data")), phase);
    }

    private static ShelfLadder ladder(Shelf shelf, String phase) {
        StationaryPhase found = Shipped.data().stationaryPhase(phase).orElseThrow();
        return ShelfLadder.of(shelf, found, Shipped.data().otherScales());
    }

    private static DrawnPicture drawn(ShelfLadder ladder) {
        return new DrawnPicture(LadderPicture.of(ladder, Shipped.data()));
    }

    private static List<String> ticks(ShelfLadder ladder) {
        return tickLabels(drawn(ladder)).stream().map(Element::getTextContent).toList();
    }

    private static List<Element> tickLabels(DrawnPicture picture) {
        return DrawnPicture.ofClass(picture.root(), "ticks").stream()
                .flatMap(ticks -> DrawnPicture.all(ticks, "text").stream())
                .toList();
    }

    /** The value at a height, read off the first and the last tick. */
    private static double value(DrawnPicture picture, double y) {
        List<Element> labels = tickLabels(picture);
        List<Element> marks =
                DrawnPicture.all(DrawnPicture.ofClass(picture.root(), "ticks").get(0), "line");
        int last = labels.size() - 1;
        double low = DrawnPicture.number(marks.get(0), "y1");
        double high = DrawnPicture.number(marks.get(last), "y1");
        double lowest = Double.parseDouble(labels.get(0).getTextContent());
        double highest = Double.parseDouble(labels.get(last).getTextContent());
        return lowest + (y - low) / (high - low) * (highest - lowest);
    }
}
