package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.Heading;
import org.wickwise.report.ReasonText;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.ShelfReader;
import org.wickwise.substance.Solvent;

/** A shelf of one's own: what it changes in a plan, and how it is shown. */
class ShelfTest {

    private static final Path EVENING = Path.of("docs/examples/ferry-ink-evening.yaml");
    private static final String SHELF = "docs/examples/evening-shelf.yaml";

    private final Plan plan = Shipped.planOf(EVENING);

    @Test
    void theEveningShelfChangesTheLastStepToItsHouseholdBottle() {
        assertThat(Shipped.planOf(Shipped.DEMO).route().orElseThrow().names()).endsWith("then ethanol");
        assertThat(plan.route().orElseThrow().names())
                .isEqualTo("heptane + ethyl acetate 9:1, then ethyl acetate, then ethanol + water 24:1");
        assertThat(why("bottle-window-spirit")).contains("window spirit", SHELF + ":9");
    }

    @Test
    void aBannedBottleIsBarredAndWhyShowsTheShelfsFileAndLine() {
        assertThat(text("fitness-acetone")).contains("the shelf bans a bottle it needs");
        assertThat(why("fitness-acetone")).contains("it smells, and the room has no hood", SHELF + ":7");
    }

    @Test
    void aBottleThatIsTooEmptyIsNotPouredAndThePlanSaysWhatItWouldHaveBeen() {
        assertThat(text("stock")).contains("then ethanol;", "33 mL of ethanol", "the shelf gives 20 mL");
        assertThat(why("stock")).contains("ethanol holds 20 mL", "department-shelf.yaml:8");
    }

    /** 60 mL of the one part let one mix 80 mL, whatever stands in the bottle that says nothing. */
    @Test
    void aBlendIsAsScantyAsTheBottleThatSaysHowLittleItHolds(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("small.yaml"),
                "shelf: small\nbottles:\n  - {solvent: heptane, amount mL: 60}\n  - {solvent: ethyl acetate}\n");
        Shelf shelf = ShelfReader.read(file, Shipped.data());
        assertThat(shelf.millilitresOf(blend("heptane", 75, "ethyl acetate", 25)))
                .hasValue(80);
        assertThat(shelf.millilitresOf(Eluent.neat(solvent("ethyl acetate")))).isEmpty();
        assertThat(shelf.millilitresOf(Eluent.neat(solvent("heptane")))).hasValue(60);
    }

    private static Eluent blend(String one, double percent, String other, double rest) {
        return Eluent.of(
                List.of(new Eluent.Part(solvent(one), percent), new Eluent.Part(solvent(other), rest)), List.of());
    }

    private static Solvent solvent(String name) {
        return Shipped.data().solvent(name).orElseThrow();
    }

    @Test
    void aValueOfTheShelfGoesBeforeTheTablesAndThePlanSaysSo() {
        assertThat(text("own-value-1")).contains("76.5 degC", "the table has 77.1 degC");
        assertThat(why("own-value-1")).contains("label of the bottle", SHELF + ":11");
    }

    @Test
    void aShelfGoesBeforeTheShelfItBuildsOn() {
        String ladder =
                CommandLineRun.of("shelf", "--for", "silica", "--of", SHELF).out();
        assertThat(ladder).containsPattern("heptane {2}0\\.01 .*, 500 mL").contains("BANNED: it smells");
    }

    @Test
    void whenTheWholePlanTakesMoreThanThereIsItSaysSo(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("small.yaml"),
                "shelf: small\nbottles:\n  - {solvent: heptane, amount mL: 60}\n  - {solvent: ethyl acetate}\n  - {solvent: ethanol}\n");
        String demo =
                Files.readString(Shipped.DEMO).replace("setting: college\n", "setting: college\nshelf: small.yaml\n");
        Plan small = Shipped.planOf(Files.writeString(folder.resolve("case.yaml"), demo));
        assertThat(small.line("short-heptane").map(PlanLine::text).orElse(""))
                .contains("mL of heptane", "the shelf has 60 mL");
    }

    @Test
    void theLadderRunsFromWeakToStrongAndNamesWhatIsNotOnIt() {
        String ladder = CommandLineRun.of("shelf", "--for", "silica").out();
        assertThat(ladder)
                .containsSubsequence(
                        "pentane", "toluene", "diethyl ether", "acetone", "methanol", "Not on this ladder");
        assertThat(ladder.substring(ladder.indexOf("Not on this ladder")))
                .contains("ethanol: no value is known", "water: printed as \"large\"");
    }

    @Test
    void aBottleThatIsNotOnTheLadderStillSaysWhatEveryPartOfItCanDo() {
        String ladder =
                CommandLineRun.of("shelf", "--for", "silica", "--of", SHELF).out();
        assertThat(ladder.substring(ladder.indexOf("Not on this ladder")))
                .containsSubsequence(
                        "ethanol: no value",
                        "    Hazards: highly flammable, irritates eyes.",
                        "water: printed",
                        "    Hazards: not classified.",
                        "window spirit: a blend",
                        "    Hazards of ethanol: highly flammable, irritates eyes.",
                        "    Hazards of water: not classified.");
    }

    @Test
    void whatAnAdditiveCanDoIsThatOfTheSolventOfItsNameOrNotKnown(@TempDir Path folder) throws IOException {
        Path shelf = Files.writeString(
                folder.resolve("shelf.yaml"),
                "shelf: acid\nbottles:\n  - {name: sour spirit, blend: ethanol 90 % + water 10 % with acetic acid 1 % and salt 1 %}\n");
        String asked = shelf.toString();
        assertThat(CommandLineRun.of("shelf", "--for", "silica", "--of", asked).out())
                .contains(
                        "Hazards of acetic acid: flammable, burns skin and eyes.",
                        "Hazards of salt: not known here; read the safety data sheet.");
    }

    @Test
    void onAReversedPhaseTheLadderIsTurnedRound() {
        assertThat(CommandLineRun.of("shelf", "--for", "C18").out())
                .containsSubsequence("water  10.2", "methanol  5.1", "hexane  0.1");
    }

    @Test
    void everyValueOfASolventIsShownWithUnitConditionAndSource() {
        String values = CommandLineRun.of("shelf", "EtOAc").out();
        assertThat(values.replaceAll("\\s+", " "))
                .contains("used: 77.1 degC, 101.325 kPa [two sources:")
                .contains("used: 4.4 (no unit), 1978 revision [from memory, not seen in print:")
                .contains("also printed: 4.3 (no unit), 1974 revision");
        List<String> entries = values.lines()
                .filter(line -> line.matches("  (used|also printed): .*"))
                .toList();
        assertThat(entries).hasSizeGreaterThan(30);
    }

    @Test
    void thePictureNamesEveryBottleOnce() {
        String picture = CommandLineRun.of("shelf", "--for", "silica", "--of", SHELF, "--as", "svg")
                .out();
        assertThat(picture).startsWith("<svg").endsWith("</svg>\n");
        for (String name :
                List.of(">heptane<", ">ethyl acetate<", ">acetone (banned)<", ">window spirit<", ">water<")) {
            assertThat(picture.replaceAll("<title>.*</title>", "")).containsOnlyOnce(name);
        }
    }

    @Test
    void withoutAPhaseOrWithAnUnknownOneTheWayOutIsNamed() {
        assertThat(CommandLineRun.of("shelf").err()).contains("choose one, such as --for C18");
        assertThat(CommandLineRun.of("shelf", "--for", "slica").err()).contains("did you mean `silica`");
        assertThat(CommandLineRun.of("shelf", "aceton").err()).contains("did you mean `acetone`");
    }

    @ParameterizedTest
    @ValueSource(strings = {"docs/examples/department-shelf.yaml", "no-such-shelf.yaml"})
    void aFileInThePlaceOfASolventIsPointedToTheOptionForShelves(String file) {
        CommandLineRun run = CommandLineRun.of("shelf", file);
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err())
                .contains("is a file", "`shelf --of " + file + " --for PHASE`")
                .doesNotContain("1-butanol");
    }

    private String text(String label) {
        return plan.line(label).orElseThrow().text();
    }

    private String why(String label) {
        return ReasonText.of(plan.line(label).orElseThrow(), Heading.plain()).replaceAll("\\s+", " ");
    }

    @Test
    void aPhaseWithoutALadderStillSaysWhatItHoldsAndWhatToKeepAway() {
        assertThat(CommandLineRun.of("shelf", "--for", "paper").out())
                .contains("No table ranks solvents on cellulose", "How cellulose holds dyes", "Keep away from it");
    }

    @Test
    void noPictureOfAPhaseWithoutALadderIsMade() {
        CommandLineRun run = CommandLineRun.of("shelf", "--for", "paper", "--as", "svg");
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(
                        "no ladder can be drawn, because no table ranks solvents on cellulose", "leave `--as svg` out");
    }

    @Test
    void theTableExplainsEveryDisagreementItFindsInItself() {
        CommandLineRun run = CommandLineRun.of("table");
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        assertThat(run.out())
                .contains("39 solvents", "butyl acetate, flammability code", "Explained:")
                .contains("Where other scales order solvents differently", "alumina: 2-propanol stands above")
                .doesNotContain("NOT EXPLAINED");
    }
}
